package org.fandown.procedure;

/**
 * A constraint that puts a step where it is.
 *
 * @param sense before or after
 * @param other the number of the other step
 * @param text the constraint in words, a clause
 */
public record Reason(Sense sense, int other, String text) {
    /** On which side of the other step it has to be. */
    public enum Sense {
        /** It comes after the other, which makes it possible. */
        AFTER,
        /** It comes before the other, which would spoil it. */
        BEFORE,
        /** It is done for the other. */
        FOR
    }
}
