package org.fandown.air;

/** What valves and switches do after each step through time. */
@FunctionalInterface
public interface AfterStep {
    /** Does nothing. */
    AfterStep NOTHING = (state, seconds) -> {};

    /**
     * Sets openings, commands and inflows for the next step.
     *
     * @param state the state after the step
     * @param seconds the length of the step
     */
    void after(AirState state, double seconds);
}
