package org.fandown.air;

/**
 * A pressure-protection valve of an integrated dryer unit: lets air from the gallery into one
 * circuit, never back, and the more the higher the gallery is above the pressure at which it shuts.
 */
final class PressureProtection implements Element {
    /** Time in which the valve follows, s. */
    private static final double FOLLOWS = 0.2;

    private final AirNode gallery;
    private final AirLink valve;
    private final double shut;
    private final double range;

    PressureProtection(AirNode gallery, AirLink valve, double open, double range) {
        this.gallery = gallery;
        this.valve = valve;
        this.shut = open - range;
        this.range = range;
    }

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        double aim = Math.max(0, Math.min(1, (state.pascals(gallery) - shut) / range));
        double now = state.opening(valve);
        double next = seconds > 0 ? now + (aim - now) * seconds / (seconds + FOLLOWS) : aim;
        state.setOpening(valve, next);
    }
}
