package org.fandown.judgement;

import java.util.Optional;
import org.fandown.rulebook.Ruling;
import org.fandown.vehicle.WheelId;

/**
 * One rule applied to the evidence, at one wheel if the check is made at each.
 *
 * @param ruling the rule
 * @param wheel the wheel, empty for the vehicle as a whole; for an axle its left wheel
 * @param status what the evidence says
 * @param measured what was measured, empty where nothing was
 * @param allowed the limit it was compared with, empty where nothing was compared
 * @param why the words for it
 */
public record Finding(
        Ruling ruling,
        Optional<WheelId> wheel,
        Status status,
        Optional<Measurement> measured,
        Optional<Allowed> allowed,
        Why why) {

    static Finding of(Ruling ruling, Status status, Why why) {
        return new Finding(
                ruling, Optional.empty(), status, Optional.empty(), Optional.empty(), why);
    }

    static Finding of(Ruling ruling, Status status, Measurement measured, Why why) {
        return new Finding(
                ruling, Optional.empty(), status, Optional.of(measured), Optional.empty(), why);
    }

    /** A finding at a wheel where nothing was compared with a figure. */
    static Finding at(WheelId wheel, Ruling ruling, Status status, Why why) {
        return new Finding(
                ruling, Optional.of(wheel), status, Optional.empty(), Optional.empty(), why);
    }

    Finding at(WheelId at) {
        return new Finding(ruling, Optional.of(at), status, measured, allowed, why);
    }

    Finding within(Optional<Edge> lower, Optional<Edge> upper) {
        return new Finding(
                ruling, wheel, status, measured, Optional.of(new Allowed(lower, upper)), why);
    }

    Finding as(Status other, Why otherWhy) {
        return new Finding(ruling, wheel, other, measured, allowed, otherWhy);
    }

    /** Whether the finding can change the verdict. */
    public boolean decides() {
        return ruling.decides();
    }
}
