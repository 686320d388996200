package org.fandown.braking;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.fandown.units.Quantity;
import org.fandown.vehicle.WheelId;

/**
 * The estimate for one wheel.
 *
 * @param wheel the wheel
 * @param status what is known of it
 * @param stroke the stroke at the estimated application, empty unless its stroke was read
 * @param notes what a reader of the stroke should know, empty unless its stroke was read
 * @param force what reaches the push rod and the tyre, or why that is not known
 */
public record WheelEstimate(
        WheelId wheel,
        WheelStatus status,
        Optional<Quantity> stroke,
        Set<StrokeNote> notes,
        Answer<WheelForce> force) {

    /** Copies the notes in. */
    public WheelEstimate {
        EnumSet<StrokeNote> copy = EnumSet.noneOf(StrokeNote.class);
        copy.addAll(notes);
        notes = Collections.unmodifiableSet(copy);
    }

    /** Returns whether the stroke is used up, so that no force reaches the brake. */
    public boolean isBottomed() {
        return notes.contains(StrokeNote.BOTTOMED);
    }

    /** Returns whether the force is not known, or only as a range. */
    public boolean isOpen() {
        return force.value().isEmpty() || !force.value().get().atTyre().isExact();
    }
}
