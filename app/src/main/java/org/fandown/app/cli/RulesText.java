package org.fandown.app.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Printed;
import org.fandown.rulebook.Provenance;
import org.fandown.rulebook.Rule;
import org.fandown.rulebook.RulesInForce;
import org.fandown.rulebook.RulesInForce.Coverage;
import org.fandown.rulebook.Ruling;
import org.fandown.rulebook.SetAside;
import org.fandown.rulebook.Standing;
import org.fandown.rulebook.StrokeTable;
import org.fandown.rulebook.TestOrder;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.WheelId;

/** The rules in force as text, check by check. */
final class RulesText {
    private final RulesInForce rules;
    private final List<Check> wanted;
    private final boolean all;
    private final Screen screen;
    private final Sources sources = new Sources();

    RulesText(RulesInForce rules, List<Check> wanted, boolean all, Screen screen) {
        this.rules = rules;
        this.wanted = wanted;
        this.all = all;
        this.screen = screen;
    }

    void print() {
        screen.title(
                "Rules in "
                        + rules.lineage().get(0).name()
                        + " for "
                        + rules.vehicle().name()
                        + " on "
                        + rules.day());
        int hidden = 0;
        for (Check check : wanted) {
            List<Ruling> rulings = rules.of(check);
            List<Ruling> shown = rulings.stream().filter(this::isShown).toList();
            hidden += rulings.size() - shown.size();
            if (!shown.isEmpty()) {
                screen.heading(check.title());
                shown.forEach(this::rule);
            }
        }
        setAside();
        gaps();
        sources.print(screen);
        if (hidden > 0) {
            screen.line("");
            screen.line(
                    hidden
                            + " new-vehicle and historic rules and duties are not shown; --all shows them.");
        }
        Cautions.print(screen);
        screen.done();
    }

    private boolean isShown(Ruling ruling) {
        Standing standing = ruling.rule().weight().standing();
        return all
                || standing.decides()
                || standing == Standing.ADVISORY
                || ruling.orders().stream().anyMatch(o -> o.force() == TestOrder.Force.BINDING);
    }

    private void rule(Ruling ruling) {
        Rule rule = ruling.rule();
        String window = rule.method().window().map(w -> " (" + w + ")").orElse("");
        screen.wrapped(
                "  ",
                rule.title()
                        + ": "
                        + ruling.limit()
                        + window
                        + remarks(rule)
                        + " "
                        + sources.mark(ruling));
        if (ruling.limit() instanceof Limit.Strokes strokes) {
            screen.wrapped("      ", chambers(ruling, strokes.table()));
        }
        if (!rule.method().demands().isEmpty()) {
            screen.wrapped(
                    "      ",
                    "With "
                            + String.join(
                                    ", ",
                                    rule.method().demands().stream().map(Object::toString).toList())
                            + ".");
        }
        for (TestOrder order : ruling.orders()) {
            screen.wrapped("      ", words(order));
        }
        if (ruling.limit() instanceof Limit.Duty duty && !duty.concerns().isEmpty()) {
            String checks = String.join("; ", duty.concerns().stream().map(Check::title).toList());
            screen.wrapped("      ", "Tells how to make: " + checks + ".");
        }
        if (!ruling.fit().missing().isEmpty()) {
            screen.wrapped("      ", "Holds only if known: " + ruling.fit().missing() + ".");
        }
        if (!rule.note().isBlank()) {
            screen.wrapped("      ", "Note: " + rule.note());
        }
    }

    /** {@code Binding order: build-up time; then governor cut-out.} */
    private static String words(TestOrder order) {
        boolean binding = order.force() == TestOrder.Force.BINDING;
        return (binding ? "Binding" : "Printed") + " order: " + order + ".";
    }

    /** The limits of the chambers this vehicle has. */
    private String chambers(Ruling ruling, StrokeTable table) {
        Map<String, String> limits = new LinkedHashMap<>();
        for (WheelId wheel : ruling.wheels()) {
            Chamber chamber = rules.vehicle().wheel(wheel).chamber().orElseThrow();
            limits.putIfAbsent(
                    chamber.text(),
                    table.limit(chamber).map(Printed::toString).orElse("not in the table"));
        }
        StringBuilder text = new StringBuilder();
        limits.forEach(
                (chamber, limit) ->
                        text.append(text.length() == 0 ? "At most " : "; ")
                                .append(limit)
                                .append(" for ")
                                .append(chamber));
        return text.append('.').toString();
    }

    private static String remarks(Rule rule) {
        StringBuilder text = new StringBuilder();
        if (rule.weight().standing() != Standing.REQUIRED
                && rule.weight().standing() != Standing.DUTY) {
            text.append("; ").append(org.fandown.document.Names.kebab(rule.weight().standing()));
        } else if (rule.weight().standing() == Standing.REQUIRED) {
            text.append("; ").append(org.fandown.document.Names.kebab(rule.weight().severity()));
        }
        if (rule.weight().outOfService()) {
            text.append(", out of service");
        }
        if (rule.provenance() == Provenance.FROM_MEMORY) {
            text.append("; NOT CONFIRMED, from memory");
        }
        return text.toString();
    }

    private void setAside() {
        List<SetAside> asides =
                rules.setAside().stream()
                        .filter(s -> wanted.contains(s.ruling().rule().check()))
                        .toList();
        if (asides.isEmpty()) {
            return;
        }
        screen.heading("Known, but not applied");
        for (SetAside aside : asides) {
            screen.wrapped(
                    "  ",
                    aside.ruling().rule().title()
                            + ": "
                            + aside.ruling().limit()
                            + " "
                            + sources.mark(aside.ruling())
                            + "; "
                            + because(aside)
                            + " "
                            + aside.by()
                            + (aside.settled()
                                    ? "."
                                    : ". Not settled: where the two disagree, nothing is decided."));
        }
    }

    private static String because(SetAside aside) {
        return switch (aside.reason()) {
            case OVERRIDDEN -> "replaced here by";
            case CONFLICT -> "another text is applied,";
            case PUBLISHED_TEXT_KNOWN -> "published text is known,";
        };
    }

    private void gaps() {
        List<Coverage> gaps =
                rules.gaps().stream().filter(g -> wanted.contains(g.check())).toList();
        if (gaps.isEmpty()) {
            return;
        }
        screen.heading("No rule of this place's own");
        for (Coverage gap : gaps) {
            Optional<String> from = gap.from().map(p -> "rule of " + p + " used. ");
            screen.wrapped(
                    "  ",
                    gap.check().title()
                            + ": "
                            + from.orElse("no rule known. ")
                            + gap.says().strip());
        }
    }
}
