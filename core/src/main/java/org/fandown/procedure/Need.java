package org.fandown.procedure;

/**
 * What has to hold when a step begins.
 *
 * @param aspect of what
 * @param least smallest value that will do
 * @param most greatest value that will do
 * @param weight what it means if it does not hold
 * @param why why it has to hold, a clause
 */
public record Need(Aspect aspect, int least, int most, Weight weight, String why) {
    /** The greatest pressure anybody asks for, psi. */
    static final int NO_LIMIT = 999;

    /** Needs a state. */
    static Need is(Aspect aspect, int value, Weight weight, String why) {
        return new Need(aspect, value, value, weight, why);
    }

    /** Needs at least a pressure, psi. */
    static Need atLeast(int psi, Weight weight, String why) {
        return new Need(Aspect.PRESSURE, psi, NO_LIMIT, weight, why);
    }

    /** Needs at most a pressure, psi. */
    static Need atMost(int psi, Weight weight, String why) {
        return new Need(Aspect.PRESSURE, 0, psi, weight, why);
    }

    /** Whether it holds. */
    public boolean isMetBy(Situation situation) {
        int value = situation.value(aspect);
        return least <= value && value <= most;
    }

    /** What is asked for, in words: {@code the engine off}, {@code at least 90 psi}. */
    public String asked() {
        if (aspect != Aspect.PRESSURE) {
            return aspect.title() + " " + aspect.say(least);
        }
        if (most >= NO_LIMIT) {
            return "at least " + least + " psi";
        }
        return least <= 0 ? "at most " + most + " psi" : least + " to " + most + " psi";
    }
}
