package org.fandown.practice;

import java.util.List;
import org.fandown.evidence.Statement;
import org.fandown.units.GaugePressure;

/** One step of a {@link Script}. */
public sealed interface ScriptStep {
    /**
     * Lets time pass until a moment of the run; none if it has passed already.
     *
     * @param seconds since the start of the run, 0 or more
     */
    record At(double seconds) implements ScriptStep {
        /** Refuses a moment before the start. */
        public At {
            requireTime(seconds);
        }
    }

    /**
     * Lets a time pass.
     *
     * @param seconds 0 or more
     */
    record After(double seconds) implements ScriptStep {
        /** Refuses a negative time. */
        public After {
            requireTime(seconds);
        }
    }

    /**
     * Waits for a sign.
     *
     * @param sign what is waited for
     * @param pressure the pressure that belongs to it, 0 where none does
     * @param atMost seconds after which the wait is given up, more than 0
     */
    record Wait(Awaited sign, GaugePressure pressure, double atMost) implements ScriptStep {
        /** Refuses a wait without end. */
        public Wait {
            requireTime(atMost);
        }
    }

    /**
     * Does something, at the moment reached.
     *
     * @param action what is done
     */
    record Do(OperatorAction action) implements ScriptStep {}

    /**
     * Says something, at the moment reached.
     *
     * @param statement what is said
     */
    record State(Statement statement) implements ScriptStep {}

    /**
     * Repeats steps.
     *
     * @param times how often, 1 to 1000
     * @param steps what is repeated
     */
    record Repeat(int times, List<ScriptStep> steps) implements ScriptStep {
        /** Copies the steps. */
        public Repeat {
            steps = List.copyOf(steps);
            if (times < 1 || times > 1000) {
                throw new IllegalArgumentException("Steps can be repeated 1 to 1000 times.");
            }
        }
    }

    /** Longest time that a script can let pass in one step, s: a day. */
    double MOST_SECONDS = 86_400;

    private static void requireTime(double seconds) {
        if (!(seconds >= 0 && seconds <= MOST_SECONDS)) {
            throw new IllegalArgumentException("A time must be 0 s to 24 h.");
        }
    }
}
