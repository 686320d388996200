package org.fandown.units;

/**
 * The few mathematical functions that results may depend on, made from addition, subtraction,
 * multiplication and division alone.
 *
 * <p>The library functions of the same names differ in their last digits from one machine to
 * another; these give the same bits wherever doubles follow IEEE 754, so that a run replays
 * exactly.
 *
 * <p><i>Valid for:</i> all doubles unless a method says otherwise. {@code exp}, {@code log} and
 * {@code pow} are good to a relative error of 1e-14 wherever the result is a normal double.
 */
public final class Num {
    /** The upper 33 bits of the natural logarithm of 2: a small whole multiple of it is exact. */
    static final double LN2_HIGH = 0x1.62e42feep-1;

    /** The rest of the natural logarithm of 2. */
    static final double LN2_LOW = 0x1.a39ef35793c76p-33;

    /** From here on exp overflows; below its negative counterpart exp is zero. */
    private static final double EXP_OVERFLOW = 709.782712893384;

    private static final double EXP_UNDERFLOW = -745.2;

    /** Terms of the series of exp: the first one left out is below 1e-17 for |r| up to ln(2)/2. */
    private static final int EXP_TERMS = 14;

    private Num() {}

    /**
     * Rounds to the nearest whole number, a half away from zero.
     *
     * @param value any finite number
     * @return the nearest whole number; never negative zero
     */
    public static double round(double value) {
        double size = Math.abs(value);
        double whole = Math.floor(size);
        if (size - whole >= 0.5) {
            whole += 1;
        }
        return value < 0 && whole > 0 ? -whole : whole;
    }

    /**
     * Rounds to a number of decimals, a half away from zero, and returns the double nearest to the
     * decimal so found.
     *
     * @param value a finite number of size up to 1e15
     * @param decimals 0 to 15
     * @return the rounded number; never negative zero
     * @throws IllegalArgumentException outside those ranges
     */
    public static double roundTo(double value, int decimals) {
        return Decimals.parse(Decimals.format(value, decimals));
    }

    /**
     * Returns the remainder of a division that rounds down, so that it has the sign of the divisor.
     * A remainder so near to the divisor that no double lies between them is zero.
     *
     * @param value a finite number
     * @param divisor a finite number other than zero, of size up to 1e290
     * @return a number from zero (included) to the divisor (excluded)
     * @throws IllegalArgumentException if the divisor is zero, or the quotient is over 2^53 in size
     */
    public static double floorMod(double value, double divisor) {
        double quotient = Math.floor(value / divisor);
        if (!(Math.abs(quotient) <= 0x1p53)) {
            throw new IllegalArgumentException(
                    "floorMod needs a divisor other than zero and a quotient of at most 2^53.");
        }
        double product = quotient * divisor;
        double rest = value - product - productError(quotient, divisor, product);
        double size = Math.abs(divisor);
        double sign = divisor < 0 ? -1 : 1;
        double positive = rest * sign;
        if (positive < 0) {
            positive += size;
        }
        if (positive >= size) {
            positive -= size;
        }
        return positive == 0 ? 0 : positive * sign;
    }

    /**
     * Returns e to a power.
     *
     * @param x the power
     * @return e to the power x; infinity above 709.78, zero below -745.2, NaN for NaN
     */
    public static double exp(double x) {
        if (!(x <= EXP_OVERFLOW)) {
            return x > 0 ? Double.POSITIVE_INFINITY : Double.NaN;
        }
        if (x < EXP_UNDERFLOW) {
            return 0;
        }
        int k = (int) Math.floor(x / (LN2_HIGH + LN2_LOW) + 0.5);
        double r = (x - k * LN2_HIGH) - k * LN2_LOW;
        double tail = 1;
        for (int n = EXP_TERMS; n >= 2; n--) {
            tail = 1 + tail * r / n;
        }
        return timesPowerOfTwo(1 + r * tail, k);
    }

    /**
     * Returns the natural logarithm.
     *
     * @param x the number
     * @return its logarithm; negative infinity for zero, NaN for a negative number or NaN
     */
    public static double log(double x) {
        if (!(x > 0)) {
            return x == 0 ? Double.NEGATIVE_INFINITY : Double.NaN;
        }
        if (x == Double.POSITIVE_INFINITY) {
            return x;
        }
        Logarithm parts = Logarithm.of(x);
        return parts.high() + parts.low();
    }

    /**
     * Returns a number to a power. A negative number may be raised to a whole power only.
     *
     * @param base the number
     * @param power the power
     * @return base to the power; 1 when the power is zero; NaN when there is no real answer
     */
    public static double pow(double base, double power) {
        if (power == 0 || base == 1) {
            return 1;
        }
        if (!(Math.abs(power) < Double.POSITIVE_INFINITY)
                || !(Math.abs(base) < Double.POSITIVE_INFINITY)) {
            return Double.NaN;
        }
        if (base < 0) {
            if (power != Math.floor(power)) {
                return Double.NaN;
            }
            double half = power / 2;
            double size = pow(-base, power);
            return half == Math.floor(half) ? size : -size;
        }
        if (base == 0) {
            return power > 0 ? 0 : Double.POSITIVE_INFINITY;
        }
        Logarithm log = Logarithm.of(base);
        double product = power * log.high();
        if (Math.abs(product) > -EXP_UNDERFLOW) {
            return product > 0 ? Double.POSITIVE_INFINITY : 0;
        }
        double rest = productError(power, log.high(), product) + power * log.low();
        double main = exp(product);
        return main == 0 || main == Double.POSITIVE_INFINITY ? main : main + main * rest;
    }

    /** Multiplies by two to the power k in steps that stay inside the range of a double. */
    static double timesPowerOfTwo(double value, int k) {
        double result = value;
        int left = k;
        while (left >= 30) {
            result *= 0x1p30;
            left -= 30;
        }
        while (left <= -30) {
            result *= 0x1p-30;
            left += 30;
        }
        return left >= 0 ? result * (1 << left) : result / (1 << -left);
    }

    /** Returns a times b minus the rounded product, without error while nothing overflows. */
    static double productError(double a, double b, double product) {
        double aHigh = upperHalf(a);
        double aLow = a - aHigh;
        double bHigh = upperHalf(b);
        double bLow = b - bHigh;
        return ((aHigh * bHigh - product) + aHigh * bLow + aLow * bHigh) + aLow * bLow;
    }

    private static double upperHalf(double value) {
        double spread = 134_217_729.0 * value;
        return spread - (spread - value);
    }
}
