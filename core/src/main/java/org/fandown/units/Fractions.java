package org.fandown.units;

/**
 * Mixed fractions as a tape measure shows them, such as {@code 1 3/8}.
 *
 * <p><i>Valid for:</i> numbers of size up to 1e6 and denominators of 1 to 64.
 */
public final class Fractions {
    /** A number this near to a multiple is taken for it: far below anything a tape can show. */
    private static final double SAME = 1e-9;

    private static final double MAX = 1e6;
    private static final int MAX_DENOMINATOR = 64;

    private Fractions() {}

    /**
     * Says whether a number is a whole multiple of a fraction, to within 1e-9.
     *
     * @param value the number
     * @param denominator the fraction's denominator, 1 to 64
     * @return whether {@link #mixed} prints it without loss; false beyond the valid size
     * @throws IllegalArgumentException if the denominator is out of range
     */
    public static boolean isMultiple(double value, int denominator) {
        requireDenominator(denominator);
        double parts = value * denominator;
        return Math.abs(value) <= MAX && Math.abs(parts - Num.round(parts)) <= SAME * denominator;
    }

    /**
     * Prints a number as the nearest mixed fraction in lowest terms; halfway goes away from zero.
     *
     * @param value a finite number of size up to 1e6
     * @param denominator the greatest denominator, 1 to 64; on a tape 16 or 32
     * @return for example {@code 1 3/8}, {@code 3/4}, {@code 2} or {@code -1 1/2}
     * @throws IllegalArgumentException outside those ranges
     */
    public static String mixed(double value, int denominator) {
        requireDenominator(denominator);
        if (!(Math.abs(value) <= MAX)) {
            throw new IllegalArgumentException(
                    "Only finite numbers of size up to 1e6 can be printed as a fraction.");
        }
        long parts = (long) Num.round(Math.abs(value) * denominator);
        long whole = parts / denominator;
        long over = parts % denominator;
        long divisor = commonDivisor(over, denominator);
        String sign = value < 0 && parts > 0 ? "-" : "";
        if (over == 0) {
            return sign + whole;
        }
        String fraction = over / divisor + "/" + denominator / divisor;
        return sign + (whole == 0 ? fraction : whole + " " + fraction);
    }

    private static long commonDivisor(long a, long b) {
        return b == 0 ? a : commonDivisor(b, a % b);
    }

    private static void requireDenominator(int denominator) {
        if (denominator < 1 || denominator > MAX_DENOMINATOR) {
            throw new IllegalArgumentException(
                    "The denominator must be 1 to 64, not " + denominator + ".");
        }
    }
}
