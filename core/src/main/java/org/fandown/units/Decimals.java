package org.fandown.units;

/**
 * Decimal numbers as text, the same on every machine and in every language setting: a point, no
 * grouping, no exponent.
 *
 * <p><i>Valid for:</i> finite numbers of size up to 1e15 and 0 to 15 decimals.
 */
public final class Decimals {
    /** The greatest size that can be printed. */
    public static final double MAX = 1e15;

    private static final int MAX_DECIMALS = 15;

    /**
     * Up to this many digits a number and its power of ten are exact, and one division is correct.
     */
    private static final int EXACT_DIGITS = 15;

    private static final int EXACT_POWER = 22;

    private Decimals() {}

    /**
     * Prints a number with a fixed count of decimals. The number is rounded from its exact binary
     * value; an exact half goes away from zero. Nothing is ever printed as minus zero.
     *
     * @param value a finite number of size up to 1e15
     * @param decimals how many decimals, 0 to 15
     * @return for example {@code 813.60}
     * @throws IllegalArgumentException outside those ranges
     */
    public static String format(double value, int decimals) {
        if (!(Math.abs(value) <= MAX)) {
            throw new IllegalArgumentException(
                    "Only finite numbers of size up to 1e15 can be printed.");
        }
        if (decimals < 0 || decimals > MAX_DECIMALS) {
            throw new IllegalArgumentException(
                    "The count of decimals must be 0 to 15, not " + decimals + ".");
        }
        double size = Math.abs(value);
        long whole = (long) Math.floor(size);
        long scale = powerOfTen(decimals);
        long part = scaledHalfUp(size - whole, scale);
        if (part == scale) {
            whole++;
            part = 0;
        }
        String sign = value < 0 && (whole > 0 || part > 0) ? "-" : "";
        if (decimals == 0) {
            return sign + whole;
        }
        String digits = Long.toString(part);
        return sign + whole + "." + "0".repeat(decimals - digits.length()) + digits;
    }

    /**
     * Prints a number with at most a count of decimals and without trailing zeros.
     *
     * @param value a finite number of size up to 1e15
     * @param maxDecimals the greatest count of decimals, 0 to 15
     * @return for example {@code 813.6} or {@code 92}
     * @throws IllegalArgumentException outside those ranges
     */
    public static String formatShort(double value, int maxDecimals) {
        String fixed = format(value, maxDecimals);
        if (maxDecimals == 0) {
            return fixed;
        }
        int end = fixed.length();
        while (fixed.charAt(end - 1) == '0') {
            end--;
        }
        if (fixed.charAt(end - 1) == '.') {
            end--;
        }
        return fixed.substring(0, end);
    }

    /**
     * Says whether a text is a plain decimal: an optional sign, digits, and optionally a point with
     * digits after it, such as {@code -0.25}.
     *
     * @param text any text
     * @return whether {@link #parse} accepts it
     */
    public static boolean isDecimal(String text) {
        int start = !text.isEmpty() && isSign(text.charAt(0)) ? 1 : 0;
        int end = digitsEnd(text, start);
        if (end == start) {
            return false;
        }
        if (end == text.length()) {
            return true;
        }
        int fraction = end + 1;
        return text.charAt(end) == '.'
                && fraction < text.length()
                && digitsEnd(text, fraction) == text.length();
    }

    /**
     * Reads a plain decimal.
     *
     * @param text a text that {@link #isDecimal} accepts
     * @return the nearest double; never negative zero
     * @throws IllegalArgumentException if the text is not a plain decimal or too large for a double
     */
    public static double parse(String text) {
        if (!isDecimal(text)) {
            throw new IllegalArgumentException(
                    "'" + text + "' is not a plain decimal number. Write digits with a point.");
        }
        int start = isSign(text.charAt(0)) ? 1 : 0;
        int point = text.indexOf('.');
        int scale = point < 0 ? 0 : text.length() - point - 1;
        double size;
        if (significantDigits(text, start) <= EXACT_DIGITS && scale <= EXACT_POWER) {
            size = mantissa(text, start) / doublePowerOfTen(scale);
        } else {
            size = Double.parseDouble(text.substring(start));
        }
        if (!(size < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("'" + text + "' is too large a number.");
        }
        return text.charAt(0) == '-' && size != 0 ? -size : size;
    }

    /** Returns fraction times scale, rounded half up from the exact product. */
    private static long scaledHalfUp(double fraction, long scale) {
        double product = fraction * scale;
        double error = Num.productError(fraction, (double) scale, product);
        double floor = Math.floor(product);
        double aboveHalf = (product - floor) - 0.5;
        if (aboveHalf > 0 || (aboveHalf == 0 && error >= 0)) {
            return (long) floor + 1;
        }
        return (long) floor;
    }

    private static long powerOfTen(int exponent) {
        long power = 1;
        for (int i = 0; i < exponent; i++) {
            power *= 10;
        }
        return power;
    }

    private static double doublePowerOfTen(int exponent) {
        double power = 1;
        for (int i = 0; i < exponent; i++) {
            power *= 10;
        }
        return power;
    }

    private static double mantissa(String text, int start) {
        long digits = 0;
        for (int i = start; i < text.length(); i++) {
            if (text.charAt(i) != '.') {
                digits = digits * 10 + (text.charAt(i) - '0');
            }
        }
        return digits;
    }

    private static int significantDigits(String text, int start) {
        int count = 0;
        for (int i = start; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c != '.' && (c != '0' || count > 0)) {
                count++;
            }
        }
        return count;
    }

    private static int digitsEnd(String text, int start) {
        int end = start;
        while (end < text.length() && isDigit(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private static boolean isSign(char c) {
        return c == '-' || c == '+';
    }

    static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
