package org.fandown.app.paper;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.fandown.check.Check;
import org.fandown.check.ReportItem;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.RulesInForce;
import org.fandown.rulebook.Ruling;

/**
 * What the rules in force ask a report to hold.
 *
 * @param rulings the rules that ask for it, nearest place first; empty if none is known
 * @param items what they ask for together
 */
record Required(List<Ruling> rulings, Set<ReportItem> items) {
    /** What a report on practice has to hold. */
    static final Required NOTHING = new Required(List.of(), Set.of());

    static Required by(RulesInForce rules) {
        List<Ruling> rulings = new ArrayList<>();
        Set<ReportItem> items = EnumSet.noneOf(ReportItem.class);
        for (Ruling ruling : rules.of(Check.REPORT_CONTENTS)) {
            if (ruling.limit() instanceof Limit.ReportHolds holds
                    && ruling.rule().weight().standing().isJudged()) {
                rulings.add(ruling);
                items.addAll(holds.items());
            }
        }
        return new Required(rulings, items);
    }

    boolean asksFor(ReportItem item) {
        return items.contains(item);
    }
}
