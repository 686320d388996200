package org.fandown.reference.air;

/**
 * The exact ideal nozzle, from its formulas with powers. Written for the tests alone, apart from
 * the flow law of the engine, and itself checked against published tables.
 */
final class Nozzle {
    static final double GAMMA = 1.4;
    static final double GAS_CONSTANT = 287.05;

    private Nozzle() {}

    static double criticalRatio() {
        return Math.pow(2 / (GAMMA + 1), GAMMA / (GAMMA - 1));
    }

    /** Flow function where choked. */
    static double choked() {
        return Math.sqrt(GAMMA) * Math.pow(2 / (GAMMA + 1), (GAMMA + 1) / (2 * (GAMMA - 1)));
    }

    /** Flow function at a ratio of downstream to upstream pressure. */
    static double flowFunction(double ratio) {
        if (ratio <= criticalRatio()) {
            return choked();
        }
        double x = Math.pow(ratio, 2 / GAMMA) - Math.pow(ratio, (GAMMA + 1) / GAMMA);
        return Math.sqrt(2 * GAMMA / (GAMMA - 1) * x);
    }

    /** Mass flow, kg/s, through an area that counts in full (m2), from absolute pressures (Pa). */
    static double massFlow(double area, double from, double to, double kelvins) {
        return area * from / Math.sqrt(GAS_CONSTANT * kelvins) * flowFunction(to / from);
    }

    /** Ratio of static to total pressure at a Mach number. */
    static double pressureRatio(double mach) {
        return Math.pow(1 + (GAMMA - 1) / 2 * mach * mach, -GAMMA / (GAMMA - 1));
    }
}
