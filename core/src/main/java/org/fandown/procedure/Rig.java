package org.fandown.procedure;

import java.util.ArrayList;
import java.util.List;
import org.fandown.check.Check;
import org.fandown.vehicle.BrakeKind;
import org.fandown.vehicle.BrakePower;
import org.fandown.vehicle.Part;
import org.fandown.vehicle.ReservoirRole;
import org.fandown.vehicle.SupplyKind;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;
import org.fandown.vehicle.WheelId;

/** What a vehicle has, as far as checks depend on it. */
record Rig(Vehicle vehicle, Durations durations) {
    boolean tows() {
        return vehicle.has(Part.AIR_BRAKED_TRAILER);
    }

    boolean springs() {
        return vehicle.powerUnit().axles().stream().anyMatch(axle -> axle.hasSpringBrake());
    }

    boolean hasSupplyReservoir() {
        boolean integrated =
                vehicle.powerUnit()
                        .air()
                        .kind()
                        .map(k -> k == SupplyKind.INTEGRATED_DRYER_UNIT)
                        .orElse(false);
        return !integrated;
    }

    int reservoirs() {
        int count = 0;
        for (VehicleUnit unit : vehicle.units()) {
            boolean known = !unit.reservoirs().isEmpty();
            long drains =
                    unit.reservoirs().stream().filter(r -> r.role() != ReservoirRole.PURGE).count();
            boolean braked = unit.brakes() != BrakePower.NONE;
            count += known ? (int) drains : !braked ? 0 : unit.isPowered() ? 3 : 1;
        }
        return count;
    }

    /** Wheels whose push rods can be reached. */
    List<WheelId> pushRods() {
        List<WheelId> wheels = new ArrayList<>();
        for (WheelId id : vehicle.wheelsWithPushRod()) {
            if (vehicle.wheel(id).brake() == BrakeKind.DRUM) {
                wheels.add(id);
            }
        }
        return wheels;
    }

    /** Whether a check means something on this vehicle. */
    boolean concerns(Check check) {
        return switch (check) {
            case TRAILER_SUPPLY_CLOSING,
                    TRACTOR_PROTECTION,
                    TRACTOR_PROTECTION_FITTED,
                    SERVICE_LINE_TIGHT,
                    SUPPLY_LINE_TIGHT,
                    TRAILER_BRAKES_APPLY,
                    TRAILER_BRAKES_RELEASE,
                    TRAILER_BRAKES_HOLD,
                    TRAILER_SERVICE_BRAKES,
                    AIR_REACHES_TRAILERS ->
                    tows();
            case COUPLING_TUG -> vehicle.has(Part.TRAILER) || vehicle.has(Part.DOLLY);
            case TRAILER_SPRING_BRAKES_APPLY -> vehicle.has(Part.TRAILER_SPRING_BRAKES);
            case PARKING_VALVE_CLOSING -> springs();
            case PUSHROD_APPLIED_STROKE,
                    PUSHROD_FREE_STROKE,
                    ADJUSTER_HAND_PLAY,
                    ADJUSTERS_CHECKED ->
                    !pushRods().isEmpty();
            case CHECK_VALVE -> hasSupplyReservoir();
            case ABS_LAMP -> vehicle.powerUnit().abs().orElse(false);
            case TRAILER_ABS_LAMP ->
                    vehicle.towedUnits().stream().anyMatch(u -> u.abs().orElse(false));
            default -> true;
        };
    }
}
