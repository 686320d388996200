package org.fandown.trace;

import org.fandown.units.Num;

/**
 * The cumulative distribution of the standard normal law from a table, good to 1e-5.
 *
 * <p>Made once from the formula of Zelen and Severo (Abramowitz and Stegun, Handbook of
 * Mathematical Functions, 1964, 26.2.17), which is good to 7.5e-8.
 */
final class NormalTable {
    private static final int MOST = 6;
    private static final int PER_UNIT = 100;
    private static final double[] BELOW = table();

    private NormalTable() {}

    private static double[] table() {
        double[] table = new double[2 * MOST * PER_UNIT + 2];
        for (int i = 0; i < table.length; i++) {
            table[i] = formula((double) i / PER_UNIT - MOST);
        }
        return table;
    }

    private static double formula(double x) {
        double size = Math.abs(x);
        double t = 1 / (1 + 0.2316419 * size);
        double sum =
                t
                        * (0.319381530
                                + t
                                        * (-0.356563782
                                                + t
                                                        * (1.781477937
                                                                + t
                                                                        * (-1.821255978
                                                                                + t
                                                                                        * 1.330274429))));
        double tail = Num.exp(-size * size / 2) / Math.sqrt(2 * Math.PI) * sum;
        return x > 0 ? 1 - tail : tail;
    }

    /** Returns the probability of a value below x. */
    static double below(double x) {
        if (x <= -MOST) {
            return 0;
        }
        if (x >= MOST) {
            return 1;
        }
        double at = (x + MOST) * PER_UNIT;
        int i = (int) at;
        double part = at - i;
        return BELOW[i] + part * (BELOW[i + 1] - BELOW[i]);
    }
}
