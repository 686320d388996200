package org.fandown.trace;

/**
 * Cuts the bytes of a log into lines, in whatever pieces they come.
 *
 * <p>A line ends with a line feed, a carriage return, or one behind the other, which count as one
 * end. What stands behind the last end is a line too, but only if anything stands there. No other
 * byte means anything, so a binary file is cut like any other. Memory does not grow with the length
 * of a line: one that is longer than allowed is passed over, and told without its bytes.
 */
final class LineCutter {
    private final Taker taker;
    private final byte[] begun;
    private int begunLength;
    private boolean tooLong;
    private boolean afterReturn;
    private long lines;

    /** Takes lines one by one. */
    interface Taker {
        /**
         * Takes a line.
         *
         * @param buffer where it is, valid until this returns
         * @param from place of its first byte
         * @param to place behind its last byte, before what ends it
         */
        void line(byte[] buffer, int from, int to);

        /** Is told that a line was longer than allowed. */
        void tooLong();
    }

    /**
     * Makes a cutter.
     *
     * @param longest the most bytes a line may have
     * @param taker who takes the lines
     */
    LineCutter(int longest, Taker taker) {
        this.taker = taker;
        begun = new byte[longest];
    }

    /** Returns the number of lines so far, among them the one being taken. */
    long lines() {
        return lines;
    }

    /** Takes a piece. */
    void accept(byte[] buffer, int from, int to) {
        int start = from;
        for (int at = from; at < to; at++) {
            byte b = buffer[at];
            if (b == '\n' || b == '\r') {
                boolean second = b == '\n' && afterReturn && at == start;
                if (!second) {
                    end(buffer, start, at);
                }
                afterReturn = b == '\r';
                start = at + 1;
            }
        }
        if (start < to) {
            keep(buffer, start, to);
            afterReturn = false;
        }
    }

    /** Ends the last line. */
    void finish() {
        if (!isNothingBegun()) {
            end(begun, 0, 0);
        }
    }

    private boolean isNothingBegun() {
        return begunLength == 0 && !tooLong;
    }

    private void keep(byte[] buffer, int from, int to) {
        int more = to - from;
        if (tooLong || begunLength + more > begun.length) {
            tooLong = true;
        } else {
            System.arraycopy(buffer, from, begun, begunLength, more);
            begunLength += more;
        }
    }

    private void end(byte[] buffer, int from, int to) {
        lines++;
        if (!isNothingBegun()) {
            keep(buffer, from, to);
        }
        boolean skip = tooLong || to - from > begun.length;
        int length = begunLength;
        tooLong = false;
        begunLength = 0;
        if (skip) {
            taker.tooLong();
        } else if (length > 0) {
            taker.line(begun, 0, length);
        } else {
            taker.line(buffer, from, to);
        }
    }
}
