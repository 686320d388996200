package org.fandown.evidence;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.check.PlaceCode;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/**
 * One written-down inspection. Immutable.
 *
 * @param place whose rules it is judged by
 * @param moment when it was made
 * @param vehicle what was inspected
 * @param report names, plates, place, signatures
 * @param instruments how finely was read
 * @param conditionsAsPrinted whether the person declares that each test was made under the printed
 *     circumstances unless noted otherwise
 * @param observations what was read, measured and seen
 * @param notes anything else written down
 * @param earlier what earlier reports found wrong and nobody has settled yet
 * @param simulated whether it was made on a simulated vehicle, for practice: no record of a real
 *     one
 */
public record Inspection(
        PlaceCode place,
        OffsetDateTime moment,
        Vehicle vehicle,
        Report report,
        Instruments instruments,
        boolean conditionsAsPrinted,
        Observations observations,
        List<String> notes,
        List<EarlierDefect> earlier,
        boolean simulated) {

    /** Copies the lists. */
    public Inspection {
        notes = List.copyOf(notes);
        earlier = List.copyOf(earlier);
    }

    /** An inspection of a vehicle of which nothing is known to be wrong from before. */
    public Inspection(
            PlaceCode place,
            OffsetDateTime moment,
            Vehicle vehicle,
            Report report,
            Instruments instruments,
            boolean conditionsAsPrinted,
            Observations observations,
            List<String> notes,
            boolean simulated) {
        this(
                place,
                moment,
                vehicle,
                report,
                instruments,
                conditionsAsPrinted,
                observations,
                notes,
                List.of(),
                simulated);
    }

    /** The same inspection, where this is known to be wrong from before. */
    public Inspection withEarlier(List<EarlierDefect> defects) {
        return new Inspection(
                place,
                moment,
                vehicle,
                report,
                instruments,
                conditionsAsPrinted,
                observations,
                notes,
                defects,
                simulated);
    }

    /** Returns the readings of the vehicle as a whole, by check. */
    public Map<Check, Reading> readings() {
        return observations.readings();
    }

    /** Returns the readings at wheels, by wheel. */
    public Map<WheelId, WheelReading> wheels() {
        return observations.wheels();
    }

    /** Returns the parts looked at. */
    public Map<Component, PartReading> parts() {
        return observations.parts();
    }

    /** Returns whether the person declares every other part looked at and in order. */
    public boolean allOtherPartsSeen() {
        return observations.allOtherPartsSeen();
    }

    /** Returns the reading of a check, empty if there is none. */
    public Optional<Reading> reading(Check check) {
        return observations.reading(check);
    }
}
