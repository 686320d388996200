package org.fandown.air;

/**
 * A double check valve: the side with the higher pressure is joined with the outlet, either way.
 */
final class DoubleCheck implements Element {
    /** How much higher the other side must be to push the shuttle over, Pa. */
    private static final double MARGIN = 7e3;

    private final AirNode first;
    private final AirNode second;
    private final AirLink fromFirst;
    private final AirLink fromSecond;
    private final AirMemory shuttle;

    DoubleCheck(Plumbing parts, String name, AirNode first, AirNode second, AirNode outlet) {
        this(parts, name, first, second, outlet, AirDefault.FOOT_WAY);
    }

    DoubleCheck(
            Plumbing parts,
            String name,
            AirNode first,
            AirNode second,
            AirNode outlet,
            AirDefault area) {
        this.first = first;
        this.second = second;
        fromFirst = parts.way(name + "-" + first.name(), first, outlet, area);
        fromSecond = parts.way(name + "-" + second.name(), second, outlet, area);
        shuttle = parts.network.memory(name, 0);
    }

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        double higher = state.pascals(first) - state.pascals(second);
        if (higher > MARGIN) {
            state.remember(shuttle, 0);
        } else if (higher < -MARGIN) {
            state.remember(shuttle, 1);
        }
        boolean second = state.recall(shuttle) > 0;
        double rising = state.slope(this.first) - state.slope(this.second);
        state.foresee(second ? MARGIN - higher : MARGIN + higher, second ? rising : -rising);
        state.setOpening(fromFirst, second ? 0 : 1);
        state.setOpening(fromSecond, second ? 1 : 0);
    }
}
