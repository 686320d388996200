package org.fandown.judgement;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fandown.check.Check;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.RulesInForce;
import org.fandown.rulebook.Ruling;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;
import org.fandown.vehicle.WheelId;

/**
 * What follows from the rules and the vehicle alone. It is worked out once, so that many
 * inspections of one vehicle need not do so again. Immutable.
 */
final class Groundwork {
    private final Vehicle vehicle;
    private final Map<WheelId, Ruling> strokeRules = new TreeMap<>();
    private final Map<String, Double> reservoirs = new TreeMap<>();

    private Groundwork(RulesInForce rules, Vehicle vehicle) {
        this.vehicle = vehicle;
        for (Ruling ruling : rules.of(Check.PUSHROD_APPLIED_STROKE)) {
            if (ruling.limit() instanceof Limit.Strokes) {
                ruling.wheels().forEach(wheel -> strokeRules.putIfAbsent(wheel, ruling));
            }
        }
        for (VehicleUnit unit : vehicle.units()) {
            ReservoirVolume.percentOfChambers(unit)
                    .ifPresent(percent -> reservoirs.put(unit.id(), percent));
        }
    }

    static Groundwork of(RulesInForce rules, Vehicle vehicle) {
        return new Groundwork(rules, vehicle);
    }

    /** The vehicle it holds for. */
    Vehicle vehicle() {
        return vehicle;
    }

    /** The nearest rule in force with a table of strokes for the wheel, empty if there is none. */
    Optional<Ruling> strokeRule(WheelId wheel) {
        return Optional.ofNullable(strokeRules.get(wheel));
    }

    /**
     * Reservoir volume of a unit as a share of its chambers' (percent), empty if one of the volumes
     * is not known.
     */
    Optional<Double> reservoirPercent(VehicleUnit unit) {
        return Optional.ofNullable(reservoirs.get(unit.id()));
    }
}
