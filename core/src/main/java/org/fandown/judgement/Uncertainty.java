package org.fandown.judgement;

/**
 * Expanded uncertainties (coverage about 95 %).
 *
 * <p>Source: JCGM 100:2008 (GUM) 4.3.7 (variance of a reading with step q is q^2 / 12) and 6.2.1
 * (coverage factor 2). Where the hard bound of half a step for each reading is narrower, that bound
 * is used.
 */
final class Uncertainty {
    private static final double COVERAGE = 2;
    private static final double ROOT_12 = Math.sqrt(12);

    private Uncertainty() {}

    /** Of a sum or difference of independent readings, each made to the given step. */
    static double expanded(int readings, double step) {
        double statistical = COVERAGE * step * Math.sqrt(readings) / ROOT_12;
        return Math.min(statistical, readings * step / 2);
    }

    /** Of several independent contributions, each already expanded. */
    static double combine(double a, double b) {
        return a == 0 ? Math.abs(b) : b == 0 ? Math.abs(a) : Math.sqrt(a * a + b * b);
    }
}
