package org.fandown.procedure;

import org.fandown.vehicle.AxlePosition;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;

/** Ways along a vehicle, in tenths of a second. */
final class Walks {
    private static final double TENTHS = 10;
    private static final double WIDTH = 2.5;

    private final double[] metres = new double[Spot.values().length];
    private final double length;

    private Walks(double length, double drive, double coupling) {
        this.length = length;
        metres[Spot.WHEEL.code()] = drive;
        metres[Spot.COUPLING.code()] = coupling;
        metres[Spot.RESERVOIRS.code()] = Math.max(drive - 1, 1);
        metres[Spot.REAR.code()] = length;
    }

    static Walks of(Vehicle vehicle) {
        double at = PlanDefault.FRONT.number();
        double drive = 0;
        double coupling = 0;
        for (VehicleUnit unit : vehicle.units()) {
            AxlePosition last = unit.axles().get(0).position();
            for (var axle : unit.axles()) {
                at +=
                        axle.position() == last
                                ? PlanDefault.AXLE_STEP.number()
                                : PlanDefault.GROUP_STEP.number();
                last = axle.position();
                drive = drive == 0 && last != AxlePosition.STEER ? at : drive;
            }
            at += PlanDefault.GROUP_STEP.number();
            coupling = coupling == 0 ? at - PlanDefault.GROUP_STEP.number() : coupling;
        }
        return new Walks(at, drive, coupling);
    }

    int between(Spot from, Spot to) {
        if (from == to) {
            return 0;
        }
        double way = Math.abs(metres[from.code()] - metres[to.code()]);
        boolean climbs = from == Spot.CAB || to == Spot.CAB;
        double seconds =
                way / PlanDefault.PACE.number() + (climbs ? PlanDefault.CLIMB.number() : 0);
        return (int) Math.ceil(TENTHS * seconds);
    }

    int round() {
        return (int) Math.ceil(TENTHS * 2 * (length + WIDTH) / PlanDefault.PACE.number());
    }
}
