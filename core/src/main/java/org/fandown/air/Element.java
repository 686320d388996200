package org.fandown.air;

/** A valve, switch or gauge: what it does after a step, from the state and what a person does. */
@FunctionalInterface
interface Element {
    /**
     * Sets openings, commands, inflows and memories for the next step.
     *
     * @param state the state after the step
     * @param controls what a person does
     * @param seconds length of the step, 0 at the start or when the controls changed
     */
    void update(AirState state, AirControls controls, double seconds);
}
