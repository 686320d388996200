package org.fandown.judgement;

import java.util.List;
import java.util.Optional;
import org.fandown.units.Unit;
import org.fandown.vehicle.Axle;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.ChamberEntry;
import org.fandown.vehicle.Reservoir;
import org.fandown.vehicle.ReservoirRole;
import org.fandown.vehicle.Side;
import org.fandown.vehicle.VehicleUnit;

/**
 * Reservoir volume of a unit as a share of the volume of its service chambers.
 *
 * <p>Source: 49 CFR 571.121 S5.1.2.1 and S5.2.1.1 (service and supply reservoirs together; chamber
 * volumes of Table V).
 */
final class ReservoirVolume {
    /** Twelve times the chambers: what the standard asks of a truck or bus (percent). */
    static final double REQUIRED_PERCENT_POWERED = 1200;

    private ReservoirVolume() {}

    /** The share (percent), empty if a reservoir or chamber volume is not known. */
    static Optional<Double> percentOfChambers(VehicleUnit unit) {
        List<Reservoir> reservoirs = unit.reservoirs();
        Optional<Double> chambers = chambers(unit);
        if (reservoirs.isEmpty() || chambers.isEmpty() || chambers.get() == 0) {
            return Optional.empty();
        }
        double total = 0;
        for (Reservoir reservoir : reservoirs) {
            if (reservoir.role() == ReservoirRole.PARKING
                    || reservoir.role() == ReservoirRole.PURGE) {
                continue;
            }
            if (reservoir.volume().isEmpty()) {
                return Optional.empty();
            }
            total += reservoir.volume().get().valueIn(Unit.CUBIC_INCH);
        }
        return Optional.of(total / chambers.get() * 100);
    }

    private static Optional<Double> chambers(VehicleUnit unit) {
        double total = 0;
        for (Axle axle : unit.axles()) {
            for (Side side : Side.values()) {
                Optional<Chamber> chamber = axle.end(side).chamber();
                if (chamber.isEmpty()) {
                    continue;
                }
                Optional<Double> rated =
                        chamber.get()
                                .entry()
                                .flatMap(ChamberEntry::ratedVolume)
                                .map(cited -> cited.value().volume().valueIn(Unit.CUBIC_INCH));
                if (rated.isEmpty()) {
                    return Optional.empty();
                }
                total += rated.get();
            }
        }
        return Optional.of(total);
    }
}
