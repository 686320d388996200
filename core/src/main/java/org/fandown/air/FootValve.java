package org.fandown.air;

/**
 * The dual foot valve: each side brings its delivery to a pressure that grows with the travel of
 * the pedal; on the floor both are wide open.
 */
final class FootValve implements Element {
    /** Higher than any pressure there is, Pa. */
    static final double WIDE_OPEN = 1e7;

    private final AirLink primary;
    private final AirLink secondary;
    private final double ambient;
    private final double free;
    private final double crack;
    private final double full;
    private final double lag;

    FootValve(Plumbing parts, AirLink primary, AirLink secondary) {
        this.primary = primary;
        this.secondary = secondary;
        ambient = parts.ambient;
        free = parts.setup.value(AirDefault.FOOT_FREE);
        crack = parts.pascals(AirDefault.FOOT_CRACK);
        full = parts.pascals(AirDefault.FOOT_FULL);
        lag = parts.pascals(AirDefault.FOOT_LAG);
    }

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        double asked = asked(controls.foot());
        state.setCommand(primary, ambient + asked);
        state.setCommand(secondary, ambient + Math.max(0, asked - lag));
    }

    private double asked(double travel) {
        if (travel >= 1) {
            return WIDE_OPEN;
        }
        return travel <= free ? 0 : crack + (full - crack) * (travel - free) / (1 - free);
    }
}
