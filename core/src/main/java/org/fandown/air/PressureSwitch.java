package org.fandown.air;

/**
 * A switch that is on while the lower or the higher of two pressures is on one side of a setting.
 */
final class PressureSwitch implements Element {
    /** How far back a pressure must go to switch back, Pa. */
    private static final double HYSTERESIS = 7e3;

    private final AirNode first;
    private final AirNode second;
    private final AirMemory on;
    private final double setting;
    private final boolean below;

    /**
     * Makes one.
     *
     * @param setting absolute pressure, Pa
     * @param below whether it is on below the setting, judging the lower pressure; else above it,
     *     judging the higher one
     */
    PressureSwitch(AirNode first, AirNode second, AirMemory on, double setting, boolean below) {
        this.first = first;
        this.second = second;
        this.on = on;
        this.setting = setting;
        this.below = below;
    }

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        double a = state.pascals(first);
        double b = state.pascals(second);
        if (below) {
            set(state, setting - Math.min(a, b));
        } else {
            set(state, Math.max(a, b) - setting);
        }
    }

    private void set(AirState state, double beyond) {
        if (beyond > 0) {
            state.remember(on, 1);
        } else if (!below || beyond < -HYSTERESIS) {
            state.remember(on, 0);
        }
    }
}
