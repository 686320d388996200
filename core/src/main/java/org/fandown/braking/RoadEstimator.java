package org.fandown.braking;

import java.util.List;
import java.util.Optional;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/** What the forces at the tyres do on the road. */
final class RoadEstimator {
    /** Below this (ft/s2) the brakes are not said to stop the vehicle. */
    private static final double LEAST_DECELERATION = 0.1;

    private final Quantity speed;
    private final Assumed assumed;

    RoadEstimator(Quantity speed, Assumed assumed) {
        this.speed = speed;
        this.assumed = assumed;
    }

    Stop stop(List<Span> axleForces, Weight weight) {
        Span share = shareOfWeight(axleForces, weight);
        Span deceleration = share.times(Stopping.GRAVITY);
        return new Stop(
                Range.of(deceleration, Unit.FT_PER_S2),
                StateEstimator.percent(share, 1),
                distance(deceleration.most()),
                distance(deceleration.least()));
    }

    Range grade(List<Span> axleForces, Weight weight) {
        Span sine = shareOfWeight(axleForces, weight);
        return StateEstimator.percent(new Span(tangent(sine.least()), tangent(sine.most())), 1);
    }

    private Span shareOfWeight(List<Span> axleForces, Weight weight) {
        double friction = assumed.use(Assumption.ROAD_FRICTION);
        return weight.throughRoad(axleForces, friction).times(1 / weight.pounds());
    }

    private Optional<Quantity> distance(double deceleration) {
        double dead = assumed.use(Assumption.DEAD_TIME);
        double rise = assumed.use(Assumption.RISE_TIME);
        if (deceleration < LEAST_DECELERATION) {
            return Optional.empty();
        }
        double v = Stopping.feetPerSecond(speed);
        return Optional.of(Quantity.of(Stopping.feet(v, deceleration, dead, rise), Unit.FOOT));
    }

    private static double tangent(double sine) {
        return sine / Math.sqrt(1 - sine * sine);
    }
}
