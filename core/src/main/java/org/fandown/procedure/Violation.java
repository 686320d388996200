package org.fandown.procedure;

import java.util.Optional;

/**
 * Something wrong in an order.
 *
 * @param number the step that is spoiled, not possible or dangerous, from 1; one more than there
 *     are steps for the end
 * @param need what does not hold there
 * @param culprit the step that spoils it, 0 if it never held
 * @param text what is wrong, in a sentence
 * @param mend the smallest change that mends it, empty if none was found
 */
public record Violation(int number, Need need, int culprit, String text, Optional<Mend> mend) {
    /** The same with a mend. */
    Violation with(Optional<Mend> found) {
        return new Violation(number, need, culprit, text, found);
    }
}
