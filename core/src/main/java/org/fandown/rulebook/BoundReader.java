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

    static Bound read(Fields fields, String key, BoundKind kind) {
        if (!fields.isMap(key)) {
            return new Bound.Figure(figure(fields, key, kind.dimension()));
        }
        Fields map = fields.fields(key);
        Bound bound = computed(map, kind);
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
                    "Keep the figure of each unit that the source prints, once.");
        }
    }

    static Bound[] range(Fields fields, String key, BoundKind kind) {
        Fields ends = fields.items(key);
        if (ends.keys().size() != 2) {
            throw fields.refuse(key, "needs two ends", "[lower, upper]", "Write both ends.");
        }
        Bound[] bounds = {read(ends, "0", kind), read(ends, "1", kind)};
        if (isAbove(bounds[0], bounds[1])) {
            throw ends.refuse(
                    "1",
                    "is below the lower end, " + bounds[0],
                    "[lower, upper]",
                    "Swap or correct the two ends.");
        }
        return bounds;
    }

    /** Whether the first of two printed figures is greater in a unit that both are printed in. */
    static boolean isAbove(Bound first, Bound second) {
        if (!(first instanceof Bound.Figure low) || !(second instanceof Bound.Figure high)) {
            return false;
        }
        return high.printed().forms().stream()
                .anyMatch(form -> low.printed().in(form.unit()) > form.value());
    }

    private static Bound computed(Fields map, BoundKind kind) {
        if (map.has("percent")) {
            return share(map, kind);
        }
        if (map.has("least-of")) {
            return new Bound.LeastOf(several(map, kind));
        }
        if (map.has("base")) {
            map.choice("each", Each.values());
            return new Bound.PlusPerTrailer(
                    map.quantity("base", kind.dimension()), map.quantity("plus", kind.dimension()));
        }
        if (map.has("seconds-at-minimum")) {
            require(map, kind, Dimension.TIME);
            map.choice("by", By.values());
            return new Bound.ByReservoirRatio(map.quantity("seconds-at-minimum", Dimension.TIME));
        }
        if (map.has("lag")) {
            require(map, kind, Dimension.LENGTH);
            return new Bound.BySpeed(map.number("lag", 0, 10), map.number("square-over", 1, 1000));
        }
        throw map.refuseHere(
                "is not a figure",
                "a quantity, percent of, least-of, base plus each, seconds-at-minimum, or lag and"
                        + " square-over",
                "See the section on limits in docs/rules.md.");
    }

    private static List<Bound> several(Fields map, BoundKind kind) {
        List<Bound> bounds = new ArrayList<>();
        Fields items = map.items("least-of");
        for (String index : items.keys()) {
            bounds.add(read(items, index, kind));
        }
        if (bounds.size() < 2) {
            throw map.refuse(
                    "least-of", "has fewer than two figures", "two or more", "Write the others.");
        }
        return bounds;
    }

    private static void require(Fields map, BoundKind kind, Dimension dimension) {
        if (kind.dimension() != dimension) {
            throw map.refuseHere(
                    "works out "
                            + dimension.phrase()
                            + ", but the check measures "
                            + kind.dimension().phrase(),
                    kind.dimension().phrase() + " such as " + kind.dimension().example(),
                    "Write a figure of the check's own kind.");
        }
    }

    private static Bound share(Fields map, BoundKind kind) {
        double percent = map.number("percent", 0, 10_000);
        String of = map.text("of");
        for (Bound.Own own : Bound.Own.values()) {
            if (of.equals(own.id()) && kind.isShareOf(own)) {
                return new Bound.ShareOfOwn(percent, own);
            }
        }
        return new Bound.ShareOfCheck(
                percent,
                Check.byId(of)
                        .filter(kind::isShareOf)
                        .orElseThrow(
                                () ->
                                        map.refuse(
                                                "of",
                                                "is not something this limit can be a share of",
                                                allowed(kind),
                                                "Name what is measured of the same kind.")));
    }

    private static String allowed(BoundKind kind) {
        StringBuilder text = new StringBuilder();
        for (Bound.Own own : Bound.Own.values()) {
            text.append(kind.isShareOf(own) ? own.id() + ", " : "");
        }
        return text.append("a check of ")
                .append(kind.dimension().phrase())
                .append(" such as ")
                .append(example(kind))
                .toString();
    }

    private static String example(BoundKind kind) {
        for (Check check : Check.values()) {
            if (kind.isShareOf(check)) {
                return check.id();
            }
        }
        return "none";
    }

    private enum Each {
        TRAILER
    }

    private enum By {
        RESERVOIR_RATIO
    }
}
