package org.fandown.air;

/**
 * The relay valve of a towed unit without spring brakes: follows the control line, and applies the
 * brakes with all the reservoir has when the supply line has lost its pressure.
 */
final class EmergencyRelay implements Element {
    private final AirLink valve;
    private final AirNode control;
    private final AirNode supply;
    private final double crack;
    private final double trips;

    EmergencyRelay(Plumbing parts, AirLink valve, GladHands.Lines lines) {
        this.valve = valve;
        control = lines.control();
        supply = lines.supply();
        crack = parts.pascals(AirDefault.RELAY_CRACK);
        trips = parts.absolute(AirDefault.TOWED_EMERGENCY);
    }

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        state.foresee(supply, trips);
        if (state.pascals(supply) < trips) {
            state.setCommand(valve, FootValve.WIDE_OPEN);
        } else {
            state.follow(valve, control, -crack);
        }
    }
}
