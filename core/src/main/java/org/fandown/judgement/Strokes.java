package org.fandown.judgement;

import java.util.Optional;
import org.fandown.rulebook.StrokeTable;
import org.fandown.rulebook.StrokeTable.Family;
import org.fandown.units.Unit;
import org.fandown.vehicle.Chamber;

/** Finds the stroke limit of a chamber. */
final class Strokes {
    /**
     * A rated stroke of three inches, with room for rounding in millimetres (76 mm is printed for
     * it).
     */
    private static final double THREE_INCHES = 2.95;

    private Strokes() {}

    /** The limit for the chamber in the unit, empty if the table has none. */
    static Optional<Double> limit(StrokeTable table, Chamber chamber, Unit unit) {
        if (chamber.markedLimit().isPresent() && family(chamber).isEmpty()) {
            return Optional.of(chamber.markedLimit().get().valueIn(unit));
        }
        Optional<Double> listed =
                family(chamber).flatMap(f -> table.limit(f, chamber.type())).map(p -> p.in(unit));
        if (listed.isPresent()) {
            return listed;
        }
        if (chamber.markedLimit().isPresent()) {
            return Optional.of(chamber.markedLimit().get().valueIn(unit));
        }
        return table.percentOfRatedStroke()
                .flatMap(
                        percent -> chamber.ratedStroke().map(r -> r.valueIn(unit) * percent / 100));
    }

    /**
     * The rated (full) stroke in the unit: as marked, or from the standard's table for a clamp-type
     * chamber.
     */
    static Optional<Double> rated(Chamber chamber, Unit unit) {
        return chamber.ratedStroke()
                .map(length -> length.valueIn(unit))
                .or(() -> tabled(chamber, unit));
    }

    private static Optional<Double> tabled(Chamber chamber, Unit unit) {
        return chamber.entry()
                .flatMap(e -> chamber.longStroke() ? e.longStroke() : e.fullStroke())
                .map(cited -> cited.value().valueIn(unit));
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
                chamber.ratedStroke().map(s -> s.valueIn(Unit.INCH) >= THREE_INCHES).orElse(false)
                        && !chamber.type().equals("30");
        return threeInch ? Family.CLAMP_LONG_3_IN : Family.CLAMP_LONG;
    }
}
