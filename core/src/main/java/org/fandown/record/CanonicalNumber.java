package org.fandown.record;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A number as canonical JSON writes it: the shortest decimal digits that stand for the same double,
 * laid out as ECMAScript does.
 *
 * <p><i>Source:</i> RFC 8785, section 3.2.2.3; ECMA-262, Number::toString.
 */
final class CanonicalNumber {
    /** So many digits always stand for a double of their own, and so are its shortest. */
    private static final int OWN_DIGITS = 15;

    /** So many digits are always enough. */
    private static final int ENOUGH_DIGITS = 17;

    /** From this power of ten on the exponent is written. */
    private static final int LONG_WHOLE = 21;

    private static final int LONG_FRACTION = -6;

    /** Where doubles begin to have fewer digits. */
    private static final int NORMAL_EXPONENT = 300;

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    private CanonicalNumber() {}

    /**
     * Rewrites a number.
     *
     * @param text a number in the notation of JSON
     * @return the same double in its canonical form
     * @throws IllegalArgumentException if it is too large for a double
     */
    static String of(String text) {
        double value = Double.parseDouble(text);
        if (value == 0) {
            return "0";
        }
        double size = Math.abs(value);
        if (!(size < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "The number " + text + " is too large. Allowed: sizes up to 1.79e308.");
        }
        return (value < 0 ? "-" : "") + layOut(shortest(text, size));
    }

    private static BigDecimal shortest(String text, double size) {
        if (text.length() <= OWN_DIGITS) {
            BigDecimal written = new BigDecimal(text).abs().stripTrailingZeros();
            if (written.precision() <= OWN_DIGITS && Math.abs(written.scale()) < NORMAL_EXPONENT) {
                return written;
            }
        }
        return shortest(size);
    }

    /** The decimal with the fewest digits that is nearer to a double than to its neighbours. */
    private static BigDecimal shortest(double size) {
        long bits = Double.doubleToLongBits(size);
        BigDecimal exact = new BigDecimal(size);
        BigDecimal below = exact.subtract(new BigDecimal(Double.longBitsToDouble(bits - 1)));
        double next = Double.longBitsToDouble(bits + 1);
        BigDecimal above =
                next < Double.POSITIVE_INFINITY ? new BigDecimal(next).subtract(exact) : below;
        boolean tiesCount = (bits & 1) == 0;
        for (int digits = 1; digits < ENOUGH_DIGITS; digits++) {
            BigDecimal down = exact.round(new MathContext(digits, RoundingMode.DOWN));
            BigDecimal up = exact.round(new MathContext(digits, RoundingMode.UP));
            BigDecimal toDown = exact.subtract(down);
            BigDecimal toUp = up.subtract(exact);
            boolean downFits = down.signum() > 0 && isWithin(toDown, below, tiesCount);
            boolean upFits = isWithin(toUp, above, tiesCount);
            if (downFits && (!upFits || toDown.compareTo(toUp) <= 0)) {
                return down.stripTrailingZeros();
            }
            if (upFits) {
                return up.stripTrailingZeros();
            }
        }
        return exact.round(new MathContext(ENOUGH_DIGITS, RoundingMode.HALF_EVEN))
                .stripTrailingZeros();
    }

    /** Whether a distance is less than half a gap; exactly half counts where ties do. */
    private static boolean isWithin(BigDecimal distance, BigDecimal gap, boolean tiesCount) {
        int order = distance.multiply(TWO).compareTo(gap);
        return order < 0 || (order == 0 && tiesCount);
    }

    private static String layOut(BigDecimal number) {
        String digits = number.unscaledValue().toString();
        int point = digits.length() - number.scale();
        if (point > LONG_WHOLE || point <= LONG_FRACTION) {
            String rest = digits.length() == 1 ? "" : "." + digits.substring(1);
            return digits.charAt(0) + rest + "e" + (point > 0 ? "+" : "-") + Math.abs(point - 1);
        }
        if (point <= 0) {
            return "0." + "0".repeat(-point) + digits;
        }
        return point >= digits.length()
                ? digits + "0".repeat(point - digits.length())
                : digits.substring(0, point) + "." + digits.substring(point);
    }
}
