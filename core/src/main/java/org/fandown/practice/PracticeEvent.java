package org.fandown.practice;

/**
 * Something that happened in a run.
 *
 * @param seconds when, since the start
 * @param kind what sort of thing
 * @param text what, in words
 */
public record PracticeEvent(double seconds, Kind kind, String text) {
    /** Sorts of events. */
    public enum Kind {
        /** The person did something. */
        ACTION,
        /** The person tried something that cannot be done, with the reason. */
        REFUSED,
        /** What the person read, saw, heard or measured. */
        OBSERVED,
        /** What the person says: a check begins, this was read, this follows. */
        STATED,
        /** The vehicle showed something by itself: purge, warning, a knob that pops out. */
        SIGN,
        /** Somebody could have been hurt, or was. */
        HAZARD
    }
}
