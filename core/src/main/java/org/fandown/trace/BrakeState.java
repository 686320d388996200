package org.fandown.trace;

import org.jspecify.annotations.Nullable;

/** Whether the service brakes are applied, by whatever channel tells. */
final class BrakeState {
    /** An application pressure above this holds the brakes, psi. */
    private static final double PRESSURE = 5;

    /** A pedal travel above this does, %. */
    private static final double TRAVEL = 5;

    /** A change of application pressure or travel by this disturbs, psi or %. */
    private static final double CHANGE = 15;

    private @Nullable Boolean applied;
    private double pressure = Double.NaN;
    private double travel = Double.NaN;

    /** Whether the brakes are applied, null if nothing tells. */
    @Nullable Boolean applied() {
        return applied;
    }

    /** Takes what a moment tells; returns whether something was done to the pedal. */
    boolean changed(Moment now) {
        Boolean next = read(now);
        boolean changed = next != null && !next.equals(applied);
        if (next != null) {
            applied = next;
        }
        if (now.has(Channel.APPLICATION)) {
            double value = now.get(Channel.APPLICATION);
            changed |= Math.abs(value - pressure) > CHANGE;
            pressure = value;
        }
        if (now.has(Channel.PEDAL)) {
            double value = now.get(Channel.PEDAL);
            changed |= Math.abs(value - travel) > CHANGE;
            travel = value;
        }
        return changed;
    }

    private static @Nullable Boolean read(Moment now) {
        if (now.has(Channel.BRAKE_SWITCH)) {
            return now.get(Channel.BRAKE_SWITCH) > 0.5;
        }
        if (now.has(Channel.APPLICATION)) {
            return now.get(Channel.APPLICATION) > PRESSURE;
        }
        return now.has(Channel.PEDAL) ? now.get(Channel.PEDAL) > TRAVEL : null;
    }
}
