package org.fandown.check;

/**
 * Where rules come from: an ISO 3166 code such as {@code CA}, {@code CA-ON} or {@code US-CA}, or
 * {@code UN} or {@code EU} for the bodies above countries.
 *
 * @param code two capitals, optionally a hyphen and one to three capitals or digits
 */
public record PlaceCode(String code) implements Comparable<PlaceCode> {

    /**
     * Checks the form.
     *
     * @throws IllegalArgumentException if the code does not have the form
     */
    public PlaceCode {
        if (!isWellFormed(code)) {
            throw new IllegalArgumentException(
                    "'" + code + "' is not a place code. Write an ISO 3166 code such as CA-ON.");
        }
    }

    /** Whether the text has the form of a place code. */
    public static boolean isWellFormed(String text) {
        int length = text.length();
        if (length < 2 || !isCapital(text.charAt(0)) || !isCapital(text.charAt(1))) {
            return false;
        }
        if (length == 2) {
            return true;
        }
        boolean good = text.charAt(2) == '-' && length >= 4 && length <= 6;
        for (int i = 3; good && i < length; i++) {
            char c = text.charAt(i);
            good = isCapital(c) || (c >= '0' && c <= '9');
        }
        return good;
    }

    /** The code in lower case, with which the ids of the place's rules begin. */
    public String rulePrefix() {
        StringBuilder prefix = new StringBuilder();
        for (int i = 0; i < code.length(); i++) {
            char c = code.charAt(i);
            prefix.append(isCapital(c) ? (char) (c - 'A' + 'a') : c);
        }
        return prefix.append('.').toString();
    }

    private static boolean isCapital(char c) {
        return c >= 'A' && c <= 'Z';
    }

    @Override
    public int compareTo(PlaceCode other) {
        return code.compareTo(other.code);
    }

    @Override
    public String toString() {
        return code;
    }
}
