package org.fandown.judgement;

import java.util.Optional;
import org.fandown.rulebook.Printed;
import org.fandown.rulebook.StrokeTable;
import org.fandown.units.Unit;
import org.fandown.vehicle.Chamber;

/** Finds the stroke limit of a chamber. */
final class Strokes {
    private Strokes() {}

    /** The limit for the chamber in the unit, empty if the table has none. */
    static Optional<Double> limit(StrokeTable table, Chamber chamber, Unit unit) {
        Optional<Printed> listed = table.limit(chamber);
        if (listed.isPresent()) {
            return Optional.of(listed.get().in(unit));
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
}
