package org.fandown.units;

/** A natural logarithm as the unrounded sum of two doubles. */
record Logarithm(double high, double low) {
    private static final double SQRT_HALF = 0.7071067811865476;

    /** Terms of the series: the first one left out is below 1e-18 for |s| up to 0.172. */
    private static final int LOG_TERMS = 11;

    static Logarithm of(double x) {
        boolean tiny = x < 0x1p-1000;
        double mantissa = tiny ? x * 0x1p100 : x;
        int k = tiny ? -100 : 0;
        for (int step = 512; step >= 1; step /= 2) {
            double power = Num.timesPowerOfTwo(1, step);
            if (mantissa >= power) {
                mantissa /= power;
                k += step;
            } else if (mantissa * power <= 1) {
                mantissa *= power;
                k -= step;
            }
        }
        if (mantissa > 2 * SQRT_HALF) {
            mantissa /= 2;
            k++;
        } else if (mantissa < SQRT_HALF) {
            mantissa *= 2;
            k--;
        }
        return ofMantissa(mantissa, k);
    }

    /** Uses log m = 2 (s + s^3/3 + s^5/5 + ...) with s = (m - 1) / (m + 1). */
    private static Logarithm ofMantissa(double m, int k) {
        double above = m - 1;
        double below = m + 1;
        double belowRest = m - (below - 1);
        double s = above / below;
        double product = s * below;
        double missing = (above - product) - Num.productError(s, below, product) - s * belowRest;
        double sRest = missing / below;
        double square = s * s;
        double series = 0;
        for (int n = LOG_TERMS; n >= 1; n--) {
            series = (series + 1.0 / (2 * n + 1)) * square;
        }
        double tail = 2 * sRest + 2 * s * series;
        double first = k * Num.LN2_HIGH;
        double second = 2 * s;
        double sum = first + second;
        double sumRest = k == 0 ? 0 : second - (sum - first);
        double rest = sumRest + (tail + k * Num.LN2_LOW);
        double high = sum + rest;
        return new Logarithm(high, rest - (high - sum));
    }
}
