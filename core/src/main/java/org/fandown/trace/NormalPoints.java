package org.fandown.trace;

import org.fandown.units.Num;

/**
 * Points that are spread like the normal law in several dimensions, the same each time: Halton's
 * sequence, brought to the normal law by the formula of Hastings (Abramowitz and Stegun, Handbook
 * of Mathematical Functions, 1964, 26.2.23, good to 4.5e-4).
 */
final class NormalPoints {
    private static final int SIZE = 4096;
    private static final int[] PRIMES = {2, 3, 5, 7, 11, 13};

    /** The first points of the sequence are left out: they lie on lines. */
    private static final int SKIPPED = 20;

    private static final double[][] POINTS = points();

    private NormalPoints() {}

    /** Returns a point, the first again after the last; not to be changed. */
    static double[] point(int i) {
        return POINTS[i & (SIZE - 1)];
    }

    private static double[][] points() {
        double[][] points = new double[SIZE][PRIMES.length];
        for (int i = 0; i < SIZE; i++) {
            for (int j = 0; j < PRIMES.length; j++) {
                points[i][j] = normal(halton(i + SKIPPED, PRIMES[j]));
            }
        }
        return points;
    }

    private static double halton(int index, int base) {
        double value = 0;
        double digit = 1;
        int left = index;
        while (left > 0) {
            int rest = left / base;
            digit /= base;
            value += digit * (left - rest * base);
            left = rest;
        }
        return value;
    }

    private static double normal(double part) {
        double tail = Math.min(part, 1 - part);
        double t = Math.sqrt(-2 * Num.log(tail));
        double above = 2.515517 + t * (0.802853 + t * 0.010328);
        double below = 1 + t * (1.432788 + t * (0.189269 + t * 0.001308));
        double size = t - above / below;
        return part < 0.5 ? -size : size;
    }
}
