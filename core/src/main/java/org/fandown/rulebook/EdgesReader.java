package org.fandown.rulebook;

import java.util.Optional;
import org.fandown.document.Fields;
import org.fandown.rulebook.Criteria.Edges;
import org.fandown.units.Dimension;
import org.fandown.units.Unit;

/** Reads between which edges a number of the vehicle file lies. */
final class EdgesReader {
    private EdgesReader() {}

    static Edges read(Fields fields, Dimension dimension) {
        Optional<String> low = only(fields, "over", "at-least");
        Optional<String> high = only(fields, "under", "at-most");
        if (low.isEmpty() && high.isEmpty()) {
            throw fields.refuseHere(
                    "has no boundary", "over, at-least, at-most, under", "Add one of these.");
        }
        double least =
                low.map(key -> value(fields, key, dimension)).orElse(Double.NEGATIVE_INFINITY);
        double most =
                high.map(key -> value(fields, key, dimension)).orElse(Double.POSITIVE_INFINITY);
        fields.end();
        if (low.isPresent() && high.isPresent() && !(least < most)) {
            throw fields.refuse(
                    high.get(),
                    "is not above " + low.get() + ", so that no vehicle is meant",
                    "a greater value",
                    "Swap or correct the two.");
        }
        return new Edges(
                least,
                low.filter("over"::equals).isEmpty(),
                most,
                high.filter("under"::equals).isEmpty());
    }

    private static Optional<String> only(Fields fields, String open, String closed) {
        boolean hasOpen = fields.has(open);
        boolean hasClosed = fields.has(closed);
        if (hasOpen && hasClosed) {
            throw fields.refuse(
                    closed,
                    "stands beside " + open + ", and both draw the same edge",
                    "one of " + open + ", " + closed,
                    "Keep the one that the source prints.");
        }
        return hasOpen ? Optional.of(open) : hasClosed ? Optional.of(closed) : Optional.empty();
    }

    private static double value(Fields fields, String key, Dimension dimension) {
        return dimension == Dimension.COUNT
                ? fields.integer(key, 0, 1000)
                : fields.quantity(key, dimension).valueIn(Unit.KILOGRAM);
    }
}
