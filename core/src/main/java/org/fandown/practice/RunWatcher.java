package org.fandown.practice;

/** Looks on while a run is replayed. It must not act. */
public interface RunWatcher {
    /** Sees the truck at the start, and after each tick. */
    default void tick(PracticeTruck truck) {}

    /** Sees the truck before something is done or said. */
    default void before(PracticeTruck truck, RunEntry entry) {}

    /**
     * Sees the truck after something was done or said, before time passes.
     *
     * @param refused whether it could not be done
     */
    default void after(PracticeTruck truck, RunEntry entry, boolean refused) {}
}
