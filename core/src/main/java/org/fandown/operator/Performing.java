package org.fandown.operator;

import org.fandown.procedure.CheckStep;

/**
 * How one check is made: what hands do and what eyes and ears take in. All that the step needs
 * holds when it begins, and the person stands where it is made.
 */
@FunctionalInterface
interface Performing {
    /**
     * Makes the check.
     *
     * @param step the check, with its manner
     * @param person the person who makes it
     * @return what was observed; what could not be done is said in it
     */
    Observed perform(CheckStep step, Person person);
}
