package org.fandown.document;

/** The characters of a JSON text, with the position of the next one. */
final class JsonSource {
    private static final int END = -1;

    private final String file;
    private final String text;
    private int at;
    private int line = 1;
    private int counted;
    private int column = 1;

    JsonSource(String file, String text) {
        this.file = file;
        this.text = text;
    }

    /** Returns the next character, or -1 at the end. */
    int peek() {
        return at < text.length() ? text.charAt(at) : END;
    }

    void advance() {
        at++;
    }

    boolean accept(char wanted) {
        if (peek() != wanted) {
            return false;
        }
        at++;
        return true;
    }

    void skipSpace() {
        int c = peek();
        while (c == ' ' || c == '\t' || c == '\n' || c == '\r') {
            at++;
            if (c == '\n' || (c == '\r' && peek() != '\n')) {
                line++;
                counted = at;
                column = 1;
            }
            c = peek();
        }
    }

    /** Takes a run of letters, digits, signs and points; empty if there is none. */
    String word() {
        int start = at;
        while (at < text.length() && isWord(text.charAt(at))) {
            at++;
        }
        return text.substring(start, at);
    }

    private static boolean isWord(char c) {
        return (c >= 'a' && c <= 'z')
                || (c >= 'A' && c <= 'Z')
                || (c >= '0' && c <= '9')
                || c == '+'
                || c == '-'
                || c == '.'
                || c == '_';
    }

    /** Returns the position of the next character; a character outside the BMP counts once. */
    Position position() {
        while (counted < at) {
            if (!Character.isLowSurrogate(text.charAt(counted))) {
                column++;
            }
            counted++;
        }
        return new Position(file, line, column);
    }

    /** Returns the next character for a message; empty at the end. */
    String found() {
        return at < text.length() ? text.substring(at, text.offsetByCodePoints(at, 1)) : "";
    }
}
