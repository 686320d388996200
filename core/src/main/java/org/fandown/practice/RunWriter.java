package org.fandown.practice;

import org.fandown.document.MapNode;
import org.fandown.document.Tree;

/** Writes a run as a document that {@link RunReader} reads back to one that replays the same. */
public final class RunWriter {
    private RunWriter() {}

    /**
     * Writes a run.
     *
     * @param run the run; the seed of its scenario must be 0 to 999 999 999
     * @throws IllegalArgumentException if the seed is out of range
     */
    public static MapNode write(Run run) {
        Tree.MapBuilder map =
                Tree.map().put(RunKeys.FORMAT, RunKeys.FORMAT_NAME).put(RunKeys.SIMULATED, true);
        if (!run.title().isEmpty()) {
            map.put(RunKeys.TITLE, run.title());
        }
        Tree.ListBuilder entries = Tree.list();
        for (RunEntry entry : run.entries()) {
            entries.add(
                    Tree.map()
                            .put(RunKeys.TICK, entry.tick())
                            .put(RunKeys.STEP, ScriptDocument.thing(step(entry))));
        }
        return map.put(RunKeys.SCENARIO, ScenarioDocument.of(run.scenario()))
                .put(RunKeys.ENTRIES, entries)
                .put(RunKeys.TICKS, run.ticks())
                .put(RunKeys.FINGERPRINT, RunDocument.hex(run.fingerprint()))
                .build();
    }

    /** What is written is the step of a script that does the same. */
    private static ScriptStep step(RunEntry entry) {
        if (entry instanceof RunEntry.Act act) {
            return new ScriptStep.Do(act.action());
        }
        if (entry instanceof RunEntry.Stated said) {
            return new ScriptStep.State(said.statement());
        }
        return ((RunEntry.GaveUp) entry).awaited();
    }
}
