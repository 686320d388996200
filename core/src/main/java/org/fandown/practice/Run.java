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
        Replay replay = Replay.of(this, watcher);
        replay.advance(ticks);
        return replay.truck();
    }
}
