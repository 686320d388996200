package org.fandown.rulebook;

import java.time.LocalDate;
import java.util.Optional;
import org.fandown.rulebook.Applies.WheelCriterion;
import org.fandown.vehicle.AxlePosition;
import org.fandown.vehicle.BrakeKind;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.Lining;

/** The criteria on one wheel that a rule's {@code applies} can name. */
final class WheelCriteria {
    private WheelCriteria() {}

    static WheelCriterion wheelUnitBuilt(Optional<LocalDate> from, Optional<LocalDate> before) {
        return (vehicle, wheel) -> Criteria.built(vehicle.unitOf(wheel.axle()), from, before);
    }

    static WheelCriterion steerAxle(boolean wanted) {
        return (vehicle, wheel) ->
                Fit.of((vehicle.axle(wheel.axle()).position() == AxlePosition.STEER) == wanted);
    }

    static WheelCriterion brake(BrakeKind kind) {
        return (vehicle, wheel) -> Fit.of(vehicle.wheel(wheel).brake() == kind);
    }

    static WheelCriterion chamber(Chamber wanted) {
        return (vehicle, wheel) ->
                Fit.of(
                        vehicle.wheel(wheel)
                                .chamber()
                                .map(
                                        c ->
                                                c.sameSizeAs(wanted)
                                                        && c.longStroke() == wanted.longStroke())
                                .orElse(false));
    }

    static WheelCriterion lining(Lining lining) {
        return (vehicle, wheel) ->
                vehicle.wheel(wheel)
                        .lining()
                        .map(l -> Fit.of(l == lining))
                        .orElseGet(() -> Fit.unknown("the form of the lining at " + wheel));
    }
}
