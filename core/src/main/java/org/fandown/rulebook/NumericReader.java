package org.fandown.rulebook;

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
    static final String KEYS = "at-least, at-most, more-than, less-than, range";

    private NumericReader() {}

    static boolean isNumeric(Fields fields) {
        return fields.has("at-least")
                || fields.has("at-most")
                || fields.has("more-than")
                || fields.has("less-than")
                || fields.has("range");
    }

    static NumericLimit read(Fields fields, Dimension dimension) {
        Optional<Edge> lower =
                edge(fields, "at-least", true, dimension)
                        .or(() -> edge(fields, "more-than", false, dimension));
        Optional<Edge> upper =
                edge(fields, "at-most", true, dimension)
                        .or(() -> edge(fields, "less-than", false, dimension));
        if (fields.has("range")) {
            Bound[] ends = BoundReader.range(fields, "range", dimension);
            lower = Optional.of(new Edge(ends[0], true));
            upper = Optional.of(new Edge(ends[1], true));
        }
        if (lower.isEmpty() && upper.isEmpty()) {
            throw fields.refuseHere(
                    "has no boundary", KEYS, "Say on which side of the figure a reading passes.");
        }
        Optional<Quantity> per =
                fields.has("per")
                        ? Optional.of(fields.quantity("per", Dimension.TIME))
                        : Optional.empty();
        fields.end();
        return new NumericLimit(lower, upper, per);
    }

    private static Optional<Edge> edge(
            Fields fields, String key, boolean passes, Dimension dimension) {
        return fields.has(key)
                ? Optional.of(new Edge(BoundReader.read(fields, key, dimension), passes))
                : Optional.empty();
    }
}
