package org.fandown.trace;

/**
 * One message of a log. A reader fills the same object again for each line, so copy what must stay.
 *
 * <p>The identifier of 29 bits is read as SAE J1939 does: priority, group number (PGN), destination
 * and source address.
 */
public final class CanFrame {
    /** The destination of a message that goes to all. */
    public static final int EVERYBODY = 255;

    private static final int BROADCAST_FROM = 240;

    long line;
    long nanos;
    boolean timed;
    boolean extended;
    int identifier;
    int length;

    /** The bytes; the first stands in the lowest eight bits. */
    long data;

    CanFrame() {}

    /** Returns the number of its line in the log, 1 for the first. */
    public long line() {
        return line;
    }

    /** Returns whether the line has a time. */
    public boolean isTimed() {
        return timed;
    }

    /** Returns its time in seconds; 0 without a time. */
    public double seconds() {
        return nanos / 1e9;
    }

    /** Returns its time in whole nanoseconds; 0 without a time. */
    public long nanos() {
        return nanos;
    }

    /** Returns whether the identifier has 29 bits, as all of SAE J1939 have, and not 11. */
    public boolean isExtended() {
        return extended;
    }

    /** Returns the identifier, 11 or 29 bits. */
    public int identifier() {
        return identifier;
    }

    /** Returns the number of bytes, 0 to 8. */
    public int length() {
        return length;
    }

    /**
     * Returns a byte, 0 to 255.
     *
     * @param number its number as SAE J1939 counts, 1 for the first
     * @throws IllegalArgumentException if the message has no such byte
     */
    public int dataByte(int number) {
        if (number < 1 || number > length) {
            throw new IllegalArgumentException(
                    "There is no byte " + number + "; the message has bytes 1 to " + length + ".");
        }
        return (int) (data >>> (8 * (number - 1))) & 0xFF;
    }

    /** Returns the priority, 0 to 7; 0 is the highest. */
    public int priority() {
        return (identifier >>> 26) & 7;
    }

    /** Returns the parameter group number. */
    public int group() {
        int format = (identifier >>> 16) & 0xFF;
        int page = (identifier >>> 24) & 3;
        int low = format >= BROADCAST_FROM ? (identifier >>> 8) & 0xFF : 0;
        return (page << 16) | (format << 8) | low;
    }

    /** Returns the address the message goes to; {@link #EVERYBODY} for most. */
    public int destination() {
        int format = (identifier >>> 16) & 0xFF;
        return format >= BROADCAST_FROM ? EVERYBODY : (identifier >>> 8) & 0xFF;
    }

    /** Returns the address of the sender. */
    public int source() {
        return identifier & 0xFF;
    }
}
