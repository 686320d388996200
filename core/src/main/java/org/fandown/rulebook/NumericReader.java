package org.fandown.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.document.Fields;
import org.fandown.rulebook.NumericLimit.Edge;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;

/**
 * Reads a limit on a quantity: {@code at-least}, {@code at-most}, {@code more-than}, {@code
 * less-than} or {@code range}.
 */
final class NumericReader {
    private static final List<String> LOWER = List.of("at-least", "more-than", "range");
    private static final List<String> UPPER = List.of("at-most", "less-than", "range");
    private static final String KEYS = "at-least, at-most, more-than, less-than, range";

    private NumericReader() {}

    /** Reads a limit on a quantity that is not counted over a time. */
    static NumericLimit read(Fields fields, BoundKind kind) {
        NumericLimit limit = edges(fields, kind, Optional.empty());
        fields.end();
        return limit;
    }

    /** Reads a limit on a loss, which is counted over a time. */
    static NumericLimit readLoss(Fields fields, BoundKind kind) {
        if (!fields.has("per")) {
            throw fields.refuseHere(
                    "does not say in what time the loss is counted", "per: 1 min", "Add per.");
        }
        Quantity per = fields.quantity("per", Dimension.TIME);
        if (!(per.value() > 0)) {
            throw fields.refuse(
                    "per", "is not above zero", "a time such as 1 min", "Correct the time.");
        }
        NumericLimit limit = edges(fields, kind, Optional.of(per));
        fields.end();
        return limit;
    }

    private static NumericLimit edges(Fields fields, BoundKind kind, Optional<Quantity> per) {
        Optional<String> below = only(fields, LOWER);
        Optional<String> above = only(fields, UPPER);
        if (below.isEmpty() && above.isEmpty()) {
            throw fields.refuseHere(
                    "has no boundary", KEYS, "Say on which side of the figure a reading passes.");
        }
        if (fields.has("range")) {
            Bound[] ends = BoundReader.range(fields, "range", kind);
            return new NumericLimit(
                    Optional.of(new Edge(ends[0], true)),
                    Optional.of(new Edge(ends[1], true)),
                    per);
        }
        Optional<Edge> lower = below.map(key -> edge(fields, key, kind));
        Optional<Edge> upper = above.map(key -> edge(fields, key, kind));
        if (lower.isPresent()
                && upper.isPresent()
                && BoundReader.isAbove(lower.get().bound(), upper.get().bound())) {
            throw fields.refuse(
                    above.get(),
                    "is below " + below.get() + ", so that nothing passes",
                    "an upper edge above the lower one",
                    "Swap or correct the two.");
        }
        return new NumericLimit(lower, upper, per);
    }

    private static Edge edge(Fields fields, String key, BoundKind kind) {
        return new Edge(BoundReader.read(fields, key, kind), key.startsWith("at-"));
    }

    /** The one of several keys that is there, empty if none is. */
    private static Optional<String> only(Fields fields, List<String> keys) {
        List<String> there = new ArrayList<>();
        for (String key : keys) {
            if (fields.has(key)) {
                there.add(key);
            }
        }
        if (there.size() > 1) {
            throw fields.refuse(
                    there.get(1),
                    "stands beside " + there.get(0) + ", and both draw the same edge",
                    "one of " + String.join(", ", keys),
                    "Keep the one that the source prints.");
        }
        return there.stream().findFirst();
    }
}
