package org.fandown.units;

/**
 * A span of time, as a stopwatch gives it.
 *
 * <p>Not a moment. Never negative. Holds the SI amount, so an amount read back in another unit may
 * differ in the last digit; where the entered text matters keep the {@link Quantity}.
 *
 * <p><i>Valid for:</i> 0 to 1e10 s. Immutable.
 *
 * @param seconds the amount in seconds
 */
public record TimeSpan(double seconds) implements Comparable<TimeSpan> {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the amount is not finite or out of range
     */
    public TimeSpan {
        seconds = Ranges.require("A time", seconds, 0, 1e10, "0 to 1e10 s");
    }

    /**
     * Makes one from a quantity.
     *
     * @param quantity a quantity that is a time
     * @return the amount
     * @throws IllegalArgumentException if the dimension differs or the amount is out of range
     */
    public static TimeSpan of(Quantity quantity) {
        return new TimeSpan(quantity.baseValue(Dimension.TIME));
    }

    /**
     * Reads what a person wrote, such as {@code 1 min 14 s}.
     *
     * @param text the text
     * @return the amount
     * @throws QuantityFormatException if the text is not a time
     * @throws IllegalArgumentException if the amount is out of range
     */
    public static TimeSpan parse(String text) {
        return of(Quantity.parse(text, Dimension.TIME));
    }

    /**
     * Makes one from a bare number.
     *
     * @param seconds the amount in seconds
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static TimeSpan ofSeconds(double seconds) {
        return new TimeSpan(Unit.SECOND.toBase(seconds));
    }

    /**
     * Makes one from a bare number.
     *
     * @param minutes the amount in minutes
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static TimeSpan ofMinutes(double minutes) {
        return new TimeSpan(Unit.MINUTE.toBase(minutes));
    }

    /**
     * Makes one from a bare number.
     *
     * @param hours the amount in hours
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static TimeSpan ofHours(double hours) {
        return new TimeSpan(Unit.HOUR.toBase(hours));
    }

    /** Returns the amount in minutes. */
    public double inMinutes() {
        return Unit.MINUTE.fromBase(seconds);
    }

    /** Returns the amount in hours. */
    public double inHours() {
        return Unit.HOUR.fromBase(seconds);
    }

    @Override
    public int compareTo(TimeSpan other) {
        return Double.compare(seconds, other.seconds);
    }

    /** Prints the amount, such as {@code 74 s}. */
    @Override
    public String toString() {
        return Quantities.print(seconds, Unit.SECOND);
    }
}
