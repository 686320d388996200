package org.fandown.evidence;

import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.document.Fields;
import org.fandown.evidence.WheelReading.Measured;
import org.fandown.units.Quantities;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.ChamberEntry;
import org.fandown.vehicle.Cited;
import org.fandown.vehicle.WheelEnd;

/** Reads the strokes of one push rod and refuses those that its chamber cannot make. */
final class WheelStrokes {
    private static final String RELEASED = "released";
    private static final String FULL = "fully-applied-length";

    /** A bottomed rod may be read longer than the nominal stroke, by tolerances and bending. */
    private static final double BEYOND_NOMINAL_INCHES = 0.5;

    /** A free stroke read longer than the applied one by no more than this is a thick mark. */
    private static final double THICK_MARK_INCHES = 0.125;

    private final WheelEnd end;
    private final Map<Check, Measured> values;

    WheelStrokes(WheelEnd end, Map<Check, Measured> values) {
        this.end = end;
        this.values = values;
    }

    /** Reads the strokes among other keys. */
    void read(Fields fields) {
        if (fields.has(RELEASED) || fields.has(FULL)) {
            subtracted(fields);
        } else if (fields.has("applied")) {
            applied(fields, "applied");
        }
        if (fields.has("free")) {
            put(fields, "free", Check.PUSHROD_FREE_STROKE, Plausible.STROKE.read(fields, "free"));
            requireFreeWithinApplied(fields);
        }
    }

    /** Reads an applied stroke. */
    void applied(Fields fields, String key) {
        put(fields, key, Check.PUSHROD_APPLIED_STROKE, Plausible.STROKE.read(fields, key));
    }

    private void put(Fields fields, String key, Check check, Quantity stroke) {
        requirePossible(fields, key, stroke);
        values.put(check, new Measured(stroke, 1));
    }

    /** The applied stroke as the difference of two lengths of the rod. */
    private void subtracted(Fields fields) {
        if (fields.has("applied")) {
            throw fields.refuse(
                    "applied",
                    "the stroke is given, and two lengths to find it from as well",
                    "either applied, or " + RELEASED + " and " + FULL,
                    "keep what was measured");
        }
        Quantity released = Plausible.ROD.read(fields, RELEASED);
        Quantity full = Plausible.ROD.read(fields, FULL);
        if (released.unit() != full.unit()) {
            throw fields.refuse(
                    FULL,
                    "this is in another unit than '" + RELEASED + "'",
                    "one unit for both",
                    "write both in one unit");
        }
        if (full.value() < released.value()) {
            throw fields.refuse(
                    FULL,
                    "the rod cannot be shorter applied than released",
                    "at least " + released,
                    "swap the two, or measure again");
        }
        Quantity stroke = Quantity.of(full.value() - released.value(), full.unit());
        requirePossible(fields, FULL, stroke);
        values.put(Check.PUSHROD_APPLIED_STROKE, new Measured(stroke, 2));
    }

    private void requirePossible(Fields fields, String key, Quantity stroke) {
        if (!end.hasPushRod()) {
            throw fields.refuse(
                    key,
                    "there is no push rod at this wheel",
                    "strokes where the vehicle file has a chamber",
                    "take the stroke out, or correct the vehicle file");
        }
        Optional<Double> most = end.chamber().flatMap(WheelStrokes::nominalInches);
        if (most.isPresent() && stroke.valueIn(Unit.INCH) > most.get() + BEYOND_NOMINAL_INCHES) {
            throw fields.refuse(
                    key,
                    "a "
                            + end.chamber().map(Chamber::text).orElse("")
                            + " chamber has no stroke of "
                            + stroke,
                    "about "
                            + Quantities.print(
                                    Unit.INCH.convert(most.get(), stroke.unit()), stroke.unit())
                            + " from end to end",
                    "measure again, or correct the chamber in the vehicle file");
        }
    }

    /** The longer of the table's stroke and the marked one; empty where neither is known. */
    private static Optional<Double> nominalInches(Chamber chamber) {
        Optional<Double> listed =
                chamber.entry()
                        .flatMap(
                                chamber.longStroke()
                                        ? ChamberEntry::longStroke
                                        : ChamberEntry::fullStroke)
                        .map(Cited::value)
                        .map(stroke -> stroke.valueIn(Unit.INCH));
        Optional<Double> marked = chamber.ratedStroke().map(s -> s.valueIn(Unit.INCH));
        return listed.isPresent() && marked.isPresent()
                ? Optional.of(Math.max(listed.get(), marked.get()))
                : listed.or(() -> marked);
    }

    private void requireFreeWithinApplied(Fields fields) {
        Measured free = values.get(Check.PUSHROD_FREE_STROKE);
        Measured applied = values.get(Check.PUSHROD_APPLIED_STROKE);
        if (free == null || applied == null) {
            return;
        }
        double over = free.value().valueIn(Unit.INCH) - applied.value().valueIn(Unit.INCH);
        if (over > THICK_MARK_INCHES) {
            throw fields.refuse(
                    "free",
                    "the free stroke cannot be longer than the applied stroke",
                    "at most " + applied.value(),
                    "swap the two, or measure again");
        }
    }
}
