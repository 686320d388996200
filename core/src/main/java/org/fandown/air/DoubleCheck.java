package org.fandown.air;

/**
 * A double check valve: both inlets feed the outlet, and neither the other. Near equal pressures
 * the shuttle stands between its seats and both feed. Air goes back when the outlet is the highest,
 * to the side whose seat is free.
 */
final class DoubleCheck implements Element {
    /** How much higher one side must be to push the shuttle over, Pa. */
    private static final double MARGIN = 1e3;

    private final AirNode first;
    private final AirNode second;
    private final AirLink toFirst;
    private final AirLink toSecond;
    private final AirMemory shuttle;

    private DoubleCheck(
            Plumbing parts,
            String name,
            AirNode first,
            AirNode second,
            AirNode outlet,
            double back) {
        this.first = first;
        this.second = second;
        String check = name + "-check";
        parts.check(check + "-" + first.name(), first, outlet, AirDefault.FOOT_WAY, 0);
        parts.check(check + "-" + second.name(), second, outlet, AirDefault.FOOT_WAY, 0);
        String free = name + "-back-";
        toFirst = parts.check(free + first.name(), outlet, first, AirDefault.FOOT_WAY, back);
        toSecond = parts.check(free + second.name(), outlet, second, AirDefault.FOOT_WAY, back);
        shuttle = parts.network.memory(check, 0);
    }

    /** Makes one between two signals, through which the outlet is emptied as well. */
    static DoubleCheck ofSignals(
            Plumbing parts, String name, AirNode first, AirNode second, AirNode outlet) {
        return new DoubleCheck(parts, name, first, second, outlet, 0);
    }

    /** Makes one between two circuits, of which neither may feed the other. */
    static DoubleCheck ofCircuits(
            Plumbing parts, String name, AirNode first, AirNode second, AirNode outlet) {
        return new DoubleCheck(parts, name, first, second, outlet, MARGIN);
    }

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        double higher = state.pascals(first) - state.pascals(second);
        if (higher > MARGIN) {
            state.remember(shuttle, 0);
        } else if (higher < -MARGIN) {
            state.remember(shuttle, 1);
        }
        boolean atSecond = state.recall(shuttle) > 0;
        state.setOpening(toFirst, atSecond ? 0 : 1);
        state.setOpening(toSecond, atSecond ? 1 : 0);
        state.foresee(first, second, atSecond ? MARGIN : -MARGIN);
    }
}
