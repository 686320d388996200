package org.fandown.referee;

/**
 * A stretch of a run.
 *
 * @param from its first tick
 * @param to its last tick
 */
record Stretch(long from, long to) {
    long ticks() {
        return to - from;
    }

    double seconds() {
        return Tale.seconds(ticks());
    }
}
