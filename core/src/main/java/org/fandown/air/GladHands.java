package org.fandown.air;

import org.fandown.air.AirControls.Coupling;
import org.fandown.air.AirOutlet.Kind;

/** The couplings of supply and control line behind one unit. */
final class GladHands implements Element {
    private final int unit;
    private final AirLink supply;
    private final AirLink control;
    private final AirLink supplyToControl;
    private final AirLink controlToSupply;
    private final AirLink[] frontEnds;
    private final AirLink[] rearEnds;

    /** The two lines of one unit. */
    record Lines(AirNode supply, AirNode control) {}

    GladHands(Plumbing parts, int unit, Lines front, Lines rear) {
        this.unit = unit;
        String name = "-" + unit;
        supply =
                parts.way(
                        "glad-hand-supply" + name, front.supply, rear.supply, AirDefault.LINE_WAY);
        control =
                parts.way(
                        "glad-hand-control" + name,
                        front.control,
                        rear.control,
                        AirDefault.LINE_WAY);
        supplyToControl =
                parts.way("crossed-supply" + name, front.supply, rear.control, AirDefault.LINE_WAY);
        controlToSupply =
                parts.way(
                        "crossed-control" + name, front.control, rear.supply, AirDefault.LINE_WAY);
        frontEnds =
                new AirLink[] {
                    open(parts, "open-supply" + name, front.supply),
                    open(parts, "open-control" + name, front.control)
                };
        rearEnds =
                new AirLink[] {
                    open(parts, "open-supply-rear" + name, rear.supply),
                    open(parts, "open-control-rear" + name, rear.control)
                };
    }

    private static AirLink open(Plumbing parts, String name, AirNode line) {
        return parts.outlet(Kind.COUPLING, name, line, AirDefault.OPEN_LINE);
    }

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        Coupling how = controls.couplings().getOrDefault(unit, Coupling.COUPLED);
        boolean crossed = how == Coupling.CROSSED;
        boolean supplyApart =
                how == Coupling.OPEN || how == Coupling.SUPPLY_OPEN || how == Coupling.SHUT;
        boolean controlApart =
                how == Coupling.OPEN || how == Coupling.CONTROL_OPEN || how == Coupling.SHUT;
        set(state, supply, !supplyApart && !crossed);
        set(state, control, !controlApart && !crossed);
        set(state, supplyToControl, crossed);
        set(state, controlToSupply, crossed);
        set(state, frontEnds[0], supplyApart && how != Coupling.SHUT);
        set(state, frontEnds[1], controlApart && how != Coupling.SHUT);
        set(state, rearEnds[0], supplyApart);
        set(state, rearEnds[1], controlApart);
    }

    private static void set(AirState state, AirLink link, boolean open) {
        state.setOpening(link, open ? 1 : 0);
    }
}
