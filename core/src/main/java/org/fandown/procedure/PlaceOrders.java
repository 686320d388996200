package org.fandown.procedure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fandown.check.Check;
import org.fandown.check.PlaceCode;
import org.fandown.rulebook.RulesInForce;
import org.fandown.rulebook.Ruling;
import org.fandown.rulebook.Standing;
import org.fandown.rulebook.TestOrder;
import org.fandown.rulebook.TestOrder.Force;

/** The orders of checks that the rules of a place ask for or print. */
public final class PlaceOrders {
    private PlaceOrders() {}

    /**
     * An order that a place prints, as far as it concerns the checks of an order of work.
     *
     * @param ruling the rule it stands in
     * @param order the order as the pack writes it
     * @param precedences what it puts before what
     */
    public record Printed(Ruling ruling, TestOrder order, List<Precedence> precedences) {
        /** Copies the list. */
        public Printed {
            precedences = List.copyOf(precedences);
        }
    }

    /**
     * The order the place itself prints, or else asks for; empty if it has none for these checks.
     * What a place says of the order of tests stands for what its parent says, also where it names
     * no order.
     */
    public static Optional<Printed> printed(StepSet set) {
        List<Ruling> nearest = nearest(set.rules());
        for (Force force : new Force[] {Force.PRINTED, Force.BINDING}) {
            for (Ruling ruling : nearest) {
                for (TestOrder order : ruling.orders()) {
                    List<Precedence> pairs = pairs(order, set.checks(), ruling);
                    if (order.force() == force && !pairs.isEmpty()) {
                        return Optional.of(new Printed(ruling, order, pairs));
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** What the nearest place that says anything of the order of tests says of it. */
    public static List<Ruling> nearest(RulesInForce rules) {
        List<Ruling> duties = duties(rules);
        if (duties.isEmpty()) {
            return List.of();
        }
        PlaceCode place = duties.get(0).rule().place();
        return duties.stream().filter(r -> r.rule().place().equals(place)).toList();
    }

    private static List<Ruling> duties(RulesInForce rules) {
        return rules.of(Check.TEST_ORDER).stream()
                .filter(r -> r.rule().weight().standing() == Standing.DUTY)
                .toList();
    }

    /** The orders that the rules ask for, between the checks that are made. */
    static List<Precedence> binding(RulesInForce rules, List<CheckStep> made) {
        List<Precedence> list = new ArrayList<>();
        for (Ruling ruling : duties(rules)) {
            for (TestOrder order : ruling.orders()) {
                if (order.force() == Force.BINDING) {
                    list.addAll(pairs(order, made, ruling));
                }
            }
        }
        return list;
    }

    private static List<Precedence> pairs(TestOrder order, List<CheckStep> made, Ruling ruling) {
        String why =
                order.force() == Force.BINDING
                        ? "the place asks for this order"
                        : "the place prints this order";
        List<Precedence> list = new ArrayList<>();
        Set<Check> last = Set.of();
        for (List<Check> turn : order.turns()) {
            Set<Check> now = new LinkedHashSet<>();
            turn.forEach(check -> host(check, made).ifPresent(step -> now.add(step.check())));
            for (Check first : last) {
                for (Check second : now) {
                    if (first != second) {
                        list.add(new Precedence(first, second, why, Optional.of(ruling)));
                    }
                }
            }
            last = now.isEmpty() ? last : now;
        }
        return list;
    }

    /** The step in which a check is made. */
    private static Optional<CheckStep> host(Check check, List<CheckStep> made) {
        return made.stream().filter(step -> step.checks().contains(check)).findFirst();
    }
}
