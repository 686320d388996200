package org.fandown.braking;

import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.TimeSpan;
import org.fandown.units.Unit;

/**
 * The way a vehicle needs to stop.
 *
 * <p><b>Source.</b> Kinematics: nothing for a dead time, then a deceleration that rises evenly for
 * a rise time and then stays.
 *
 * <p><b>Assumes.</b> A level road, and no drag but the brakes'. Immutable.
 */
public final class Stopping {
    /** Speed from which in-service brake performance is judged: 20 mph. */
    public static final Quantity IN_SERVICE_SPEED = Quantity.of(20, Unit.MPH);

    /** Standard gravity as used with brake performance tables (ft/s2). */
    static final double GRAVITY = 32.174;

    private static final double FEET_PER_METRE = 1 / 0.3048;

    private Stopping() {}

    /**
     * Returns the distance without any lag: v^2 / 2a.
     *
     * @param speed the speed at first
     * @param deceleration positive
     * @return in feet
     */
    public static Quantity distance(Quantity speed, Quantity deceleration) {
        return distance(speed, deceleration, TimeSpan.ofSeconds(0), TimeSpan.ofSeconds(0));
    }

    /**
     * Returns the distance from the first movement of the control.
     *
     * @param speed the speed at first
     * @param deceleration the deceleration after the rise, positive
     * @param dead time before the brakes begin to act
     * @param rise time in which the deceleration rises evenly
     * @return in feet
     */
    public static Quantity distance(
            Quantity speed, Quantity deceleration, TimeSpan dead, TimeSpan rise) {
        if (speed.dimension() != Dimension.SPEED || !(speed.value() >= 0)) {
            throw new IllegalArgumentException("'" + speed + "' is not a speed forward.");
        }
        if (deceleration.dimension() != Dimension.ACCELERATION || !(deceleration.value() > 0)) {
            throw new IllegalArgumentException("'" + deceleration + "' does not slow down.");
        }
        double v = feetPerSecond(speed);
        double a = deceleration.valueIn(Unit.FT_PER_S2);
        return Quantity.of(feet(v, a, dead.seconds(), rise.seconds()), Unit.FOOT);
    }

    static double feetPerSecond(Quantity speed) {
        return speed.valueIn(Unit.MPS) * FEET_PER_METRE;
    }

    static double feet(double v, double a, double dead, double rise) {
        double left = v - a * rise / 2;
        if (left >= 0) {
            return v * dead + v * rise - a * rise * rise / 6 + left * left / (2 * a);
        }
        double time = Math.sqrt(2 * v * rise / a);
        return v * dead + v * time - a * time * time * time / (6 * rise);
    }
}
