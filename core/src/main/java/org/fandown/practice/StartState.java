package org.fandown.practice;

import org.fandown.units.GaugePressure;

/**
 * How the vehicle is found: engine off, key off, gear in neutral, no chocks, nobody in the cab.
 *
 * @param pressure pressure in all reservoirs, 0 to 150 psi
 * @param parked whether the parking brakes are set
 * @param trailerCharged whether the trailer supply knob is in, so that the towed units hold air; it
 *     is out where the pressure would not keep it in
 */
public record StartState(GaugePressure pressure, boolean parked, boolean trailerCharged) {
    /** All empty, as after a night or two. */
    public static final StartState EMPTY = new StartState(GaugePressure.ofPsi(0), true, false);

    private static final double MOST_PSI = 150;

    /**
     * Checks the pressure.
     *
     * @throws IllegalArgumentException if it is out of range
     */
    public StartState {
        if (!(pressure.inPsi() >= 0 && pressure.inPsi() <= MOST_PSI)) {
            throw new IllegalArgumentException("The pressure at the start must be 0 to 150 psi.");
        }
    }
}
