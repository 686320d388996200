package org.fandown.check;

/**
 * Where rules come from: an ISO 3166 code such as {@code CA}, {@code CA-ON} or {@code US-CA}, or
 * {@code UN} or {@code EU} for the bodies above countries.
 *
 * @param code two capitals; optionally a hyphen and one to three capitals or digits for a
 *     subdivision; optionally another hyphen and one to eight for a site with a pack of its own
 *     ({@code CA-ON-YARD7})
 */
public record PlaceCode(String code) implements Comparable<PlaceCode> {
    private static final int MOST_SUBDIVISION = 3;
    private static final int MOST_SITE = 8;

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
        String[] parts = text.split("-", -1);
        if (parts.length > 3 || parts[0].length() != 2) {
            return false;
        }
        for (int i = 0; i < parts.length; i++) {
            int most = i == 1 ? MOST_SUBDIVISION : MOST_SITE;
            if (parts[i].isEmpty() || parts[i].length() > most || !isCode(parts[i], i > 0)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isCode(String part, boolean digits) {
        for (int i = 0; i < part.length(); i++) {
            char c = part.charAt(i);
            if (!isCapital(c) && !(digits && c >= '0' && c <= '9')) {
                return false;
            }
        }
        return true;
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
