package org.fandown.air;

import org.fandown.units.Length;
import org.fandown.units.Temperature;
import org.fandown.units.TimeSpan;

/**
 * Air as an ideal gas.
 *
 * <p><b>Valid for.</b> Up to 10 bar above the surrounding air and -20 C to 120 C, where the error
 * of the ideal gas stays below 0.8 %, far below what a gauge can show.
 */
public final class Gas {
    /** Gas constant of dry air, J/(kg K). */
    static final double R = 287.05;

    /** Ratio of the heat capacities. */
    static final double GAMMA = 1.4;

    /** Temperature to which sonic conductances refer (ISO 6358), K. */
    static final double REFERENCE_TEMPERATURE = 293.15;

    /** Density to which sonic conductances refer (ISO 6358), kg/m3. */
    static final double REFERENCE_DENSITY = 1.185;

    private static final double SONIC_RATIO = 2 / (GAMMA + 1);

    /**
     * Choked mass flow of an ideal nozzle is this times area times pressure over sqrt(R T). The
     * power (gamma + 1) / (2 (gamma - 1)) is three for gamma 1.4.
     */
    static final double NOZZLE = Math.sqrt(GAMMA) * SONIC_RATIO * SONIC_RATIO * SONIC_RATIO;

    /**
     * Pressure ratio below which an ideal nozzle is choked. The power gamma / (gamma - 1) is three
     * and a half for gamma 1.4.
     */
    static final double NOZZLE_CRITICAL_RATIO =
            SONIC_RATIO * SONIC_RATIO * SONIC_RATIO * Math.sqrt(SONIC_RATIO);

    private Gas() {}

    /**
     * Returns the time a change of pressure takes through a line: its length over the speed of
     * sound sqrt(gamma R T).
     *
     * @param line length of the line
     * @param gas temperature of the air in it, above 0 K
     * @return the delay; real narrow hoses are slower, by about a tenth
     */
    public static TimeSpan travelTime(Length line, Temperature gas) {
        return new TimeSpan(line.metres() / Math.sqrt(GAMMA * R * gas.kelvins()));
    }
}
