package org.fandown.rulebook;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Greatest applied stroke by chamber. The printed value itself passes.
 *
 * @param limits limit by kind of chamber and type within it
 * @param percentOfRatedStroke for a chamber that is not listed: this share (percent) of the rated
 *     stroke marked on it, empty if the place says nothing
 */
public record StrokeTable(
        Map<Family, Map<String, Printed>> limits, Optional<Double> percentOfRatedStroke) {

    /** The columns of the table. */
    public enum Family {
        /** Clamp-type, standard stroke. */
        CLAMP,
        /** Clamp-type, long stroke. */
        CLAMP_LONG,
        /** Clamp-type, long stroke of 3 in rated stroke. */
        CLAMP_LONG_3_IN,
        /** Bolt-type. */
        BOLT,
        /** Rotochamber-type. */
        ROTOCHAMBER,
        /** Double-diaphragm type DD-3. */
        DD3
    }

    /** Copies the maps, keeping their order. */
    public StrokeTable {
        Map<Family, Map<String, Printed>> copy = new LinkedHashMap<>();
        limits.forEach(
                (family, byType) ->
                        copy.put(
                                family,
                                java.util.Collections.unmodifiableMap(
                                        new LinkedHashMap<>(byType))));
        limits = java.util.Collections.unmodifiableMap(copy);
    }

    /** The limit for one chamber, empty if the table does not list it. */
    public Optional<Printed> limit(Family family, String type) {
        return Optional.ofNullable(limits.getOrDefault(family, Map.of()).get(type));
    }

    @Override
    public String toString() {
        return "the stroke limit of its chamber";
    }
}
