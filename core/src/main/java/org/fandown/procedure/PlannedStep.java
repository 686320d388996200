package org.fandown.procedure;

import java.util.List;

/**
 * One step of a plan, with when and why.
 *
 * @param number its number, from 1
 * @param step the step
 * @param before how the vehicle stands before
 * @param after how it stands after
 * @param begin when the person sets out for it (tenths of a second from the start)
 * @param walk how long the way to it takes (tenths of a second)
 * @param tenths how long it takes then (tenths of a second)
 * @param reasons why it stands where it does
 */
public record PlannedStep(
        int number,
        Step step,
        Situation before,
        Situation after,
        int begin,
        int walk,
        int tenths,
        List<Reason> reasons) {
    /** Copies the list. */
    public PlannedStep {
        reasons = List.copyOf(reasons);
    }

    /** When it is done (tenths of a second from the start). */
    public int end() {
        return begin + walk + tenths;
    }

    /** The same with reasons. */
    PlannedStep with(List<Reason> found) {
        return new PlannedStep(number, step, before, after, begin, walk, tenths, found);
    }
}
