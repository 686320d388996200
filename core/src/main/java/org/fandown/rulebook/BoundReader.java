package org.fandown.rulebook;

import java.util.ArrayList;
import java.util.List;
import org.fandown.check.Check;
import org.fandown.document.Fields;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;

/** Reads the figure at the edge of a limit. */
final class BoundReader {
    private BoundReader() {}

    static Bound read(Fields fields, String key, Dimension dimension) {
        if (!fields.isMap(key)) {
            return new Bound.Figure(figure(fields, key, dimension));
        }
        Fields map = fields.fields(key);
        Bound bound = computed(map, dimension);
        map.end();
        return bound;
    }

    static Printed figure(Fields fields, String key, Dimension dimension) {
        List<Quantity> forms = fields.quantities(key, dimension);
        try {
            return new Printed(forms);
        } catch (IllegalArgumentException e) {
            throw fields.refuse(
                    key,
                    "is not a printed figure: " + e.getMessage(),
                    "one figure, or a list of one per unit",
                    "Correct it.");
        }
    }

    static Bound[] range(Fields fields, String key, Dimension dimension) {
        Fields ends = fields.items(key);
        if (ends.keys().size() != 2) {
            throw fields.refuse(key, "needs two ends", "[lower, upper]", "Write both ends.");
        }
        return new Bound[] {read(ends, "0", dimension), read(ends, "1", dimension)};
    }

    private static Bound computed(Fields map, Dimension dimension) {
        if (map.has("percent")) {
            return share(map);
        }
        if (map.has("least-of")) {
            List<Bound> bounds = new ArrayList<>();
            Fields items = map.items("least-of");
            for (String index : items.keys()) {
                bounds.add(read(items, index, dimension));
            }
            return new Bound.LeastOf(bounds);
        }
        if (map.has("base")) {
            map.choice("each", Each.values());
            return new Bound.PlusPerTrailer(
                    map.quantity("base", dimension), map.quantity("plus", dimension));
        }
        if (map.has("seconds-at-minimum")) {
            map.choice("by", By.values());
            return new Bound.ByReservoirRatio(map.quantity("seconds-at-minimum", Dimension.TIME));
        }
        if (map.has("lag")) {
            return new Bound.BySpeed(map.number("lag", 0, 10), map.number("square-over", 1, 1000));
        }
        throw map.refuseHere(
                "is not a figure",
                "a quantity, percent of, least-of, base plus each, seconds-at-minimum, or lag and square-over",
                "See the section on limits in docs/rules.md.");
    }

    private static Bound share(Fields map) {
        double percent = map.number("percent", 0, 10_000);
        String of = map.text("of");
        for (Bound.Own own : Bound.Own.values()) {
            if (of.equals(own == Bound.Own.BEFORE ? "before" : "rated-stroke")) {
                return new Bound.ShareOfOwn(percent, own);
            }
        }
        Check check =
                Check.byId(of)
                        .filter(c -> c.dimension().isPresent())
                        .orElseThrow(
                                () ->
                                        map.refuse(
                                                "of",
                                                "is not something a share can be taken of",
                                                "a measured check, before, rated-stroke",
                                                "Write one of these."));
        return new Bound.ShareOfCheck(percent, check);
    }

    private enum Each {
        TRAILER
    }

    private enum By {
        RESERVOIR_RATIO
    }
}
