package org.fandown.rulebook;

import org.fandown.check.Check;
import org.fandown.vehicle.BrakeKind;
import org.fandown.vehicle.BrakePower;
import org.fandown.vehicle.Part;
import org.fandown.vehicle.UnitKind;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;
import org.fandown.vehicle.WheelEnd;

/** Which checks concern a vehicle at all, whatever the place says. */
final class CheckScope {
    private CheckScope() {}

    static boolean concerns(Check check, Vehicle vehicle) {
        return switch (check) {
            case TRAILER_SUPPLY_CLOSING -> vehicle.has(Part.AIR_BRAKED_TRAILER);
            case PUSHROD_APPLIED_STROKE -> hasExposedPushRods(vehicle);
            default -> true;
        };
    }

    static boolean hasExposedPushRods(Vehicle vehicle) {
        return vehicle.wheels().stream().anyMatch(w -> isExposed(vehicle.wheel(w)));
    }

    static boolean isExposed(WheelEnd end) {
        return end.hasPushRod() && end.brake() == BrakeKind.DRUM;
    }

    /** Vehicles with brakes worked by air, converter dollies not counted. */
    static int airBrakedVehicles(Vehicle vehicle) {
        int count = 0;
        for (VehicleUnit unit : vehicle.units()) {
            if (unit.brakes() != BrakePower.NONE && unit.kind() != UnitKind.DOLLY) {
                count++;
            }
        }
        return count;
    }

    /** The wheels at which a check is made, before a rule's own criteria. */
    static Applies.WheelCriterion atWheels(Check check) {
        return switch (check) {
            case PUSHROD_APPLIED_STROKE,
                    PUSHROD_FREE_STROKE,
                    ADJUSTER_HAND_PLAY,
                    STROKE_INDICATOR_HIDDEN ->
                    (vehicle, wheel) -> Fit.of(isExposed(vehicle.wheel(wheel)));
            case WEDGE_LINING_MOVEMENT ->
                    (vehicle, wheel) -> Fit.of(vehicle.wheel(wheel).brake() == BrakeKind.WEDGE);
            case CAM_ANGLE ->
                    (vehicle, wheel) -> Fit.of(vehicle.wheel(wheel).brake() == BrakeKind.DRUM);
            case CHAMBER_MATCH -> (vehicle, wheel) -> Fit.of(vehicle.wheel(wheel).hasPushRod());
            default -> (vehicle, wheel) -> Fit.of(vehicle.wheel(wheel).isBraked());
        };
    }
}
