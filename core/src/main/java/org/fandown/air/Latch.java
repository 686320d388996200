package org.fandown.air;

/** A valve that opens at one pressure and shuts at a lower one, with an optional vent behind it. */
final class Latch implements Element {
    private final AirNode sensed;
    private final AirLink valve;
    private final AirMemory open;
    private final double opens;
    private final double shuts;

    /**
     * Makes one.
     *
     * @param sensed where it senses
     * @param valve what it opens
     * @param open its memory
     * @param opens absolute pressure from which it is open, Pa
     * @param shuts absolute pressure below which it is shut, Pa
     */
    Latch(AirNode sensed, AirLink valve, AirMemory open, double opens, double shuts) {
        this.sensed = sensed;
        this.valve = valve;
        this.open = open;
        this.opens = opens;
        this.shuts = shuts;
    }

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        double pressure = state.pascals(sensed);
        if (pressure >= opens) {
            state.remember(open, 1);
        } else if (pressure < shuts) {
            state.remember(open, 0);
        }
        state.setOpening(valve, state.recall(open));
        state.foresee(sensed, state.recall(open) > 0 ? shuts : opens);
    }
}
