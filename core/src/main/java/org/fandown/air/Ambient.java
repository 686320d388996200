package org.fandown.air;

import org.fandown.units.AbsolutePressure;
import org.fandown.units.Temperature;

/**
 * The air around the vehicle.
 *
 * @param pressure its pressure, more than zero
 * @param temperature its temperature, above 100 K
 */
public record Ambient(AbsolutePressure pressure, Temperature temperature) {
    /** The standard atmosphere at 20 C. */
    public static final Ambient STANDARD =
            new Ambient(AbsolutePressure.STANDARD_ATMOSPHERE, new Temperature(293.15));

    private static final double COLDEST = 100;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if one is out of range
     */
    public Ambient {
        if (!(pressure.pascals() > 0) || !(temperature.kelvins() > COLDEST)) {
            throw new IllegalArgumentException(
                    "The air around needs a pressure above vacuum and a temperature above 100 K.");
        }
    }
}
