package org.fandown.trace;

/** Takes a log piece by piece, however long it is, and needs the same memory all the way. */
public interface LogReader {
    /**
     * Reads some bytes.
     *
     * @param buffer where they are
     * @param from place of the first
     * @param to place behind the last
     */
    void accept(byte[] buffer, int from, int to);

    /** Reads a last line that no line feed ends, and closes what is open. */
    void finish();

    /** Returns the number of lines read. */
    long lines();
}
