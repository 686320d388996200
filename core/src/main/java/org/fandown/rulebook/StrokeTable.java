package org.fandown.rulebook;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.fandown.units.Unit;
import org.fandown.vehicle.Chamber;

/**
 * Greatest applied stroke by chamber. The printed value itself passes.
 *
 * @param limits limit by kind of chamber and type within it
 * @param percentOfRatedStroke for a chamber that is not listed: this share (percent) of the rated
 *     stroke marked on it, empty if the place says nothing
 */
public record StrokeTable(
        Map<Family, Map<String, Printed>> limits, Optional<Double> percentOfRatedStroke) {

    /** A rated stroke of three inches, with room for rounding: 76 mm is printed for it. */
    private static final double THREE_INCHES = 2.95;

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
        Map<String, Printed> byType = limits.get(family);
        return byType == null ? Optional.empty() : Optional.ofNullable(byType.get(type));
    }

    /** The limit for one chamber, empty if the table does not list it. */
    public Optional<Printed> limit(Chamber chamber) {
        Optional<Family> family = family(chamber);
        return family.isPresent() ? limit(family.get(), chamber.type()) : Optional.empty();
    }

    private static Optional<Family> family(Chamber chamber) {
        return switch (chamber.mount()) {
            case CLAMP -> Optional.of(clamp(chamber));
            case BOLT -> Optional.of(Family.BOLT);
            case ROTOCHAMBER -> Optional.of(Family.ROTOCHAMBER);
            case DD3 -> Optional.of(Family.DD3);
            case OTHER -> Optional.empty();
        };
    }

    private static Family clamp(Chamber chamber) {
        if (!chamber.longStroke()) {
            return Family.CLAMP;
        }
        boolean threeInch =
                chamber.ratedStroke().isPresent()
                        && chamber.ratedStroke().get().valueIn(Unit.INCH) >= THREE_INCHES
                        && !chamber.type().equals("30");
        return threeInch ? Family.CLAMP_LONG_3_IN : Family.CLAMP_LONG;
    }

    @Override
    public String toString() {
        return "the stroke limit of its chamber";
    }
}
