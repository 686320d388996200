package org.fandown.air;

/** The needle of a pressure gauge: follows its pressure with a lag. */
final class GaugeNeedle implements Element {
    private final AirNode node;
    private final AirMemory needle;
    private final double ambient;
    private final double error;
    private final double lag;
    private final boolean stuck;

    /** Makes one; an error in Pa is added, and a stuck needle stays where its memory has it. */
    GaugeNeedle(Plumbing parts, AirNode node, AirMemory needle, double error, boolean stuck) {
        this.node = node;
        this.needle = needle;
        this.error = error;
        this.stuck = stuck;
        ambient = parts.ambient;
        lag = parts.setup.value(AirDefault.GAUGE_LAG);
    }

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        if (stuck) {
            return;
        }
        double shown = state.recall(needle);
        double aim = Math.max(0, state.pascals(node) - ambient + error);
        double part = seconds > 0 ? seconds / (seconds + lag) : 0;
        state.remember(needle, shown + (aim - shown) * part);
    }
}
