package org.fandown.practice;

import org.fandown.evidence.Statement;

/** Something that was done or said in a run, between two ticks. */
public sealed interface RunEntry {
    /** Returns how many ticks had passed. */
    long tick();

    /** Returns when it was, s since the start. */
    default double seconds() {
        return tick() * PracticeTruck.TICK;
    }

    /**
     * Something was done, or tried and refused.
     *
     * @param tick ticks passed, 0 or more
     * @param action what
     */
    record Act(long tick, OperatorAction action) implements RunEntry {}

    /**
     * Something was said.
     *
     * @param tick ticks passed, 0 or more
     * @param statement what
     */
    record Stated(long tick, Statement statement) implements RunEntry {}

    /**
     * A wait was given up.
     *
     * @param tick ticks passed, 0 or more
     * @param awaited what was waited for
     */
    record GaveUp(long tick, ScriptStep.Wait awaited) implements RunEntry {}
}
