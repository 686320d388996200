package org.fandown.air;

/**
 * A relay or quick-release valve: delivers what its pilot says, less its opening pressure. A
 * quick-release valve takes its air from its pilot, a relay valve from elsewhere.
 */
final class Follower implements Element {
    private final AirLink valve;
    private final AirNode pilot;
    private final double crack;

    Follower(AirLink valve, AirNode pilot, double crack) {
        this.valve = valve;
        this.pilot = pilot;
        this.crack = crack;
    }

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        state.follow(valve, pilot, -crack);
    }
}
