package org.fandown.plot;

/**
 * Something that happened while a curve was taken.
 *
 * @param seconds when
 * @param text what
 * @param weight how much it counts
 */
public record Mark(double seconds, String text, Weight weight) {
    /** How much something counts. */
    public enum Weight {
        /** Somebody did or read something. */
        PLAIN,
        /** The vehicle showed something by itself. */
        STRONG,
        /** Somebody could have been hurt. */
        HAZARD
    }
}
