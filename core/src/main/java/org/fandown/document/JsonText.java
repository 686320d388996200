package org.fandown.document;

/** Reads one text in double quotes. */
final class JsonText {
    private static final int END = -1;
    private static final int HEX_DIGITS = 4;

    private final JsonSource source;
    private final String path;
    private final StringBuilder text = new StringBuilder();

    JsonText(JsonSource source, String path) {
        this.source = source;
        this.path = path;
    }

    /** Reads from the opening quote, which must be next, to past the closing one. */
    String read() {
        Position start = source.position();
        source.advance();
        while (!source.accept('"')) {
            int c = source.peek();
            if (c == END) {
                throw new DocumentException(
                        start, path, "", "the text does not end", "a closing '\"'", "close it");
            }
            if (c < ' ') {
                throw new DocumentException(
                        source.position(),
                        path,
                        "",
                        "a control character stands in a text",
                        "an escape such as \\n or \\t",
                        "write it as an escape");
            }
            source.advance();
            if (c == '\\') {
                escape();
            } else {
                text.append((char) c);
            }
        }
        if (!Texts.isWellFormed(text.toString())) {
            throw new DocumentException(
                    start,
                    path,
                    text.toString(),
                    "the text holds half a surrogate pair",
                    "whole characters",
                    "write both halves or neither");
        }
        return text.toString();
    }

    private void escape() {
        int c = source.peek();
        switch (c) {
            case '"', '\\', '/' -> text.append((char) c);
            case 'b' -> text.append('\b');
            case 'f' -> text.append('\f');
            case 'n' -> text.append('\n');
            case 'r' -> text.append('\r');
            case 't' -> text.append('\t');
            case 'u' -> {
                unicode();
                return;
            }
            default -> throw badEscape();
        }
        source.advance();
    }

    private void unicode() {
        source.advance();
        int code = 0;
        for (int i = 0; i < HEX_DIGITS; i++) {
            int digit = hex(source.peek());
            if (digit < 0) {
                throw badEscape();
            }
            code = code * 16 + digit;
            source.advance();
        }
        text.append((char) code);
    }

    private static int hex(int c) {
        if (c >= '0' && c <= '9') {
            return c - '0';
        }
        if (c >= 'a' && c <= 'f') {
            return c - 'a' + 10;
        }
        return c >= 'A' && c <= 'F' ? c - 'A' + 10 : -1;
    }

    private DocumentException badEscape() {
        return new DocumentException(
                source.position(),
                path,
                source.found(),
                "the escape is unknown or not complete",
                "\\\" \\\\ \\/ \\b \\f \\n \\r \\t or \\u with four hex digits",
                "double the backslash if it is meant as such");
    }
}
