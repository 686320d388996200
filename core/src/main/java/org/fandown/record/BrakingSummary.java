package org.fandown.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.braking.Assumption;
import org.fandown.braking.BrakingEstimate;
import org.fandown.braking.HeatState;
import org.fandown.rulebook.RulesInForce;
import org.fandown.units.Unit;

/**
 * What the strokes mean, in a few lines for a person. An estimate by a model, never a finding.
 *
 * @param lines the lines
 * @param assumptions what they rest on
 */
public record BrakingSummary(List<Line> lines, List<String> assumptions) {

    /**
     * One line.
     *
     * @param drums state of the drums: {@code cold}, {@code at 400 F}
     * @param what what is estimated
     * @param value the estimate
     * @param remark what it is compared with, empty if nothing
     */
    public record Line(String drums, String what, String value, String remark) {}

    /** Copies the lists. */
    public BrakingSummary {
        lines = List.copyOf(lines);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * The summary.
     *
     * @param estimate the estimate
     * @param yardsticks rules in force of a place that limits stops from 20 mph, to compare with;
     *     empty for none
     */
    public static BrakingSummary of(BrakingEstimate estimate, Optional<RulesInForce> yardsticks) {
        List<Line> lines = new ArrayList<>();
        lines.addAll(BrakingLines.of("cold", estimate.cold(), yardsticks));
        for (HeatState hot : estimate.hot()) {
            String drums = "at " + hot.drums().print(Unit.FAHRENHEIT);
            lines.addAll(BrakingLines.of(drums, hot, yardsticks));
        }
        List<String> assumptions = new ArrayList<>();
        for (Assumption assumption : estimate.assumptions()) {
            String value = assumption.value().isEmpty() ? "" : ": " + assumption.value();
            assumptions.add(assumption.label() + value);
        }
        return new BrakingSummary(lines, assumptions);
    }
}
