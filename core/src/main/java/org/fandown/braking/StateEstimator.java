package org.fandown.braking;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.Side;
import org.fandown.vehicle.WheelId;

/** Makes the estimate of the whole vehicle at one temperature of the drums. */
final class StateEstimator {
    private static final double PERCENT = 100;

    private final Map<WheelId, WheelModel> wheels;
    private final WheelEstimator each;
    private final Answer<Weight> weight;
    private final RoadEstimator road;

    StateEstimator(
            Map<WheelId, WheelModel> wheels,
            WheelEstimator each,
            Answer<Weight> weight,
            RoadEstimator road) {
        this.wheels = wheels;
        this.each = each;
        this.weight = weight;
        this.road = road;
    }

    HeatState estimate() {
        List<WheelEstimate> estimates = new ArrayList<>();
        wheels.forEach((id, model) -> estimates.add(each.estimate(id, model)));
        Answer<List<Span>> forces = byAxle(each::atTyre);
        Answer<Span> total = total(forces);
        return new HeatState(
                Quantity.of(each.drum().inFahrenheit(), Unit.FAHRENHEIT),
                estimates,
                axles(estimates),
                total.then(span -> Answer.known(Range.of(span, Unit.LBF))),
                total.then(this::share),
                forces.then(spans -> weight.then(w -> Answer.known(road.stop(spans, w)))),
                hold());
    }

    private static Answer<Span> total(Answer<List<Span>> forces) {
        return forces.then(spans -> Answer.known(Span.sum(spans)));
    }

    private Answer<Range> share(Span force) {
        return total(byAxle(each::adjustedAtTyre))
                .then(
                        adjusted ->
                                adjusted.most() > 0
                                        ? Answer.known(percent(force, adjusted.most()))
                                        : Answer.unknown("no wheel would brake if adjusted"));
    }

    private Answer<Hold> hold() {
        if (wheels.values().stream().noneMatch(each::parks)) {
            return Answer.unknown("no wheel has a spring brake");
        }
        return byAxle(each::parkedAtTyre)
                .then(
                        spans -> {
                            Range force = Range.of(Span.sum(spans), Unit.LBF);
                            Answer<Range> grade =
                                    weight.then(w -> Answer.known(road.grade(spans, w)));
                            return Answer.known(new Hold(force, grade));
                        });
    }

    /**
     * Adds the two ends of each axle, from the front; the first unknown wheel makes all unknown.
     */
    private Answer<List<Span>> byAxle(Function<WheelModel, Answer<Span>> force) {
        List<Span> axles = new ArrayList<>();
        for (Map.Entry<WheelId, WheelModel> wheel : wheels.entrySet()) {
            Answer<Span> answer = force.apply(wheel.getValue());
            if (answer.value().isEmpty()) {
                return Answer.unknown(answer.reason());
            }
            Span span = answer.value().get();
            if (wheel.getKey().side() == Side.LEFT) {
                axles.add(span);
            } else {
                int last = axles.size() - 1;
                axles.set(last, Span.sum(List.of(axles.get(last), span)));
            }
        }
        return Answer.known(axles);
    }

    private static List<AxleEstimate> axles(List<WheelEstimate> wheels) {
        List<AxleEstimate> axles = new ArrayList<>();
        for (int i = 0; i + 1 < wheels.size(); i += 2) {
            axles.add(axle(wheels.get(i), wheels.get(i + 1)));
        }
        return axles;
    }

    private static AxleEstimate axle(WheelEstimate left, WheelEstimate right) {
        Answer<Range> force =
                left.force()
                        .then(
                                l ->
                                        right.force()
                                                .then(
                                                        r ->
                                                                Answer.known(
                                                                        sum(
                                                                                l.atTyre(),
                                                                                r.atTyre()))));
        return new AxleEstimate(left.wheel().axle(), force, imbalance(left, right));
    }

    private static Range sum(Range left, Range right) {
        return new Range(
                Quantity.of(left.least().value() + right.least().value(), Unit.LBF),
                Quantity.of(left.most().value() + right.most().value(), Unit.LBF));
    }

    private static Optional<Quantity> imbalance(WheelEstimate left, WheelEstimate right) {
        boolean read = left.status() == WheelStatus.READ || right.status() == WheelStatus.READ;
        if (!read || left.isOpen() || right.isOpen()) {
            return Optional.empty();
        }
        double l = left.force().value().orElseThrow().atTyre().most().value();
        double r = right.force().value().orElseThrow().atTyre().most().value();
        double stronger = Math.max(l, r);
        double percent = stronger > 0 ? Math.abs(l - r) / stronger * PERCENT : 0;
        return Optional.of(Quantity.of(percent, Unit.PERCENT));
    }

    static Range percent(Span part, double whole) {
        return Range.of(part.times(PERCENT / whole), Unit.PERCENT);
    }
}
