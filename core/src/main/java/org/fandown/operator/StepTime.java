package org.fandown.operator;

import org.fandown.procedure.PlannedStep;

/**
 * When a step of a plan was performed.
 *
 * @param planned the step, with when and how long it was planned
 * @param begin when the person set out for it, seconds from the start
 * @param end when it was done, seconds from the start
 */
public record StepTime(PlannedStep planned, double begin, double end) {
    /** Returns how long it took with the way to it, s. */
    public double seconds() {
        return end - begin;
    }

    /** Returns how long it was planned to take with the way to it, s. */
    public double plannedSeconds() {
        return (planned.walk() + planned.tenths()) / 10.0;
    }
}
