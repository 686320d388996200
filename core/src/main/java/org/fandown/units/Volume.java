package org.fandown.units;

/**
 * A volume, such as that of a reservoir.
 *
 * <p>Never negative. Holds the SI amount, so an amount read back in another unit may differ in the
 * last digit; where the entered text matters keep the {@link Quantity}.
 *
 * <p><i>Valid for:</i> 0 to 1e6 cubic metres. Immutable.
 *
 * @param cubicMetres the amount in cubic metres
 */
public record Volume(double cubicMetres) implements Comparable<Volume> {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the amount is not finite or out of range
     */
    public Volume {
        cubicMetres = Ranges.require("A volume", cubicMetres, 0, 1e6, "0 to 1e6 cubic metres");
    }

    /**
     * Makes one from a quantity.
     *
     * @param quantity a quantity that is a volume
     * @return the amount
     * @throws IllegalArgumentException if the dimension differs or the amount is out of range
     */
    public static Volume of(Quantity quantity) {
        return new Volume(quantity.baseValue(Dimension.VOLUME));
    }

    /**
     * Reads what a person wrote, such as {@code 30 L}.
     *
     * @param text the text
     * @return the amount
     * @throws QuantityFormatException if the text is not a volume
     * @throws IllegalArgumentException if the amount is out of range
     */
    public static Volume parse(String text) {
        return of(Quantity.parse(text, Dimension.VOLUME));
    }

    /**
     * Makes one from a bare number.
     *
     * @param litres the amount in litres
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static Volume ofLitres(double litres) {
        return new Volume(Unit.LITRE.toBase(litres));
    }

    /**
     * Makes one from a bare number.
     *
     * @param cubicCentimetres the amount in cubic centimetres
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static Volume ofCubicCentimetres(double cubicCentimetres) {
        return new Volume(Unit.CUBIC_CM.toBase(cubicCentimetres));
    }

    /**
     * Makes one from a bare number.
     *
     * @param cubicInches the amount in cubic inches
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static Volume ofCubicInches(double cubicInches) {
        return new Volume(Unit.CUBIC_INCH.toBase(cubicInches));
    }

    /** Returns the amount in litres. */
    public double inLitres() {
        return Unit.LITRE.fromBase(cubicMetres);
    }

    /** Returns the amount in cubic centimetres. */
    public double inCubicCentimetres() {
        return Unit.CUBIC_CM.fromBase(cubicMetres);
    }

    /** Returns the amount in cubic inches. */
    public double inCubicInches() {
        return Unit.CUBIC_INCH.fromBase(cubicMetres);
    }

    @Override
    public int compareTo(Volume other) {
        return Double.compare(cubicMetres, other.cubicMetres);
    }

    /** Prints the amount, such as {@code 30 L}. */
    @Override
    public String toString() {
        return Quantities.print(inLitres(), Unit.LITRE);
    }
}
