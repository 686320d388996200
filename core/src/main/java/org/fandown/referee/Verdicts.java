package org.fandown.referee;

import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fandown.check.Check;
import org.fandown.check.CheckKind;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.Instruments;
import org.fandown.evidence.Observations;
import org.fandown.evidence.Report;
import org.fandown.judgement.Judge;
import org.fandown.judgement.Judgement;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.StepSet;
import org.fandown.rulebook.RulesInForce;
import org.fandown.rulebook.Ruling;

/**
 * What follows from the observations of a run. Only rules count whose check can be made on the
 * practice truck, or of which something was written down: papers, testers and test tracks do not.
 */
final class Verdicts {
    private Verdicts() {}

    static Judgement of(Observations observations, StepSet set, Attempts attempts) {
        RulesInForce rules = set.rules();
        Set<Check> checks = EnumSet.of(Check.COMPONENT_CONDITION);
        for (CheckStep step : set.checks()) {
            checks.addAll(step.checks());
        }
        checks.addAll(attempts.inTurn());
        List<Ruling> kept = new ArrayList<>();
        for (Ruling ruling : rules.rulings()) {
            Check check = ruling.rule().check();
            if (checks.contains(check) && check.kind() != CheckKind.REPORT) {
                kept.add(ruling);
            }
        }
        RulesInForce made =
                new RulesInForce(
                        rules.lineage(),
                        rules.vehicle(),
                        rules.day(),
                        kept,
                        rules.setAside(),
                        rules.gaps());
        return Judge.by(made).judge(inspection(observations, rules));
    }

    /** Circumstances are watched by the referee, so they count as printed unless noted. */
    private static Inspection inspection(Observations observations, RulesInForce rules) {
        return new Inspection(
                rules.place(),
                OffsetDateTime.of(rules.day(), LocalTime.NOON, ZoneOffset.UTC),
                rules.vehicle(),
                new Report(Map.of()),
                Instruments.USUAL,
                true,
                observations,
                List.of(),
                true);
    }
}
