package org.fandown.practice;

import org.fandown.units.Decimals;

/**
 * What a procedure found.
 *
 * @param met whether it found all in order, or the vehicle has nothing to be tried
 * @param words what was measured or seen
 */
record Outcome(boolean met, String words) {
    /** The vehicle has not the part. */
    static final Outcome NOTHING_TO_TRY = new Outcome(true, "not fitted");

    static Outcome within(double value, double least, double most, String unit) {
        boolean met = value >= least && value <= most;
        return new Outcome(met, Decimals.formatShort(value, 4) + " " + unit);
    }

    static Outcome yes(boolean met, String otherwise) {
        return new Outcome(met, met ? "yes" : otherwise);
    }
}
