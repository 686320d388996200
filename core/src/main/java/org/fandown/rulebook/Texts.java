package org.fandown.rulebook;

import org.fandown.units.Decimals;

/** Small pieces of English. */
final class Texts {
    private static final int MOST_DECIMALS = 6;

    private Texts() {}

    static String number(double value) {
        return Decimals.formatShort(value, MOST_DECIMALS);
    }

    /** The text with its first letter small, unless the second is a capital too (ABS). */
    static String lowerFirst(String text) {
        if (text.length() < 2 || !isCapital(text.charAt(0)) || isCapital(text.charAt(1))) {
            return text;
        }
        return (char) (text.charAt(0) - 'A' + 'a') + text.substring(1);
    }

    /** Whether the text is of small letters, digits and single hyphens between them. */
    static boolean isKebab(String text) {
        boolean between = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean sign = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
            if (!sign && !(c == '-' && between)) {
                return false;
            }
            between = sign;
        }
        return between;
    }

    private static boolean isCapital(char c) {
        return c >= 'A' && c <= 'Z';
    }
}
