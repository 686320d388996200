package org.fandown.braking;

import java.util.EnumMap;
import java.util.LinkedHashMap;
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
    private static final Map<Mount, Map<String, Double>> LIMITS = limits();

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
        return limit(chamber) / part;
    }

    private static double limit(Chamber chamber) {
        Map<String, Double> family = LIMITS.getOrDefault(chamber.mount(), Map.of());
        Double limit = family.get(chamber.type());
        if (limit == null) {
            throw new IllegalStateException("No stroke is known for " + chamber.text() + ".");
        }
        return limit;
    }

    private static Map<Mount, Map<String, Double>> limits() {
        Map<Mount, Map<String, Double>> limits = new EnumMap<>(Mount.class);
        put(limits, Mount.CLAMP, 1.25, "6");
        put(limits, Mount.BOLT, 1.25, "D");
        put(limits, Mount.BOLT, 1.375, "A", "E");
        put(limits, Mount.BOLT, 1.75, "B", "C");
        put(limits, Mount.BOLT, 2.0, "G");
        put(limits, Mount.BOLT, 2.25, "F");
        put(limits, Mount.ROTOCHAMBER, 1.5, "9", "12");
        put(limits, Mount.ROTOCHAMBER, 2.0, "16", "20", "24");
        put(limits, Mount.ROTOCHAMBER, 2.25, "30");
        put(limits, Mount.ROTOCHAMBER, 2.75, "36");
        put(limits, Mount.ROTOCHAMBER, 3.0, "50");
        put(limits, Mount.DD3, 2.25, "30");
        return limits;
    }

    private static void put(
            Map<Mount, Map<String, Double>> limits, Mount mount, double inches, String... types) {
        Map<String, Double> family = limits.computeIfAbsent(mount, none -> new LinkedHashMap<>());
        for (String type : types) {
            family.put(type, inches);
        }
    }
}
