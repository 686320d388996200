package org.fandown.document;

/** Small questions about texts. */
final class Texts {
    private static final int SHOWN = 80;

    private Texts() {}

    /** Says whether a text is a number in the notation of JSON, such as {@code -1.5e3}. */
    static boolean isJsonNumber(String text) {
        int at = text.startsWith("-") ? 1 : 0;
        int whole = digits(text, at);
        boolean leadingZero = whole > at + 1 && text.charAt(at) == '0';
        if (whole == at || leadingZero) {
            return false;
        }
        at = whole;
        if (at < text.length() && text.charAt(at) == '.') {
            int end = digits(text, at + 1);
            if (end == at + 1) {
                return false;
            }
            at = end;
        }
        return at == text.length() || isExponent(text, at);
    }

    private static boolean isExponent(String text, int at) {
        if (text.charAt(at) != 'e' && text.charAt(at) != 'E') {
            return false;
        }
        int start = at + 1;
        if (start < text.length() && (text.charAt(start) == '+' || text.charAt(start) == '-')) {
            start++;
        }
        return start < text.length() && digits(text, start) == text.length();
    }

    /** Returns where a run of digits that begins at a place ends. */
    static int digits(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at;
    }

    /** Says whether every surrogate in a text is one of a pair. */
    static boolean isWellFormed(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isSurrogate(c)) {
                boolean pair =
                        Character.isHighSurrogate(c)
                                && i + 1 < text.length()
                                && Character.isLowSurrogate(text.charAt(i + 1));
                if (!pair) {
                    return false;
                }
                i++;
            }
        }
        return true;
    }

    static void requireWellFormed(String text) {
        if (!isWellFormed(text)) {
            throw new IllegalArgumentException("A text must not hold half a surrogate pair.");
        }
    }

    /** Makes any text fit for one line of a message: cut to length, control characters replaced. */
    static String shown(String text) {
        StringBuilder line = new StringBuilder();
        int i = 0;
        while (i < text.length() && line.length() < SHOWN) {
            int point = text.codePointAt(i);
            boolean odd = Character.isISOControl(point) || isSurrogate(point);
            line.appendCodePoint(odd ? '?' : point);
            i += Character.charCount(point);
        }
        return i < text.length() ? line + "..." : line.toString();
    }

    private static boolean isSurrogate(int point) {
        return point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE;
    }
}
