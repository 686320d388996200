package org.fandown.practice;

import java.util.List;

/**
 * How long a script can become, with its steps repeated and every wait given up.
 *
 * @param steps how many steps
 * @param seconds how much time
 */
record ScriptLength(double steps, double seconds) {
    static final String ALLOWED = "at most 100000 steps and 24 h";

    private static final double MOST_STEPS = 100_000;
    private static final ScriptLength NONE = new ScriptLength(0, 0);

    static ScriptLength of(List<ScriptStep> steps) {
        ScriptLength sum = NONE;
        for (ScriptStep step : steps) {
            sum = sum.then(step);
        }
        return sum;
    }

    boolean isBearable() {
        return steps <= MOST_STEPS && seconds <= ScriptStep.MOST_SECONDS;
    }

    private ScriptLength then(ScriptStep step) {
        if (step instanceof ScriptStep.At at) {
            return new ScriptLength(steps + 1, Math.max(seconds, at.seconds()));
        }
        if (step instanceof ScriptStep.After after) {
            return new ScriptLength(steps + 1, seconds + after.seconds());
        }
        if (step instanceof ScriptStep.Wait wait) {
            return new ScriptLength(steps + 1, seconds + wait.atMost());
        }
        if (step instanceof ScriptStep.Repeat repeat) {
            ScriptLength once = of(repeat.steps());
            return new ScriptLength(
                    steps + 1 + repeat.times() * once.steps,
                    seconds + repeat.times() * once.seconds);
        }
        return new ScriptLength(steps + 1, seconds);
    }
}
