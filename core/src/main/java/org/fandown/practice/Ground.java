package org.fandown.practice;

import org.fandown.units.Temperature;

/**
 * Where the vehicle stands.
 *
 * @param grade rise over run in the direction it points: 0.05 climbs by 5 %, -0.05 falls; -0.3 to
 *     0.3
 * @param air temperature of the air around, -60 to 60 C
 */
public record Ground(double grade, Temperature air) {
    /** Level, 20 C. */
    public static final Ground LEVEL = new Ground(0, Temperature.ofCelsius(20));

    private static final double MOST_GRADE = 0.3;
    private static final double MOST_CELSIUS = 60;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if one is left
     */
    public Ground {
        if (!(Math.abs(grade) <= MOST_GRADE)) {
            throw new IllegalArgumentException("A grade must be -30 % to 30 %.");
        }
        if (!(Math.abs(air.inCelsius()) <= MOST_CELSIUS)) {
            throw new IllegalArgumentException("The air must have -60 C to 60 C.");
        }
    }
}
