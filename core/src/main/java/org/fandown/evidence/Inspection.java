package org.fandown.evidence;

import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
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
 * @param readings readings of the vehicle as a whole, by check
 * @param wheels readings at wheels, by wheel
 * @param parts parts looked at
 * @param allOtherPartsSeen whether the person declares every other part looked at and in order
 * @param notes anything else written down
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
        Map<Check, Reading> readings,
        Map<WheelId, WheelReading> wheels,
        Map<Component, PartReading> parts,
        boolean allOtherPartsSeen,
        List<String> notes,
        boolean simulated) {

    /** Copies the collections. */
    public Inspection {
        Map<Check, Reading> readingCopy = new EnumMap<>(Check.class);
        readingCopy.putAll(readings);
        readings = Collections.unmodifiableMap(readingCopy);
        wheels = Collections.unmodifiableMap(new TreeMap<>(wheels));
        Map<Component, PartReading> partCopy = new EnumMap<>(Component.class);
        partCopy.putAll(parts);
        parts = Collections.unmodifiableMap(partCopy);
        notes = List.copyOf(notes);
    }

    /** An inspection of a real vehicle; the parameters are those of the components. */
    public Inspection(
            PlaceCode place,
            OffsetDateTime moment,
            Vehicle vehicle,
            Report report,
            Instruments instruments,
            boolean conditionsAsPrinted,
            Map<Check, Reading> readings,
            Map<WheelId, WheelReading> wheels,
            Map<Component, PartReading> parts,
            boolean allOtherPartsSeen,
            List<String> notes) {
        this(
                place,
                moment,
                vehicle,
                report,
                instruments,
                conditionsAsPrinted,
                readings,
                wheels,
                parts,
                allOtherPartsSeen,
                notes,
                false);
    }

    /** The reading of a check, empty if there is none. */
    public Optional<Reading> reading(Check check) {
        return Optional.ofNullable(readings.get(check));
    }
}
