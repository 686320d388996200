package org.fandown.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.braking.Answer;
import org.fandown.braking.AxleEstimate;
import org.fandown.braking.HeatState;
import org.fandown.braking.Hold;
import org.fandown.braking.Range;
import org.fandown.braking.Stop;
import org.fandown.check.Check;
import org.fandown.record.BrakingSummary.Line;
import org.fandown.rulebook.RulesInForce;
import org.fandown.rulebook.Ruling;
import org.fandown.units.Decimals;
import org.fandown.units.Quantity;

/** The lines of a braking summary for one state of the drums. */
final class BrakingLines {
    private static final String STOP = "stop from 20 mph";
    private static final String HOLD = "grade the parking brakes hold";
    private static final String NOT_KNOWN = "not known";

    private final String drums;
    private final Optional<RulesInForce> yardsticks;
    private final List<Line> lines = new ArrayList<>();

    private BrakingLines(String drums, Optional<RulesInForce> yardsticks) {
        this.drums = drums;
        this.yardsticks = yardsticks;
    }

    static List<Line> of(String drums, HeatState state, Optional<RulesInForce> yardsticks) {
        BrakingLines lines = new BrakingLines(drums, yardsticks);
        lines.force(state);
        lines.stop(state.stop());
        lines.hold(state.hold());
        return lines.lines;
    }

    private void add(String what, String value, String remark) {
        lines.add(new Line(drums, what, value, remark));
    }

    private void force(HeatState state) {
        Optional<Range> share = state.shareOfAdjusted().value();
        if (share.isPresent()) {
            add("braking force beside fully adjusted brakes", text(share.get()), bottomed(state));
        }
        Optional<AxleEstimate> worst = worstImbalance(state);
        if (worst.isPresent()) {
            String difference = number(worst.get().imbalance().orElseThrow());
            add("greatest left-right difference", difference, "axle " + worst.get().axle());
        }
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

    private void stop(Answer<Stop> answer) {
        if (answer.value().isEmpty()) {
            add(STOP, NOT_KNOWN, answer.reason());
            return;
        }
        Stop stop = answer.value().get();
        add("deceleration", text(stop.deceleration()), yardstick(Check.DECELERATION));
        String distance =
                stop.shortest().map(BrakingLines::number).orElse("no stop")
                        + stop.longest()
                                .filter(d -> !stop.shortest().equals(Optional.of(d)))
                                .map(d -> " to " + number(d))
                                .orElse(stop.longest().isEmpty() ? " or more" : "");
        add(STOP, distance, yardstick(Check.STOPPING_DISTANCE));
    }

    private void hold(Answer<Hold> answer) {
        if (answer.value().isEmpty()) {
            add(HOLD, NOT_KNOWN, answer.reason());
            return;
        }
        Answer<Range> grade = answer.value().get().grade();
        String value = grade.value().map(BrakingLines::text).orElse(NOT_KNOWN);
        add(HOLD, value, grade.reason());
    }

    private String yardstick(Check check) {
        return yardsticks
                .flatMap(r -> r.of(check).stream().filter(Ruling::decides).findFirst())
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

    private static String text(Range range) {
        return range.isExact()
                ? number(range.least())
                : Decimals.formatShort(range.least().value(), 1) + " to " + number(range.most());
    }

    private static String number(Quantity quantity) {
        return Decimals.formatShort(quantity.value(), 1) + " " + quantity.unit().symbol();
    }
}
