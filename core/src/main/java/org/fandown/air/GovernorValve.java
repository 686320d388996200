package org.fandown.air;

import org.fandown.air.AirSetup.Defect;

/** The governor: stops the pumping at the cut-out and starts it again at the cut-in. */
final class GovernorValve implements Element {
    private final AirNode sensed;
    private final AirMemory loaded;
    private final double cutIn;
    private final double cutOut;
    private final boolean stuckLoaded;
    private final boolean stuckUnloaded;

    GovernorValve(Plumbing parts, AirNode sensed, AirMemory loaded, double cutIn, double cutOut) {
        this.sensed = sensed;
        this.loaded = loaded;
        this.cutIn = parts.ambient + cutIn;
        this.cutOut = parts.ambient + cutOut;
        stuckLoaded = parts.setup.has(Defect.GOVERNOR_STUCK_LOADED);
        stuckUnloaded = parts.setup.has(Defect.GOVERNOR_STUCK_UNLOADED);
    }

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        double pressure = state.pascals(sensed);
        if (pressure >= cutOut || stuckUnloaded) {
            state.remember(loaded, 0);
        } else if (pressure <= cutIn) {
            state.remember(loaded, 1);
        }
        if (stuckLoaded) {
            state.remember(loaded, 1);
        }
    }
}
