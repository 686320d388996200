package org.fandown.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.rulebook.Bound;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.NumericLimit;
import org.fandown.rulebook.Provenance;
import org.fandown.rulebook.RulesInForce;
import org.fandown.rulebook.Ruling;
import org.fandown.units.Decimals;
import org.fandown.units.Unit;

/** The rules of two places side by side; what differs is marked. */
final class ComparisonText {
    private static final int COLUMN = 46;

    private final RulesInForce here;
    private final RulesInForce there;
    private final List<Check> wanted;
    private final Screen screen;
    private final Sources sources = new Sources();

    ComparisonText(RulesInForce here, RulesInForce there, List<Check> wanted, Screen screen) {
        this.here = here;
        this.there = there;
        this.wanted = wanted;
        this.screen = screen;
    }

    void print() {
        screen.title(
                here.lineage().get(0).name()
                        + " against "
                        + there.lineage().get(0).name()
                        + " for "
                        + here.vehicle().name()
                        + " on "
                        + here.day());
        int same = 0;
        for (Check check : wanted) {
            List<String> left = cells(here, check);
            List<String> right = cells(there, check);
            if (left.isEmpty() && right.isEmpty()) {
                continue;
            }
            if (bare(here, check).equals(bare(there, check))) {
                same++;
                continue;
            }
            check(check, left, right);
        }
        screen.line("");
        screen.line(same + " checks have the same rules in both.");
        sources.print(screen);
        Cautions.print(screen);
        screen.done();
    }

    private void check(Check check, List<String> left, List<String> right) {
        screen.heading("DIFFERS  " + check.title());
        List<String> leftLines = wrap(here.place().code(), left);
        List<String> rightLines = wrap(there.place().code(), right);
        for (int i = 0; i < Math.max(leftLines.size(), rightLines.size()); i++) {
            String l = i < leftLines.size() ? leftLines.get(i) : "";
            String r = i < rightLines.size() ? rightLines.get(i) : "";
            screen.line(
                    ("  " + l + " ".repeat(Math.max(0, COLUMN - l.length())) + " | " + r)
                            .stripTrailing());
        }
    }

    private static List<String> wrap(String place, List<String> cells) {
        List<String> lines = new ArrayList<>();
        if (cells.isEmpty()) {
            lines.add(place + ": no rule known");
        }
        for (String cell : cells) {
            lines.addAll(Screen.wrap(place + ": " + cell, COLUMN));
        }
        return lines;
    }

    private List<String> cells(RulesInForce rules, Check check) {
        List<String> cells = new ArrayList<>();
        for (Ruling ruling : rules.of(check)) {
            if (ruling.decides()) {
                String memory =
                        ruling.rule().provenance() == Provenance.FROM_MEMORY
                                ? ", NOT CONFIRMED"
                                : "";
                cells.add(words(ruling) + memory + " " + sources.mark(ruling));
            }
        }
        return cells;
    }

    /** What the rules say, in one unit for all, so that only a real difference counts. */
    private static List<String> bare(RulesInForce rules, Check check) {
        return rules.of(check).stream()
                .filter(Ruling::decides)
                .map(ComparisonText::bare)
                .distinct()
                .sorted()
                .toList();
    }

    private static String bare(Ruling ruling) {
        if (!(ruling.limit() instanceof Limit.Numeric numeric)) {
            return words(ruling);
        }
        NumericLimit edges = numeric.edges();
        return bare(edges.lower())
                + " to "
                + bare(edges.upper())
                + edges.per()
                + ruling.rule()
                        .method()
                        .window()
                        .map(w -> w.from().map(ComparisonText::bare) + " " + bare(w.to()));
    }

    private static String bare(Optional<NumericLimit.Edge> edge) {
        return edge.map(e -> (e.passes() ? "=" : "") + bare(e.bound())).orElse("any");
    }

    private static String bare(Bound bound) {
        if (!(bound instanceof Bound.Figure figure)) {
            return bound.toString();
        }
        Unit unit = Unit.of(figure.printed().own().dimension()).get(0);
        return Decimals.format(figure.printed().in(unit), 1);
    }

    private static String words(Ruling ruling) {
        return ruling.limit() + ruling.rule().method().window().map(w -> " (" + w + ")").orElse("");
    }
}
