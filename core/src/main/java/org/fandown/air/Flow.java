package org.fandown.air;

import org.fandown.units.AbsolutePressure;
import org.fandown.units.Temperature;

/**
 * How much air passes a {@link Restriction}.
 *
 * <p><b>Source.</b> ISO 6358: choked up to the critical ratio b of the pressures, above it an
 * ellipse, sqrt(1 - ((r - b) / (1 - b))^2). The ellipse differs from the exact nozzle by at most
 * 0.3 %.
 *
 * <p><b>Assumes.</b> From a ratio of 0.999 to 1 the flow is a straight line through zero, because
 * the ellipse is infinitely steep at 1.
 */
public final class Flow {
    /** Ratio of the pressures from which on the flow is a straight line. */
    static final double LINEAR_FROM = 0.999;

    private Flow() {}

    /**
     * Returns the mass flow.
     *
     * @param way what the air passes
     * @param from pressure on the first side
     * @param to pressure on the second side
     * @param gas temperature of the air that flows, above 0 K
     * @return the flow from the first to the second side, kg/s; negative if the second is higher
     */
    public static double massFlow(
            Restriction way, AbsolutePressure from, AbsolutePressure to, Temperature gas) {
        double high = Math.max(from.pascals(), to.pascals());
        double low = Math.min(from.pascals(), to.pascals());
        double b = way.criticalRatio();
        double chord = chord(high, low, b, stretch(b), slope(b));
        double perPascal = way.coefficient() / Math.sqrt(gas.kelvins()) * chord;
        return perPascal * (from.pascals() - to.pascals());
    }

    /**
     * Returns flow over difference of pressures, for a coefficient of one.
     *
     * @param high pressure upstream, Pa
     * @param low pressure downstream, Pa, not above high
     * @param b critical ratio
     * @param stretch {@link #stretch} of b
     * @param slope {@link #slope} of b
     */
    static double chord(double high, double low, double b, double stretch, double slope) {
        if (low >= LINEAR_FROM * high) {
            return slope;
        }
        double aboveCritical = (low - b * high) * stretch;
        if (aboveCritical <= 0) {
            return high / (high - low);
        }
        return Math.sqrt((high - aboveCritical) * (high + aboveCritical)) / (high - low);
    }

    /** Returns 1 / (1 - b), which stretches the ellipse. */
    static double stretch(double b) {
        return 1 / (1 - b);
    }

    /** Returns the chord of the straight line near equal pressures. */
    static double slope(double b) {
        double x = (LINEAR_FROM - b) / (1 - b);
        return Math.sqrt((1 - x) * (1 + x)) / (1 - LINEAR_FROM);
    }
}
