package org.fandown.air;

import java.util.List;
import org.fandown.units.Unit;
import org.fandown.vehicle.Reservoir;
import org.fandown.vehicle.ReservoirRole;
import org.fandown.vehicle.VehicleUnit;

/** Volumes of the reservoirs of a unit: from the vehicle file, or else by its chambers. */
final class ReservoirSizes {
    private static final double LEAST = 600;
    private static final double SUPPLY_SHARE = 0.25;
    private static final double PRIMARY_SHARE = 0.4;
    private static final double SECONDARY_SHARE = 0.35;

    private final List<Reservoir> given;
    private final double total;

    /**
     * Makes them.
     *
     * @param unit the unit
     * @param chambers rated volume of its service chambers, in3
     * @param ratio reservoirs over chambers where the file gives none
     */
    ReservoirSizes(VehicleUnit unit, double chambers, double ratio) {
        given = unit.reservoirs();
        total = Math.max(4 * LEAST, ratio * chambers);
    }

    double supply() {
        return sized(ReservoirRole.SUPPLY, SUPPLY_SHARE * total);
    }

    double primary() {
        return sized(ReservoirRole.PRIMARY, PRIMARY_SHARE * total);
    }

    double secondary() {
        return sized(ReservoirRole.SECONDARY, SECONDARY_SHARE * total);
    }

    /** Reservoirs of a towed unit; all of them count as one. */
    double towed() {
        return sized(ReservoirRole.TRAILER, Math.max(LEAST, total));
    }

    /** Returns the volume of the parking reservoirs, 0 if there is none. */
    double parking() {
        return sized(ReservoirRole.PARKING, 0);
    }

    /** Returns the volume given for the dryer's purge, or the usual one. */
    double purge(double usual) {
        return sized(ReservoirRole.PURGE, usual);
    }

    private double sized(ReservoirRole role, double otherwise) {
        double sum = 0;
        for (Reservoir reservoir : given) {
            if (reservoir.role() == role && reservoir.volume().isPresent()) {
                sum += reservoir.volume().get().valueIn(Unit.CUBIC_INCH);
            }
        }
        return sum > 0 ? sum : otherwise;
    }
}
