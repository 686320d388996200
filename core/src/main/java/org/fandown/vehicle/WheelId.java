package org.fandown.vehicle;

/**
 * The name of one end of one axle: axles are counted through the whole combination from the front,
 * starting at 1, so the left end of the first axle is {@code 1L}.
 *
 * @param axle the axle's number, 1 or more
 * @param side the side
 */
public record WheelId(int axle, Side side) implements Comparable<WheelId> {

    /** Refuses an axle below 1. */
    public WheelId {
        if (axle < 1) {
            throw new IllegalArgumentException("Axle " + axle + " is below 1.");
        }
    }

    /**
     * Reads {@code 1L}, {@code 12R}.
     *
     * @throws IllegalArgumentException if the text is not an axle number without leading zero
     *     followed by {@code L} or {@code R}
     */
    public static WheelId parse(String text) {
        int last = text.length() - 1;
        if (last < 1 || last > 3 || text.charAt(0) == '0') {
            throw unreadable(text);
        }
        int axle = 0;
        for (int i = 0; i < last; i++) {
            int digit = text.charAt(i) - '0';
            if (digit < 0 || digit > 9) {
                throw unreadable(text);
            }
            axle = axle * 10 + digit;
        }
        return switch (text.charAt(last)) {
            case 'L' -> new WheelId(axle, Side.LEFT);
            case 'R' -> new WheelId(axle, Side.RIGHT);
            default -> throw unreadable(text);
        };
    }

    private static IllegalArgumentException unreadable(String text) {
        return new IllegalArgumentException(
                "'"
                        + text
                        + "' is not a wheel. Write the axle, counted from the front, and L or R,"
                        + " for example 1L.");
    }

    /** Returns the other end of the same axle. */
    public WheelId opposite() {
        return new WheelId(axle, side.opposite());
    }

    @Override
    public int compareTo(WheelId other) {
        return axle != other.axle ? Integer.compare(axle, other.axle) : side.compareTo(other.side);
    }

    /** Returns the form that {@link #parse} reads. */
    @Override
    public String toString() {
        return Integer.toString(axle) + side.letter();
    }
}
