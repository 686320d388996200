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
        if (text.codePointCount(0, text.length()) <= LONGEST_ENTRY) {
            return text;
        }
        int end = text.offsetByCodePoints(0, LONGEST_ENTRY);
        return text.substring(0, end) + "... (whole text in the attached file)";
    }
}
