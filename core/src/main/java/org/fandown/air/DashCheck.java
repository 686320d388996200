package org.fandown.air;

/**
 * The double check valve before the dash: primary and secondary both feed it, and neither the
 * other. Near equal pressures the shuttle stands between its seats and both inlets feed. Air goes
 * back when the dash is the highest, to the side whose seat is free.
 */
final class DashCheck implements Element {
    /** How much higher one side must be to push the shuttle over, Pa. */
    private static final double MARGIN = 7e3;

    private final AirNode first;
    private final AirNode second;
    private final AirLink toFirst;
    private final AirLink toSecond;
    private final AirMemory shuttle;

    DashCheck(Plumbing parts, AirNode first, AirNode second, AirNode dash) {
        this.first = first;
        this.second = second;
        parts.check("dash-check-" + first.name(), first, dash, AirDefault.FOOT_WAY, 0);
        parts.check("dash-check-" + second.name(), second, dash, AirDefault.FOOT_WAY, 0);
        toFirst = parts.check("dash-back-primary", dash, first, AirDefault.FOOT_WAY, MARGIN);
        toSecond = parts.check("dash-back-secondary", dash, second, AirDefault.FOOT_WAY, MARGIN);
        shuttle = parts.network.memory("dash-check", 0);
    }

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        double higher = state.pascals(first) - state.pascals(second);
        if (higher > MARGIN) {
            state.remember(shuttle, 0);
        } else if (higher < -MARGIN) {
            state.remember(shuttle, 1);
        }
        boolean atSecond = state.recall(shuttle) > 0;
        state.setOpening(toFirst, atSecond ? 0 : 1);
        state.setOpening(toSecond, atSecond ? 1 : 0);
        double rising = state.slope(first) - state.slope(second);
        state.foresee(atSecond ? MARGIN - higher : MARGIN + higher, atSecond ? rising : -rising);
    }
}
