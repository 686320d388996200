package org.fandown.referee;

import org.fandown.practice.Station;
import org.fandown.procedure.Aspect;
import org.fandown.procedure.Situation;

/**
 * How the vehicle and the people stood, from a tick on until the next scene.
 *
 * @param tick from when on
 * @param state how the vehicle stood, without the pressure
 * @param pedal how far the brake pedal was down: 0 released, 2 to the floor, 1 between
 * @param hand whether the trailer hand valve was on
 * @param station where the person stood
 * @param helper whether somebody else sat in the cab
 * @param moves whether the vehicle moved
 */
record Scene(
        long tick,
        Situation state,
        int pedal,
        boolean hand,
        Station station,
        boolean helper,
        boolean moves) {
    static final int RELEASED = 0;
    static final int FLOOR = 2;

    boolean isLike(Scene other) {
        return state.equals(other.state)
                && pedal == other.pedal
                && hand == other.hand
                && station.equals(other.station)
                && helper == other.helper
                && moves == other.moves;
    }

    /** Whether there is nobody at the pedals. */
    boolean cabIsEmpty() {
        return !helper && !isInCab();
    }

    boolean isInCab() {
        return station.equals(Station.CAB);
    }

    boolean isHeld() {
        return state.has(Aspect.SECURED);
    }
}
