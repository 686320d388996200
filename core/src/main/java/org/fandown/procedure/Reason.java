package org.fandown.procedure;

import java.util.Optional;
import org.fandown.rulebook.Ruling;

/**
 * A constraint that puts a step where it is.
 *
 * @param sense before or after
 * @param other the number of the other step
 * @param text the constraint in words, a clause
 * @param rule the rule that asks for this order, empty if none does
 */
public record Reason(Sense sense, int other, String text, Optional<Ruling> rule) {
    /** On which side of the other step it has to be. */
    public enum Sense {
        /** It comes after the other, which makes it possible. */
        AFTER,
        /** It comes before the other, which would spoil it. */
        BEFORE,
        /** It is done for the other. */
        FOR
    }

    static Reason of(Sense sense, int other, String text) {
        return new Reason(sense, other, text, Optional.empty());
    }
}
