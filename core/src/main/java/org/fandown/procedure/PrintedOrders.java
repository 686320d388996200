package org.fandown.procedure;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fandown.check.Check;

/** Orders that hold whatever the steps need. */
final class PrintedOrders {
    /** With more checks those of one kind are made in turn. */
    static final int MOST_FREE = 20;

    private PrintedOrders() {}

    static List<Precedence> precedences(StepSet set, boolean follows) {
        return precedences(set, List.of(), follows);
    }

    static List<Precedence> precedences(StepSet set, List<Precedence> printed, boolean follows) {
        List<Precedence> list = new ArrayList<>();
        look(set, list);
        list.addAll(PlaceOrders.binding(set.rules(), set.checks()));
        list.addAll(printed);
        if (set.checks().size() > MOST_FREE && !follows) {
            GoodPractice.KINDS.forEach(kind -> inTurn(set, kind, list));
        }
        return list;
    }

    /** Checks of one kind come in the order of the trade. */
    private static void inTurn(StepSet set, List<Check> kind, List<Precedence> list) {
        Check last = null;
        for (Check check : kind) {
            boolean there = set.checks().stream().anyMatch(step -> step.check() == check);
            if (there && last != null && !leads(list, check, last)) {
                list.add(
                        new Precedence(
                                last,
                                check,
                                "checks of one kind are made in turn",
                                Optional.empty()));
            }
            last = there ? check : last;
        }
    }

    /** Whether what holds already puts one check before another. */
    private static boolean leads(List<Precedence> list, Check from, Check to) {
        Set<Check> reached = EnumSet.of(from);
        boolean further = true;
        while (further) {
            further = false;
            for (Precedence order : list) {
                further |= reached.contains(order.first()) && reached.add(order.second());
            }
        }
        return reached.contains(to);
    }

    /** What looks unsound is not driven. */
    private static void look(StepSet set, List<Precedence> list) {
        for (CheckStep step : set.checks()) {
            boolean rolls =
                    step.needs().stream()
                            .anyMatch(n -> n.aspect() == Aspect.CHOCKS && n.most() == 0);
            if (rolls) {
                list.add(
                        new Precedence(
                                Check.WALK_ROUND,
                                step.check(),
                                "nobody moves a vehicle that has not been looked over",
                                Optional.empty()));
            }
        }
    }
}
