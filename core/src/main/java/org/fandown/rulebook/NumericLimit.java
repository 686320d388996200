package org.fandown.rulebook;

import java.util.Optional;
import org.fandown.units.Quantity;

/**
 * Between which edges a quantity has to lie. At least one edge is present.
 *
 * @param lower the lower edge, empty if there is none
 * @param upper the upper edge, empty if there is none
 * @param per the time in which a loss is counted, empty for anything that is not a rate
 */
public record NumericLimit(Optional<Edge> lower, Optional<Edge> upper, Optional<Quantity> per) {

    /**
     * One edge of a limit.
     *
     * @param bound the figure
     * @param passes whether the figure itself still passes
     */
    public record Edge(Bound bound, boolean passes) {}

    /**
     * Checks that there is an edge.
     *
     * @throws IllegalArgumentException if both edges are empty
     */
    public NumericLimit {
        if (lower.isEmpty() && upper.isEmpty()) {
            throw new IllegalArgumentException("A limit needs a lower or an upper edge.");
        }
    }

    /**
     * In words: {@code at least 80 psi (552 kPa)}, {@code 105 psi to 135 psi}, {@code less than 4
     * psi in 1 min}.
     */
    @Override
    public String toString() {
        String edges;
        if (lower.isPresent() && upper.isPresent()) {
            edges =
                    lower.equals(upper)
                            ? lower.get().bound().toString()
                            : lower.get().bound() + " to " + upper.get().bound();
        } else if (lower.isPresent()) {
            edges = (lower.get().passes() ? "at least " : "more than ") + lower.get().bound();
        } else {
            edges = upper.map(e -> (e.passes() ? "at most " : "less than ") + e.bound()).orElse("");
        }
        return per.isPresent() ? edges + " in " + per.get() : edges;
    }
}
