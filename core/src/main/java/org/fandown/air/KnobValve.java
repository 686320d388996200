package org.fandown.air;

import java.util.function.Function;
import org.fandown.air.AirControls.Knob;

/**
 * A push-pull valve of the dash: in, it feeds its line; out, it exhausts it. It stays in once the
 * pressure that feeds it has reached a threshold, and pops out when what it is held by falls below
 * another one.
 */
final class KnobValve implements Element {
    private final AirLink feed;
    private final AirLink exhaust;
    private final AirMemory in;
    private final AirMemory latched;
    private final AirNode[] feeding;
    private final AirNode[] holding;
    private final Trip trip;
    private final Function<AirControls, Knob> hand;

    /**
     * When a knob moves by itself.
     *
     * @param pop absolute pressure below which it pops out, Pa
     * @param hold absolute pressure from which it stays in, Pa
     * @param sticks whether it never pops out by itself
     */
    record Trip(double pop, double hold, boolean sticks) {}

    KnobValve(
            AirLink feed,
            AirLink exhaust,
            AirMemory in,
            AirMemory latched,
            AirNode[] feeding,
            AirNode[] holding,
            Trip trip,
            Function<AirControls, Knob> hand) {
        this.feed = feed;
        this.exhaust = exhaust;
        this.in = in;
        this.latched = latched;
        this.feeding = feeding;
        this.holding = holding;
        this.trip = trip;
        this.hand = hand;
    }

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        double feed = highest(state, feeding);
        switch (hand.apply(controls)) {
            case PUSHED -> state.remember(in, 1);
            case PULLED -> out(state);
            case LEFT_ALONE -> moveByItself(state, feed);
        }
        if (state.recall(in) > 0 && feed >= trip.hold()) {
            state.remember(latched, 1);
        }
        boolean pushed = state.recall(in) > 0;
        state.setOpening(this.feed, pushed ? 1 : 0);
        state.setOpening(exhaust, pushed ? 0 : 1);
        if (pushed) {
            foresee(state);
        }
    }

    private void foresee(AirState state) {
        if (state.recall(latched) > 0) {
            for (AirNode node : holding) {
                state.foresee(node, trip.pop());
            }
        } else {
            for (AirNode node : feeding) {
                state.foresee(node, trip.hold());
            }
        }
    }

    private static double highest(AirState state, AirNode[] nodes) {
        double highest = 0;
        for (AirNode node : nodes) {
            highest = Math.max(highest, state.pascals(node));
        }
        return highest;
    }

    private void moveByItself(AirState state, double feed) {
        boolean holds = state.recall(latched) > 0;
        boolean stays = holds ? highest(state, holding) >= trip.pop() : feed >= trip.hold();
        if (!stays && !(trip.sticks() && holds)) {
            out(state);
        }
    }

    private void out(AirState state) {
        state.remember(in, 0);
        state.remember(latched, 0);
    }
}
