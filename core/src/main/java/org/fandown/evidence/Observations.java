package org.fandown.evidence;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.vehicle.WheelId;

/**
 * What a person read, measured and saw. Immutable.
 *
 * @param readings readings of the vehicle as a whole, by check
 * @param wheels readings at wheels, by wheel
 * @param parts parts looked at
 * @param allOtherPartsSeen whether the person declares every other part looked at and in order
 */
public record Observations(
        Map<Check, Reading> readings,
        Map<WheelId, WheelReading> wheels,
        Map<Component, PartReading> parts,
        boolean allOtherPartsSeen) {
    /** Nothing at all. */
    public static final Observations NONE = new Observations(Map.of(), Map.of(), Map.of(), false);

    /** Copies the maps. */
    public Observations {
        Map<Check, Reading> readingCopy = new EnumMap<>(Check.class);
        readingCopy.putAll(readings);
        readings = Collections.unmodifiableMap(readingCopy);
        wheels = Collections.unmodifiableMap(new TreeMap<>(wheels));
        Map<Component, PartReading> partCopy = new EnumMap<>(Component.class);
        partCopy.putAll(parts);
        parts = Collections.unmodifiableMap(partCopy);
    }

    /** Returns readings of the vehicle as a whole, and nothing else. */
    public static Observations of(Map<Check, Reading> readings) {
        return new Observations(readings, Map.of(), Map.of(), false);
    }

    /** Returns the reading of a check, empty if there is none. */
    public Optional<Reading> reading(Check check) {
        return Optional.ofNullable(readings.get(check));
    }

    /** Returns these and later ones; where both speak of the same thing, the later ones count. */
    public Observations then(Observations later) {
        Map<Check, Reading> allReadings = new EnumMap<>(Check.class);
        allReadings.putAll(readings);
        allReadings.putAll(later.readings);
        Map<WheelId, WheelReading> allWheels = new TreeMap<>(wheels);
        later.wheels.forEach(
                (id, reading) ->
                        allWheels.merge(id, reading, (before, after) -> before.then(after)));
        Map<Component, PartReading> allParts = new EnumMap<>(Component.class);
        allParts.putAll(parts);
        allParts.putAll(later.parts);
        return new Observations(
                allReadings, allWheels, allParts, allOtherPartsSeen || later.allOtherPartsSeen);
    }
}
