package org.fandown.units;

/**
 * A speed of rotation, such as that of the engine.
 *
 * <p>Never negative. Holds the SI amount, so an amount read back in another unit may differ in the
 * last digit; where the entered text matters keep the {@link Quantity}.
 *
 * <p><i>Valid for:</i> 0 to 1e6 rpm. Immutable.
 *
 * @param revolutionsPerSecond the amount in revolutions per second
 */
public record RotationalSpeed(double revolutionsPerSecond) implements Comparable<RotationalSpeed> {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the amount is not finite or out of range
     */
    public RotationalSpeed {
        revolutionsPerSecond =
                Ranges.require(
                        "A speed of rotation",
                        revolutionsPerSecond,
                        0,
                        Unit.RPM.toBase(1e6),
                        "0 to 1e6 rpm");
    }

    /**
     * Makes one from a quantity.
     *
     * @param quantity a quantity that is a speed of rotation
     * @return the amount
     * @throws IllegalArgumentException if the dimension differs or the amount is out of range
     */
    public static RotationalSpeed of(Quantity quantity) {
        return new RotationalSpeed(quantity.baseValue(Dimension.ROTATION));
    }

    /**
     * Reads what a person wrote, such as {@code 1100 rpm}.
     *
     * @param text the text
     * @return the amount
     * @throws QuantityFormatException if the text is not a speed of rotation
     * @throws IllegalArgumentException if the amount is out of range
     */
    public static RotationalSpeed parse(String text) {
        return of(Quantity.parse(text, Dimension.ROTATION));
    }

    /**
     * Makes one from a bare number.
     *
     * @param rpm the amount in revolutions per minute
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static RotationalSpeed ofRpm(double rpm) {
        return new RotationalSpeed(Unit.RPM.toBase(rpm));
    }

    /** Returns the amount in revolutions per minute. */
    public double inRpm() {
        return Unit.RPM.fromBase(revolutionsPerSecond);
    }

    @Override
    public int compareTo(RotationalSpeed other) {
        return Double.compare(revolutionsPerSecond, other.revolutionsPerSecond);
    }

    /** Prints the amount, such as {@code 1100 rpm}. */
    @Override
    public String toString() {
        return Quantities.print(inRpm(), Unit.RPM);
    }
}
