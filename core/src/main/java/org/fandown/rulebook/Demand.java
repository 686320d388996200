package org.fandown.rulebook;

import java.util.List;
import java.util.Optional;
import org.fandown.check.Circumstance;

/**
 * A circumstance a rule demands while a reading is taken.
 *
 * @param circumstance which
 * @param states the states that satisfy it, empty for a quantity
 * @param limit the limit of the quantity, empty for a state
 */
public record Demand(Circumstance circumstance, List<String> states, Optional<NumericLimit> limit) {
    /** Copies the list. */
    public Demand {
        states = List.copyOf(states);
    }

    /** In words: {@code engine off}, {@code engine speed 600 rpm to 900 rpm}. */
    @Override
    public String toString() {
        if (limit.isPresent()) {
            return circumstance.title() + " " + limit.get();
        }
        if (states.equals(List.of("yes"))) {
            return circumstance.title();
        }
        return circumstance.title() + " " + String.join(" or ", states).replace('-', ' ');
    }
}
