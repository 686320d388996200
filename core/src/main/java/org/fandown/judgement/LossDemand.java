package org.fandown.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.CheckKind;
import org.fandown.check.Circumstance;
import org.fandown.evidence.Circumstances;
import org.fandown.evidence.Inspection;
import org.fandown.rulebook.Demand;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.NumericLimit;
import org.fandown.rulebook.RulesInForce;
import org.fandown.rulebook.Ruling;
import org.fandown.units.Unit;

/**
 * What a rule that decides demands of an air loss, in numbers, for those who watch one.
 *
 * @param ruling the rule
 * @param most the most it allows, psi a minute
 * @param seconds how long the rule has the pressure watched, s
 */
public record LossDemand(Ruling ruling, double most, double seconds) {
    private static final double MINUTE = 60;

    /**
     * Returns the demands of the rules in force, of those that decide and have an upper limit.
     *
     * @param rules the rules in force
     * @param inspection an inspection with what is known so far, for limits that depend on it
     */
    public static List<LossDemand> of(RulesInForce rules, Inspection inspection) {
        List<LossDemand> demands = new ArrayList<>();
        Case before = Case.of(inspection, rules);
        for (Ruling ruling : rules.rulings()) {
            Check check = ruling.rule().check();
            if (check.kind() == CheckKind.AIR_LOSS && ruling.decides()) {
                of(before, ruling).ifPresent(demands::add);
            }
        }
        return demands;
    }

    private static Optional<LossDemand> of(Case before, Ruling ruling) {
        if (!(ruling.limit() instanceof Limit.Numeric numeric) || numeric.edges().per().isEmpty()) {
            return Optional.empty();
        }
        Bounds bounds = Bounds.in(before, Unit.PSI, Circumstances.NONE);
        Optional<Edge> upper = bounds.upper(numeric.edges());
        if (upper.isEmpty() || bounds.missing().isPresent()) {
            return Optional.empty();
        }
        double per = numeric.edges().per().get().valueIn(Unit.SECOND);
        double most = upper.get().value() * MINUTE / per;
        return Optional.of(new LossDemand(ruling, most, Math.max(per, heldFor(before, ruling))));
    }

    private static double heldFor(Case before, Ruling ruling) {
        double longest = 0;
        for (Demand demand : ruling.rule().method().demands()) {
            if (demand.circumstance() == Circumstance.HELD_FOR && demand.limit().isPresent()) {
                NumericLimit limit = demand.limit().get();
                Bounds bounds = Bounds.in(before, Unit.SECOND, Circumstances.NONE);
                longest = Math.max(longest, bounds.lower(limit).map(Edge::value).orElse(0.0));
            }
        }
        return longest;
    }
}
