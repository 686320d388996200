package org.fandown.document;

import java.util.Objects;

/**
 * Where in a file something stands.
 *
 * @param file the name of the file as the reader was given it
 * @param line the line, counted from 1; 0 if unknown
 * @param column the column in characters, counted from 1; 0 if unknown
 */
public record Position(String file, int line, int column) {
    /** The position of what was built in memory and read from no file. */
    public static final Position NONE = new Position("", 0, 0);

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if line or column is negative
     */
    public Position {
        Objects.requireNonNull(file, "file");
        if (line < 0 || column < 0) {
            throw new IllegalArgumentException("Line and column must not be negative.");
        }
    }

    /**
     * Returns the position of a file as a whole.
     *
     * @param file the name of the file
     * @return a position without line and column
     */
    public static Position inFile(String file) {
        return new Position(file, 0, 0);
    }

    /** Returns {@code file:line:column}, without the parts that are unknown. */
    @Override
    public String toString() {
        if (line == 0) {
            return file;
        }
        return file + ":" + line + (column == 0 ? "" : ":" + column);
    }
}
