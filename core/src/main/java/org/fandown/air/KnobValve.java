package org.fandown.air;

import java.util.function.Function;
import org.fandown.air.AirControls.Knob;

/**
 * A push-pull valve of the dash: in, it feeds its line; out, it exhausts it. It stays in once the
 * pressure has reached a threshold, and pops out below another one.
 */
final class KnobValve implements Element {
    private final AirLink feed;
    private final AirLink exhaust;
    private final AirMemory in;
    private final AirMemory latched;
    private final AirNode[] sensed;
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
            AirNode[] sensed,
            Trip trip,
            Function<AirControls, Knob> hand) {
        this.feed = feed;
        this.exhaust = exhaust;
        this.in = in;
        this.latched = latched;
        this.sensed = sensed;
        this.trip = trip;
        this.hand = hand;
    }

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        double highest = 0;
        for (AirNode node : sensed) {
            highest = Math.max(highest, state.pascals(node));
        }
        switch (hand.apply(controls)) {
            case PUSHED -> state.remember(in, 1);
            case PULLED -> out(state);
            case LEFT_ALONE -> moveByItself(state, highest);
        }
        if (state.recall(in) > 0 && highest >= trip.hold()) {
            state.remember(latched, 1);
        }
        boolean pushed = state.recall(in) > 0;
        state.setOpening(feed, pushed ? 1 : 0);
        state.setOpening(exhaust, pushed ? 0 : 1);
    }

    private void moveByItself(AirState state, double highest) {
        boolean stays = state.recall(latched) > 0 ? highest >= trip.pop() : highest >= trip.hold();
        if (!stays && !(trip.sticks() && state.recall(latched) > 0)) {
            out(state);
        }
    }

    private void out(AirState state) {
        state.remember(in, 0);
        state.remember(latched, 0);
    }
}
