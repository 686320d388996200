package org.fandown.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.braking.Answer;
import org.fandown.braking.Assumption;
import org.fandown.braking.AxleEstimate;
import org.fandown.braking.BrakingEstimate;
import org.fandown.braking.HeatState;
import org.fandown.braking.Hold;
import org.fandown.braking.Range;
import org.fandown.braking.Stop;
import org.fandown.check.Check;
import org.fandown.rulebook.RulesInForce;
import org.fandown.rulebook.Ruling;
import org.fandown.units.Decimals;
import org.fandown.units.Quantity;
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
        heat(lines, "cold", estimate.cold(), yardsticks);
        for (HeatState hot : estimate.hot()) {
            heat(lines, "at " + hot.drums().print(Unit.FAHRENHEIT), hot, yardsticks);
        }
        List<String> assumptions = new ArrayList<>();
        for (Assumption assumption : estimate.assumptions()) {
            String value = assumption.value().isEmpty() ? "" : ": " + assumption.value();
            assumptions.add(assumption.label() + value);
        }
        return new BrakingSummary(lines, assumptions);
    }

    private static void heat(
            List<Line> lines, String drums, HeatState state, Optional<RulesInForce> yardsticks) {
        known(state.shareOfAdjusted())
                .ifPresent(
                        share ->
                                lines.add(
                                        new Line(
                                                drums,
                                                "braking force beside fully adjusted brakes",
                                                text(share),
                                                bottomed(state))));
        worstImbalance(state)
                .ifPresent(
                        worst ->
                                lines.add(
                                        new Line(
                                                drums,
                                                "greatest left-right difference",
                                                number(worst.imbalance().orElseThrow()),
                                                "axle " + worst.axle())));
        stop(lines, drums, state.stop(), yardsticks);
        hold(lines, drums, state.hold());
    }

    private static String bottomed(HeatState state) {
        StringBuilder wheels = new StringBuilder();
        state.wheels().stream()
                .filter(w -> w.isBottomed())
                .forEach(w -> wheels.append(wheels.length() == 0 ? "" : ", ").append(w.wheel()));
        return wheels.length() == 0 ? "" : "stroke used up at " + wheels;
    }

    private static Optional<AxleEstimate> worstImbalance(HeatState state) {
        AxleEstimate worst = null;
        for (AxleEstimate axle : state.axles()) {
            boolean worse =
                    axle.imbalance().isPresent()
                            && axle.imbalance().get().value() > 0
                            && (worst == null
                                    || axle.imbalance().get().value()
                                            > worst.imbalance().orElseThrow().value());
            worst = worse ? axle : worst;
        }
        return Optional.ofNullable(worst);
    }

    private static void stop(
            List<Line> lines,
            String drums,
            Answer<Stop> answer,
            Optional<RulesInForce> yardsticks) {
        if (answer.value().isEmpty()) {
            lines.add(new Line(drums, "stop from 20 mph", "not known", answer.reason()));
            return;
        }
        Stop stop = answer.value().get();
        lines.add(
                new Line(
                        drums,
                        "deceleration",
                        text(stop.deceleration()),
                        yardstick(yardsticks, Check.DECELERATION)));
        String distance =
                stop.shortest().map(BrakingSummary::number).orElse("no stop")
                        + stop.longest()
                                .filter(d -> !stop.shortest().equals(Optional.of(d)))
                                .map(d -> " to " + number(d))
                                .orElse(stop.longest().isEmpty() ? " or more" : "");
        lines.add(
                new Line(
                        drums,
                        "stop from 20 mph",
                        distance,
                        yardstick(yardsticks, Check.STOPPING_DISTANCE)));
    }

    private static void hold(List<Line> lines, String drums, Answer<Hold> answer) {
        if (answer.value().isEmpty()) {
            lines.add(
                    new Line(drums, "grade the parking brakes hold", "not known", answer.reason()));
            return;
        }
        Answer<Range> grade = answer.value().get().grade();
        lines.add(
                new Line(
                        drums,
                        "grade the parking brakes hold",
                        known(grade).map(BrakingSummary::text).orElse("not known"),
                        grade.reason()));
    }

    private static String yardstick(Optional<RulesInForce> rules, Check check) {
        return rules.flatMap(r -> r.of(check).stream().filter(Ruling::decides).findFirst())
                .map(
                        r ->
                                "limit "
                                        + r.limit()
                                        + ", "
                                        + r.value().source().work()
                                        + " "
                                        + r.value().source().section())
                .orElse("");
    }

    private static <T> Optional<T> known(Answer<T> answer) {
        return answer.value();
    }

    private static String text(Range range) {
        return range.isExact()
                ? number(range.least())
                : Decimals.formatShort(range.least().value(), 1) + " to " + number(range.most());
    }

    private static String number(Quantity quantity) {
        return Decimals.formatShort(quantity.value(), 1) + " " + quantity.unit().symbol();
    }
}
