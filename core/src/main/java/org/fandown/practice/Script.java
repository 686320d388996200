package org.fandown.practice;

import java.util.List;

/**
 * What a person does in a run, from the start on.
 *
 * @param title what the run is for, in words; empty text if not said
 * @param steps the steps, in order
 */
public record Script(String title, List<ScriptStep> steps) {
    /** Copies the steps. */
    public Script {
        steps = List.copyOf(steps);
    }
}
