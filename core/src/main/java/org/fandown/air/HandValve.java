package org.fandown.air;

/** The trailer hand valve: its delivery grows with its travel; at the end it is wide open. */
final class HandValve implements Element {
    private final AirLink valve;
    private final double ambient;
    private final double full;

    HandValve(Plumbing parts, AirLink valve) {
        this.valve = valve;
        ambient = parts.ambient;
        full = parts.pascals(AirDefault.FOOT_FULL);
    }

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        double asked = controls.hand() >= 1 ? FootValve.WIDE_OPEN : controls.hand() * full;
        state.setCommand(valve, ambient + asked);
    }
}
