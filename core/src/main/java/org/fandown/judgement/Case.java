package org.fandown.judgement;

import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.Reading;
import org.fandown.rulebook.RulesInForce;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.Vehicle;

/**
 * One inspection before the judge.
 *
 * @param inspection what was written down
 * @param rules the rules in force
 * @param groundwork what follows from the rules and the vehicle of the inspection
 */
record Case(Inspection inspection, RulesInForce rules, Groundwork groundwork) {

    /** A case on its own, for which the groundwork is done anew. */
    static Case of(Inspection inspection, RulesInForce rules) {
        return new Case(inspection, rules, Groundwork.of(rules, inspection.vehicle()));
    }

    Vehicle vehicle() {
        return inspection.vehicle();
    }

    /**
     * Expanded uncertainty of one reading in the unit: the half step, since two standard deviations
     * exceed it.
     */
    double ofOneReading(Unit unit) {
        return Uncertainty.expanded(1, inspection.instruments().step(unit));
    }

    /** The smallest step in which a reading was read, in the unit. */
    double step(Reading reading, Unit unit) {
        return reading.by().orElse(inspection.instruments()).step(unit);
    }

    /**
     * Another check's single value with its uncertainty, in the unit; the lowest where several
     * gauges were read.
     */
    Optional<Measurement> other(Check check, Unit unit) {
        Optional<Reading> reading = inspection.reading(check);
        if (reading.isPresent() && reading.get() instanceof Reading.Estimate estimate) {
            return Optional.of(
                    new Measurement(
                            estimate.value().valueIn(unit), unit, estimate.within().valueIn(unit)));
        }
        if (reading.isEmpty() || !(reading.get() instanceof Reading.Value value)) {
            return Optional.empty();
        }
        double lowest = Double.POSITIVE_INFINITY;
        for (Quantity quantity : value.values()) {
            lowest = Math.min(lowest, quantity.valueIn(unit));
        }
        return Optional.of(new Measurement(lowest, unit, ofOneReading(unit)));
    }
}
