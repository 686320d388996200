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
        double above = state.pascals(supply) - trips;
        double rising = state.slope(supply);
        state.foresee(Math.abs(above), above > 0 ? -rising : rising);
        if (above < 0) {
            state.setCommand(valve, FootValve.WIDE_OPEN);
        } else {
            state.follow(valve, control, -crack);
        }
    }
}
