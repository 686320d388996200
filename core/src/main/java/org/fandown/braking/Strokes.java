package org.fandown.braking;

import java.util.Map;
import java.util.Optional;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.Basis;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.ChamberEntry;
import org.fandown.vehicle.Cited;
import org.fandown.vehicle.Mount;

/** Finds the full stroke of a chamber: marked, tabled, or inferred from its readjustment limit. */
final class Strokes {
    /**
     * Readjustment limits (in) of types whose full stroke no table read here gives. Source: 49 CFR
     * 393.47(e)(1), as amended 86 FR 57076. They serve to infer a stroke, not to judge one.
     */
    private static final Map<Mount, Map<String, Double>> LIMITS =
            Map.of(
                    Mount.CLAMP,
                    Map.of("6", 1.25),
                    Mount.BOLT,
                    Map.of(
                            "A", 1.375, "B", 1.75, "C", 1.75, "D", 1.25, "E", 1.375, "F", 2.25, "G",
                            2.0),
                    Mount.ROTOCHAMBER,
                    Map.of(
                            "9", 1.5, "12", 1.5, "16", 2.0, "20", 2.0, "24", 2.0, "30", 2.25, "36",
                            2.75, "50", 3.0),
                    Mount.DD3,
                    Map.of("30", 2.25));

    private Strokes() {}

    /** Returns the full stroke (in). */
    static double full(Chamber chamber, ChamberEntry entry, Assumed assumed) {
        if (chamber.ratedStroke().isPresent()) {
            return chamber.ratedStroke().get().valueIn(Unit.INCH);
        }
        Optional<Cited<Quantity>> tabled =
                chamber.longStroke() ? entry.longStroke() : entry.fullStroke();
        if (tabled.isPresent()) {
            if (tabled.get().basis() == Basis.FROM_MEMORY) {
                assumed.note(Assumption.FULL_STROKE_REMEMBERED);
            }
            return tabled.get().value().valueIn(Unit.INCH);
        }
        double part = assumed.use(Assumption.FULL_STROKE_FROM_LIMIT);
        Map<String, Double> limits = LIMITS.getOrDefault(chamber.mount(), Map.of());
        Double limit = limits.get(chamber.type());
        if (limit == null) {
            throw new IllegalStateException("No stroke is known for " + chamber.text() + ".");
        }
        return limit / part;
    }
}
