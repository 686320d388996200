package org.fandown.air;

import org.fandown.units.GaugePressure;

/**
 * A valve that brings its delivery to a commanded pressure and then laps: inlet and exhaust shut.
 *
 * <p>The inlet is wide open as long as the delivery is more than a band below the command, and
 * closes evenly within the band. The exhaust opens in the same way above the command plus a
 * deadband.
 *
 * @param inlet the way from supply to delivery, wide open
 * @param exhaust the way from delivery to the atmosphere, wide open
 * @param band difference of pressure over which inlet and exhaust open, more than 0
 * @param deadband how far the delivery may stand above the command before the exhaust opens, 0 or
 *     more
 */
public record LappingValve(
        Restriction inlet, Restriction exhaust, GaugePressure band, GaugePressure deadband) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if one is out of range
     */
    public LappingValve {
        if (!(band.pascals() > 0) || !(deadband.pascals() >= 0)) {
            throw new IllegalArgumentException(
                    "A lapping valve needs a band of more than 0 and a deadband of 0 or more.");
        }
    }
}
