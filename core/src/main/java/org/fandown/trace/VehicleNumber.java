package org.fandown.trace;

/**
 * A vehicle identification number (VIN) that a network carried.
 *
 * @param text the number as sent, without the star that ends it
 * @param source the address of the sender
 */
public record VehicleNumber(String text, int source) {
    private static final int LENGTH = 17;
    private static final int CHECKED = 8;
    private static final int[] WEIGHTS = {8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};

    /** Values of the letters A to Z; 0 for those that no number has. */
    private static final int[] LETTERS = {
        1, 2, 3, 4, 5, 6, 7, 8, 0, 1, 2, 3, 4, 5, 0, 7, 0, 9, 2, 3, 4, 5, 6, 7, 8, 9
    };

    /**
     * Returns whether it has the form of a number: 17 digits and capitals, none of them I, O, Q.
     */
    public boolean isWellFormed() {
        if (text.length() != LENGTH) {
            return false;
        }
        for (int i = 0; i < LENGTH; i++) {
            char c = text.charAt(i);
            boolean digit = c >= '0' && c <= '9';
            if (!digit && !(c >= 'A' && c <= 'Z' && LETTERS[c - 'A'] > 0)) {
                return false;
            }
        }
        return true;
    }

    /**
     * Returns whether its check digit is right, as it must be in North America; elsewhere many
     * numbers have none.
     *
     * <p><i>Source:</i> 49 CFR 565.15(c)(4), tables III to V.
     */
    public boolean hasCheckDigit() {
        if (!isWellFormed()) {
            return false;
        }
        int sum = 0;
        for (int i = 0; i < LENGTH; i++) {
            char c = text.charAt(i);
            sum += WEIGHTS[i] * (c <= '9' ? c - '0' : LETTERS[c - 'A']);
        }
        int rest = sum % 11;
        return text.charAt(CHECKED) == (rest == 10 ? 'X' : (char) ('0' + rest));
    }

    /** Returns what to think of it, in words. */
    public String remark() {
        if (!isWellFormed()) {
            return "not in the form of a VIN, which has 17 digits and capitals without I, O and Q";
        }
        return hasCheckDigit()
                ? "its check digit is right"
                : "its check digit is not right, which in North America means a wrong number";
    }
}
