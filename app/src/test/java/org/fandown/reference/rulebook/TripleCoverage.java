package org.fandown.reference.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fandown.check.CheckKind;
import org.fandown.rulebook.Bound;
import org.fandown.rulebook.DatedValue;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.NumericLimit;
import org.fandown.rulebook.Printed;
import org.fandown.rulebook.Rule;
import org.fandown.rulebook.StrokeTable;
import org.fandown.units.Quantity;

/** Which printed figures of a rule have no row in a table. */
final class TripleCoverage {
    private final Rule rule;
    private final List<Triple> rows;
    private final List<String> missing = new ArrayList<>();

    private TripleCoverage(Rule rule, List<Triple> rows) {
        this.rule = rule;
        this.rows = rows;
    }

    static List<String> missing(Rule rule, List<Triple> all) {
        List<String> lines = new ArrayList<>();
        for (DatedValue value : rule.values()) {
            List<Triple> rows =
                    all.stream()
                            .filter(r -> r.rule().equals(rule.id()) && value.inForceOn(r.on()))
                            .toList();
            lines.addAll(new TripleCoverage(rule, rows).of(value.limit()));
        }
        return lines;
    }

    private List<String> of(Limit limit) {
        if (limit instanceof Limit.Numeric numeric) {
            numeric.edges().lower().ifPresent(e -> edge(e, true));
            numeric.edges().upper().ifPresent(e -> edge(e, false));
        } else if (limit instanceof Limit.Strokes strokes) {
            table(strokes.table());
        } else if (limit instanceof Limit.BrakesOver over) {
            need("the share", rows.stream().anyMatch(r -> !isSameCount(r)));
            over.overBy().ifPresent(this::overBy);
        }
        return missing;
    }

    private void edge(NumericLimit.Edge edge, boolean lower) {
        List<Triple> own = rows.stream().filter(r -> r.isLowerEdge() == lower).toList();
        String name = lower ? "lower edge" : "upper edge";
        List<Quantity> printed = new ArrayList<>();
        int workedOut = figures(edge.bound(), printed);
        boolean design = rule.check().kind() == CheckKind.DESIGN;
        if (!design) {
            for (Quantity form : printed) {
                need(name + " " + form, own.stream().anyMatch(r -> isIn(form, r.at())));
            }
        }
        int needed = design ? 1 : printed.size() + workedOut;
        need(name + ": " + needed + " rows", own.size() >= needed);
    }

    /** Collects the printed figures of a bound and counts those that have to be worked out. */
    private static int figures(Bound bound, List<Quantity> printed) {
        if (bound instanceof Bound.Figure figure) {
            printed.addAll(figure.printed().forms());
            return 0;
        }
        int workedOut = 0;
        if (bound instanceof Bound.LeastOf least) {
            for (Bound each : least.bounds()) {
                workedOut += figures(each, printed);
            }
            return workedOut;
        }
        return 1;
    }

    /** Minutes and seconds count as one unit, since times of both are written in either. */
    private static boolean isIn(Quantity form, String text) {
        Quantity value = Quantity.parse(text);
        return value.unit() == form.unit()
                || (form.dimension() == org.fandown.units.Dimension.TIME
                        && value.dimension() == form.dimension());
    }

    private void table(StrokeTable table) {
        table.limits()
                .forEach(
                        (family, column) ->
                                column.forEach(
                                        (type, printed) -> chamber(text(family, type), printed)));
        table.percentOfRatedStroke()
                .ifPresent(
                        percent ->
                                need(
                                        "a chamber not listed",
                                        rows.stream().anyMatch(r -> chamber(r).startsWith("{"))));
    }

    private void chamber(String chamber, Printed printed) {
        for (Quantity form : printed.forms()) {
            need(
                    chamber + " in " + form.unit().symbol(),
                    rows.stream().anyMatch(r -> chamber(r).equals(chamber) && isIn(form, r.at())));
        }
    }

    private static String chamber(Triple row) {
        return row.beside().getOrDefault("chamber", "");
    }

    private static String text(StrokeTable.Family family, String type) {
        return switch (family) {
            case CLAMP_LONG -> "clamp " + type + " long";
            case CLAMP_LONG_3_IN -> "clamp " + type + " long 3 in";
            default -> family.name().toLowerCase(Locale.ROOT) + " " + type;
        };
    }

    private void overBy(Printed printed) {
        for (Quantity form : printed.forms()) {
            need(
                    "over by " + form,
                    rows.stream().anyMatch(r -> isSameCount(r) && isIn(form, afterBy(r.at()))));
        }
    }

    private static boolean isSameCount(Triple row) {
        String first = row.values().get(0);
        return row.at().startsWith(first.substring(0, first.indexOf(' ') + 1));
    }

    private static String afterBy(String text) {
        return text.substring(text.indexOf(" by ") + 4);
    }

    private void need(String what, boolean there) {
        if (!there) {
            missing.add(rule.id() + ": no row for " + what);
        }
    }
}
