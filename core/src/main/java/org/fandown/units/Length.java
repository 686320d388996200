package org.fandown.units;

/**
 * A length, such as the stroke of a push rod.
 *
 * <p>Never negative: a difference that may be is a bare number. Holds the SI amount, so an amount
 * read back in another unit may differ in the last digit; where the entered text matters keep the
 * {@link Quantity}.
 *
 * <p><i>Valid for:</i> 0 to 1000 km. Immutable.
 *
 * @param metres the amount in metres
 */
public record Length(double metres) implements Comparable<Length> {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the amount is not finite or out of range
     */
    public Length {
        metres = Ranges.require("A length", metres, 0, 1e6, "0 to 1000 km");
    }

    /**
     * Makes one from a quantity.
     *
     * @param quantity a quantity that is a length
     * @return the amount
     * @throws IllegalArgumentException if the dimension differs or the amount is out of range
     */
    public static Length of(Quantity quantity) {
        return new Length(quantity.baseValue(Dimension.LENGTH));
    }

    /**
     * Reads what a person wrote, such as {@code 1 3/8 in}.
     *
     * @param text the text
     * @return the amount
     * @throws QuantityFormatException if the text is not a length
     * @throws IllegalArgumentException if the amount is out of range
     */
    public static Length parse(String text) {
        return of(Quantity.parse(text, Dimension.LENGTH));
    }

    /**
     * Makes one from a bare number.
     *
     * @param metres the amount in metres
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static Length ofMetres(double metres) {
        return new Length(Unit.METRE.toBase(metres));
    }

    /**
     * Makes one from a bare number.
     *
     * @param millimetres the amount in millimetres
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static Length ofMillimetres(double millimetres) {
        return new Length(Unit.MM.toBase(millimetres));
    }

    /**
     * Makes one from a bare number.
     *
     * @param inches the amount in inches
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static Length ofInches(double inches) {
        return new Length(Unit.INCH.toBase(inches));
    }

    /**
     * Makes one from a bare number.
     *
     * @param feet the amount in feet
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static Length ofFeet(double feet) {
        return new Length(Unit.FOOT.toBase(feet));
    }

    /** Returns the amount in millimetres. */
    public double inMillimetres() {
        return Unit.MM.fromBase(metres);
    }

    /** Returns the amount in inches. */
    public double inInches() {
        return Unit.INCH.fromBase(metres);
    }

    /** Returns the amount in feet. */
    public double inFeet() {
        return Unit.FOOT.fromBase(metres);
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(metres, other.metres);
    }

    /** Prints the amount, such as {@code 34.9 mm}. */
    @Override
    public String toString() {
        return Quantities.print(inMillimetres(), Unit.MM);
    }
}
