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
 * @param order the order of two checks that is broken, empty where something else is wrong
 * @param mend the smallest change that mends it, empty if none was found
 */
public record Violation(
        int number,
        Need need,
        int culprit,
        String text,
        Optional<Precedence> order,
        Optional<Mend> mend) {
    static Violation of(int number, Need need, int culprit, String text) {
        return new Violation(number, need, culprit, text, Optional.empty(), Optional.empty());
    }

    /** The same with a mend. */
    Violation with(Optional<Mend> found) {
        return new Violation(number, need, culprit, text, order, found);
    }

    /** What is asked for, in words. */
    public String asked() {
        return order.map(o -> o.first().id() + " before " + o.second().id()).orElseGet(need::asked);
    }
}
