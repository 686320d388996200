package org.fandown.procedure;

import org.fandown.units.Unit;
import org.fandown.vehicle.Axle;
import org.fandown.vehicle.BrakePower;
import org.fandown.vehicle.Reservoir;
import org.fandown.vehicle.ReservoirRole;
import org.fandown.vehicle.Side;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;
import org.fandown.vehicle.WheelEnd;

/**
 * The volumes of a vehicle's air system, in cubic inches.
 *
 * @param powered reservoirs and lines of the powered unit
 * @param supply its supply reservoir, 0 if there is none
 * @param towed reservoirs and lines of the towed units
 * @param poweredChambers service chambers of the powered unit, rods out
 * @param springs hold-off chambers of the powered unit
 */
record AirVolumes(
        double powered, double supply, double towed, double poweredChambers, double springs) {
    private static final double LEAST = 200;
    private static final double SUPPLY_SHARE = 0.25;

    static AirVolumes of(Vehicle vehicle) {
        VehicleUnit front = vehicle.powerUnit();
        double chambers = Math.max(LEAST / 4, chambers(front));
        double ratio = PlanDefault.RESERVOIR_RATIO.number();
        double reservoirs = reservoirs(front, chambers * ratio);
        double towed = 0;
        for (VehicleUnit unit : vehicle.towedUnits()) {
            if (unit.brakes() != BrakePower.NONE) {
                double usual = Math.max(LEAST, chambers(unit) * PlanDefault.TOWED_RATIO.number());
                towed += reservoirs(unit, usual) + PlanDefault.TOWED_LINES.number();
            }
        }
        return new AirVolumes(
                reservoirs + PlanDefault.OTHER_VOLUME.number(),
                supply(front, reservoirs),
                towed,
                chambers,
                springs(front));
    }

    private static double supply(VehicleUnit unit, double reservoirs) {
        double given = sum(unit, ReservoirRole.SUPPLY);
        boolean none =
                unit.air()
                        .kind()
                        .map(k -> k == org.fandown.vehicle.SupplyKind.INTEGRATED_DRYER_UNIT)
                        .orElse(false);
        return given > 0 ? given : none ? 0 : SUPPLY_SHARE * reservoirs;
    }

    private static double sum(VehicleUnit unit, ReservoirRole role) {
        double sum = 0;
        for (Reservoir reservoir : unit.reservoirs()) {
            if (reservoir.role() == role && reservoir.volume().isPresent()) {
                sum += reservoir.volume().get().valueIn(Unit.CUBIC_INCH);
            }
        }
        return sum;
    }

    private static double reservoirs(VehicleUnit unit, double usual) {
        double sum = 0;
        for (ReservoirRole role : ReservoirRole.values()) {
            sum += role == ReservoirRole.PURGE ? 0 : sum(unit, role);
        }
        return sum > 0 ? sum : usual;
    }

    private static double chambers(VehicleUnit unit) {
        double sum = 0;
        for (Axle axle : unit.axles()) {
            for (Side side : Side.values()) {
                sum += area(axle.end(side)) * PlanDefault.TRAVEL.number();
            }
        }
        return sum;
    }

    private static double springs(VehicleUnit unit) {
        double sum = 0;
        for (Axle axle : unit.axles()) {
            for (Side side : Side.values()) {
                WheelEnd end = axle.end(side);
                double each = area(end) * PlanDefault.SPRING_VOLUME.number();
                sum += end.springBrake() ? each : 0;
            }
        }
        return sum;
    }

    private static double area(WheelEnd end) {
        if (end.chamber().isEmpty()) {
            return 0;
        }
        return end.chamber()
                .flatMap(chamber -> chamber.entry())
                .map(entry -> entry.areaSquareInches())
                .orElse(PlanDefault.AREA.number());
    }
}
