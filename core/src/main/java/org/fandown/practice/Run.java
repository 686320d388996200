package org.fandown.practice;

import java.util.List;

/**
 * A run on the practice truck: what stood there, and all that was done and said, so that it can be
 * replayed. Immutable.
 *
 * @param title what the run was for, in words; empty text if not said
 * @param scenario what stood there
 * @param entries what was done and said, in order
 * @param ticks how long the run took, in ticks of {@value PracticeTruck#TICK} s
 * @param fingerprint the {@linkplain PracticeTruck#fingerprint number} made of its bits at the end
 */
public record Run(
        String title, Scenario scenario, List<RunEntry> entries, long ticks, long fingerprint) {
    /**
     * Copies the entries.
     *
     * @throws IllegalArgumentException if their ticks fall, or pass the end of the run
     */
    public Run {
        entries = List.copyOf(entries);
        long last = 0;
        for (RunEntry entry : entries) {
            if (entry.tick() < last || entry.tick() > ticks) {
                throw new IllegalArgumentException(
                        "The ticks of a run must not fall, nor pass its end.");
            }
            last = entry.tick();
        }
    }

    /** Returns the run of a truck so far. */
    public static Run of(PracticeTruck truck, String title) {
        return new Run(title, truck.scenario(), truck.log(), truck.ticks(), truck.fingerprint());
    }

    /** Returns how long the run took, s. */
    public double seconds() {
        return ticks * PracticeTruck.TICK;
    }

    /** Does it all again, and returns the truck at the end. */
    public PracticeTruck replay() {
        return replay(new RunWatcher() {});
    }

    /**
     * Does it all again, and returns the truck at the end.
     *
     * @param watcher looks on
     */
    public PracticeTruck replay(RunWatcher watcher) {
        PracticeTruck truck = PracticeTruck.of(scenario);
        watcher.tick(truck);
        for (RunEntry entry : entries) {
            pass(truck, entry.tick(), watcher);
            watcher.before(truck, entry);
            watcher.after(truck, entry, redo(truck, entry));
        }
        pass(truck, ticks, watcher);
        return truck;
    }

    private static void pass(PracticeTruck truck, long until, RunWatcher watcher) {
        while (truck.ticks() < until) {
            truck.tick();
            watcher.tick(truck);
        }
    }

    /** Does one thing again; returns whether it was refused. */
    private static boolean redo(PracticeTruck truck, RunEntry entry) {
        if (entry instanceof RunEntry.Act act) {
            return truck.act(act.action()).isPresent();
        }
        if (entry instanceof RunEntry.Stated said) {
            truck.state(said.statement());
        } else if (entry instanceof RunEntry.GaveUp gave) {
            truck.giveUp(gave.awaited());
        }
        return false;
    }
}
