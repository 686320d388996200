package org.fandown.document;

import java.util.Objects;

/**
 * A single value, kept as the text that was written.
 *
 * @param text the text; for a number exactly as written, for a truth value {@code true} or {@code
 *     false}, for nothing {@code null}
 * @param kind what the text stands for
 * @param at where the value begins
 * @param path the path from the top
 */
public record ScalarNode(String text, Kind kind, Position at, String path) implements Node {
    /** What the text of a scalar stands for. */
    public enum Kind {
        /** Characters. */
        TEXT("text"),
        /** A number in the notation of JSON. */
        NUMBER("a number"),
        /** True or false. */
        TRUTH("true or false"),
        /** No value at all. */
        NOTHING("nothing");

        private final String phrase;

        Kind(String phrase) {
            this.phrase = phrase;
        }
    }

    /**
     * Checks that the text fits its kind.
     *
     * @throws IllegalArgumentException if it does not, or holds a lone surrogate
     */
    public ScalarNode {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(path, "path");
        Texts.requireWellFormed(text);
        boolean fits =
                switch (kind) {
                    case TEXT -> true;
                    case NUMBER -> Texts.isJsonNumber(text);
                    case TRUTH -> text.equals("true") || text.equals("false");
                    case NOTHING -> text.equals("null");
                };
        if (!fits) {
            throw new IllegalArgumentException("The text does not stand for " + kind.phrase + ".");
        }
    }

    /**
     * Says whether a text is a number in the notation of JSON, such as {@code -1.5e3}.
     *
     * @param text any text
     * @return whether it can stand in a node of kind {@link Kind#NUMBER}
     */
    public static boolean isNumber(String text) {
        return Texts.isJsonNumber(text);
    }

    /**
     * Says whether a text is made of whole characters, without half a surrogate pair.
     *
     * @param text any text
     * @return whether it can stand in a node of kind {@link Kind#TEXT}
     */
    public static boolean isText(String text) {
        return Texts.isWellFormed(text);
    }

    @Override
    public String phrase() {
        return kind.phrase;
    }
}
