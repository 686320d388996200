package org.fandown.braking;

import java.util.Optional;
import java.util.Set;
import org.fandown.units.Quantity;
import org.fandown.units.Temperature;
import org.fandown.units.Unit;
import org.fandown.vehicle.WheelId;

/** Makes the estimate of single wheels at one pressure and one temperature of the drums. */
final class WheelEstimator {
    private final double psi;
    private final Temperature drum;
    private final double heatGrowth;
    private final double rollingGrowth;

    WheelEstimator(double psi, Temperature drum, double rollingGrowthInches) {
        this.psi = psi;
        this.drum = drum;
        this.heatGrowth = StrokeModel.drumGrowth(drum).inInches();
        this.rollingGrowth = rollingGrowthInches;
    }

    Temperature drum() {
        return drum;
    }

    WheelEstimate estimate(WheelId id, WheelModel model) {
        if (model instanceof BrakeModel brake) {
            return estimate(id, brake);
        }
        WheelStatus status =
                model instanceof WheelModel.Unbraked
                        ? WheelStatus.UNBRAKED
                        : WheelStatus.NOT_ESTIMABLE;
        Answer<WheelForce> force =
                atTyre(model).then(none -> Answer.known(force(Span.ZERO, none, Optional.empty())));
        return new WheelEstimate(id, status, Optional.empty(), Set.of(), force);
    }

    private WheelEstimate estimate(WheelId id, BrakeModel brake) {
        Span pushRod = brake.pushRod(psi, serviceGrowth(brake));
        Span atTyre = atTyre(brake, pushRod);
        double adjusted = brake.brake().atTyre(brake.adjustedPushRod(psi));
        Optional<Range> share =
                adjusted > 0
                        ? Optional.of(StateEstimator.percent(atTyre, adjusted))
                        : Optional.empty();
        return new WheelEstimate(
                id,
                brake.read().isPresent() ? WheelStatus.READ : WheelStatus.NOT_READ,
                stroke(brake),
                brake.notes(psi, serviceGrowth(brake)),
                Answer.known(force(pushRod, atTyre, share)));
    }

    private Optional<Quantity> stroke(BrakeModel brake) {
        return brake.read()
                .map(
                        strokes ->
                                Quantity.of(
                                        strokes.longerBy(serviceGrowth(brake)).strokeAt(psi),
                                        Unit.INCH));
    }

    private static WheelForce force(Span pushRod, Span atTyre, Optional<Range> share) {
        return new WheelForce(Range.of(pushRod, Unit.LBF), Range.of(atTyre, Unit.LBF), share);
    }

    /** Brake force (lbf) of the application. */
    Answer<Span> atTyre(WheelModel model) {
        return forBrake(model, brake -> atTyre(brake, brake.pushRod(psi, serviceGrowth(brake))));
    }

    /** Brake force (lbf) of the application with the brake cold and fully adjusted. */
    Answer<Span> adjustedAtTyre(WheelModel model) {
        return forBrake(model, brake -> atTyre(brake, Span.exactly(brake.adjustedPushRod(psi))));
    }

    /** Whether the wheel is held when parked, as far as known. */
    boolean parks(WheelModel model) {
        return model instanceof BrakeModel brake && brake.parking() != BrakeModel.Parking.NOTHING;
    }

    /** Holding force (lbf) of the parked wheel. */
    Answer<Span> parkedAtTyre(WheelModel model) {
        if (!(model instanceof BrakeModel brake)) {
            return atTyre(model);
        }
        return switch (brake.parking()) {
            case NOTHING -> Answer.known(Span.ZERO);
            case SPRING -> Answer.known(atTyre(brake, brake.parked(heat(brake))));
            case ROLLERS ->
                    Answer.unknown("dd3 chambers park by locking rollers, whose hold is not known");
        };
    }

    private interface ForBrake {
        Span force(BrakeModel brake);
    }

    private static Answer<Span> forBrake(WheelModel model, ForBrake force) {
        if (model instanceof BrakeModel brake) {
            return Answer.known(force.force(brake));
        }
        return model instanceof WheelModel.Unknown unknown
                ? Answer.unknown(unknown.reason())
                : Answer.known(Span.ZERO);
    }

    private static Span atTyre(BrakeModel brake, Span pushRod) {
        return new Span(
                brake.brake().atTyre(pushRod.least()), brake.brake().atTyre(pushRod.most()));
    }

    private double serviceGrowth(BrakeModel brake) {
        return heat(brake) + rollingGrowth;
    }

    private double heat(BrakeModel brake) {
        return brake.growsHot() ? heatGrowth : 0;
    }
}
