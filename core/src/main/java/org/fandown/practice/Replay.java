package org.fandown.practice;

/**
 * Does a run again, as far at a time as somebody likes. The truck then stands as it stood, and can
 * be worked on.
 */
public final class Replay {
    private final Run run;
    private final RunWatcher watcher;
    private final PracticeTruck truck;
    private int done;

    private Replay(Run run, RunWatcher watcher) {
        this.run = run;
        this.watcher = watcher;
        truck = PracticeTruck.of(run.scenario());
        watcher.tick(truck);
    }

    /** Begins a replay. */
    public static Replay of(Run run) {
        return of(run, new RunWatcher() {});
    }

    /**
     * Begins a replay.
     *
     * @param watcher looks on
     */
    public static Replay of(Run run, RunWatcher watcher) {
        return new Replay(run, watcher);
    }

    /** Returns the truck, as far as it has come. */
    public PracticeTruck truck() {
        return truck;
    }

    /**
     * Goes on, at most to the end of the run.
     *
     * @param ticks how far, in ticks of {@value PracticeTruck#TICK} s
     * @return whether the end is reached
     */
    public boolean advance(long ticks) {
        long until = Math.min(run.ticks(), truck.ticks() + ticks);
        while (done < run.entries().size() && run.entries().get(done).tick() <= until) {
            RunEntry entry = run.entries().get(done++);
            pass(entry.tick());
            watcher.before(truck, entry);
            watcher.after(truck, entry, redo(entry));
        }
        pass(until);
        return until == run.ticks();
    }

    /** Returns whether the truck stands as it did at the end of the run, to the last bit. */
    public boolean isSame() {
        return truck.fingerprint() == run.fingerprint();
    }

    private void pass(long until) {
        while (truck.ticks() < until) {
            truck.tick();
            watcher.tick(truck);
        }
    }

    /** Does one thing again; returns whether it was refused. */
    private boolean redo(RunEntry entry) {
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
