package org.fandown.air;

import org.fandown.air.AirSetup.Defect;

/** The dryer's purge valve: open while the governor has the compressor unloaded. */
final class PurgeValve implements Element {
    private final AirLink valve;
    private final AirMemory loaded;
    private final boolean stuckOpen;
    private final boolean stuckShut;

    PurgeValve(Plumbing parts, AirLink valve, AirMemory loaded) {
        this.valve = valve;
        this.loaded = loaded;
        stuckOpen = parts.setup.has(Defect.PURGE_STUCK_OPEN);
        stuckShut = parts.setup.has(Defect.PURGE_STUCK_SHUT);
    }

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        boolean open = (state.recall(loaded) == 0 && !stuckShut) || stuckOpen;
        state.setOpening(valve, open ? 1 : 0);
    }
}
