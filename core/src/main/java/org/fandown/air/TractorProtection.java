package org.fandown.air;

import org.fandown.air.AirSetup.Defect;

/** The tractor protection valve: joins the control line when the supply line has pressure. */
final class TractorProtection implements Element {
    private final Latch latch;
    private final AirLink valve;
    private final AirLink vent;
    private final boolean stuckOpen;
    private final boolean stuckShut;

    TractorProtection(Plumbing parts, Latch latch, AirLink valve, AirLink vent) {
        this.latch = latch;
        this.valve = valve;
        this.vent = vent;
        stuckOpen = parts.setup.has(Defect.PROTECTION_STUCK_OPEN);
        stuckShut = parts.setup.has(Defect.PROTECTION_STUCK_SHUT);
    }

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        latch.update(state, controls, seconds);
        if (stuckOpen) {
            state.setOpening(valve, 1);
        } else if (stuckShut) {
            state.setOpening(valve, 0);
        }
        state.setOpening(vent, 1 - state.opening(valve));
    }
}
