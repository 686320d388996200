package org.fandown.trace;

/**
 * What a sequential test says of an air loss that is being measured, or was.
 *
 * @param limit the limit it is held against
 * @param loss what is known of the loss so far
 * @param state on which side of the limit it is, as far as that is certain
 * @param held how long the pressure has been left alone since the initial drop, s
 * @param decidedAfter after how long that became certain, s; NaN if it is not
 * @param more how many more seconds will about decide, 0 if it is decided; NaN if waiting will not
 * @param ended whether the test is over
 */
public record LossAdvice(
        LossLimit limit,
        Recognised loss,
        SequentialTest.State state,
        double held,
        double decidedAfter,
        double more,
        boolean ended) {
    /** Returns how many seconds are left of the time that the rule asks for. */
    public double left() {
        return Math.max(0, limit.asked() - held);
    }

    /** Returns whether it is certain on which side of the limit the loss is. */
    public boolean isDecided() {
        return state != SequentialTest.State.UNDECIDED;
    }
}
