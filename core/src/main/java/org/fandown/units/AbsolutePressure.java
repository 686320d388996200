package org.fandown.units;

/**
 * A pressure counted from vacuum.
 *
 * <p>Not a {@link GaugePressure}: only {@link #toGauge} crosses over, and it asks for the air.
 * Holds the SI amount, so an amount read back in another unit may differ in the last digit; where
 * the entered text matters keep the {@link Quantity}.
 *
 * <p><i>Valid for:</i> 0 to 100 MPa. Immutable.
 *
 * @param pascals the amount in pascals above vacuum
 */
public record AbsolutePressure(double pascals) implements Comparable<AbsolutePressure> {
    /** The standard atmosphere: 101 325 Pa exactly, by definition. */
    public static final AbsolutePressure STANDARD_ATMOSPHERE = new AbsolutePressure(101_325);

    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the amount is not finite or out of range
     */
    public AbsolutePressure {
        pascals = Ranges.require("An absolute pressure", pascals, 0, 1e8, "0 to 100 MPa");
    }

    /**
     * Makes one from a quantity.
     *
     * @param quantity a quantity that is an absolute pressure
     * @return the amount
     * @throws IllegalArgumentException if the dimension differs or the amount is out of range
     */
    public static AbsolutePressure of(Quantity quantity) {
        return new AbsolutePressure(quantity.baseValue(Dimension.ABSOLUTE_PRESSURE));
    }

    /**
     * Reads what a person wrote, such as {@code 14.7 psi abs}.
     *
     * @param text the text
     * @return the amount
     * @throws QuantityFormatException if the text is not an absolute pressure
     * @throws IllegalArgumentException if the amount is out of range
     */
    public static AbsolutePressure parse(String text) {
        return of(Quantity.parse(text, Dimension.ABSOLUTE_PRESSURE));
    }

    /**
     * Makes one from a bare number.
     *
     * @param psi the amount in pounds-force per square inch
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static AbsolutePressure ofPsi(double psi) {
        return new AbsolutePressure(Unit.PSI_ABS.toBase(psi));
    }

    /**
     * Makes one from a bare number.
     *
     * @param kilopascals the amount in kilopascals
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static AbsolutePressure ofKilopascals(double kilopascals) {
        return new AbsolutePressure(Unit.KPA_ABS.toBase(kilopascals));
    }

    /**
     * Makes one from a bare number.
     *
     * @param bar the amount in bar
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static AbsolutePressure ofBar(double bar) {
        return new AbsolutePressure(Unit.BAR_ABS.toBase(bar));
    }

    /** Returns the amount in pounds-force per square inch. */
    public double inPsi() {
        return Unit.PSI_ABS.fromBase(pascals);
    }

    /** Returns the amount in kilopascals. */
    public double inKilopascals() {
        return Unit.KPA_ABS.fromBase(pascals);
    }

    /** Returns the amount in bar. */
    public double inBar() {
        return Unit.BAR_ABS.fromBase(pascals);
    }

    /**
     * Returns what a gauge would show, given the pressure of the surrounding air.
     *
     * @param ambient the pressure of the surrounding air
     * @return this pressure less that of the air
     * @throws IllegalArgumentException if that is out of the range of a gauge pressure
     */
    public GaugePressure toGauge(AbsolutePressure ambient) {
        return new GaugePressure(pascals - ambient.pascals());
    }

    @Override
    public int compareTo(AbsolutePressure other) {
        return Double.compare(pascals, other.pascals);
    }

    /** Prints the amount, such as {@code 101.3 kPa abs}. */
    @Override
    public String toString() {
        return Quantities.print(inKilopascals(), Unit.KPA_ABS);
    }
}
