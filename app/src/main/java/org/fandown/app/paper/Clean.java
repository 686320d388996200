package org.fandown.app.paper;

/** Makes text written by people printable. */
final class Clean {
    /** Longer entries are cut on the page; the attached file has them whole. */
    static final int LONGEST_ENTRY = 240;

    private static final int REPLACEMENT = 0xFFFD;

    private Clean() {}

    /**
     * Line ends and tabs become spaces; control characters, marks that turn the writing direction,
     * and halves of characters are dropped or replaced.
     */
    static String text(String text) {
        StringBuilder clean = new StringBuilder(text.length());
        text.codePoints().forEach(point -> append(clean, point));
        return clean.toString();
    }

    private static void append(StringBuilder clean, int point) {
        int type = Character.getType(point);
        if (Character.isWhitespace(point) || type == Character.LINE_SEPARATOR) {
            clean.append(' ');
        } else if (type == Character.SURROGATE
                || type == Character.UNASSIGNED
                || type == Character.PRIVATE_USE) {
            clean.appendCodePoint(REPLACEMENT);
        } else if (type != Character.CONTROL && type != Character.FORMAT) {
            clean.appendCodePoint(point);
        }
    }

    /** Cuts an entry that would crowd out the rest of the page, and says so. */
    static String entry(String text) {
        String cut = cut(text, LONGEST_ENTRY);
        return cut.equals(text) ? text : cut + " (whole text in the attached file)";
    }

    /** Cuts a text to at most the given number of characters and an ellipsis. */
    static String cut(String text, int most) {
        return text.codePointCount(0, text.length()) <= most
                ? text
                : text.substring(0, text.offsetByCodePoints(0, most)) + "\u2026";
    }
}
