package org.fandown.units;

/**
 * A pressure as a gauge shows it: above the surrounding air.
 *
 * <p>Not an {@link AbsolutePressure}: only {@link #toAbsolute} crosses over, and it asks for the
 * air. Holds the SI amount, so an amount read back in another unit may differ in the last digit;
 * where the entered text matters keep the {@link Quantity}.
 *
 * <p><i>Valid for:</i> -14.7 psi to 100 MPa. Immutable.
 *
 * @param pascals the amount in pascals above the surrounding air
 */
public record GaugePressure(double pascals) implements Comparable<GaugePressure> {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the amount is not finite or out of range
     */
    public GaugePressure {
        pascals =
                Ranges.require(
                        "A gauge pressure",
                        pascals,
                        Unit.PSI.toBase(-14.7),
                        1e8,
                        "-14.7 psi to 100 MPa");
    }

    /**
     * Makes one from a quantity.
     *
     * @param quantity a quantity that is a gauge pressure
     * @return the amount
     * @throws IllegalArgumentException if the dimension differs or the amount is out of range
     */
    public static GaugePressure of(Quantity quantity) {
        return new GaugePressure(quantity.baseValue(Dimension.GAUGE_PRESSURE));
    }

    /**
     * Reads what a person wrote, such as {@code 92 psi}.
     *
     * @param text the text
     * @return the amount
     * @throws QuantityFormatException if the text is not a gauge pressure
     * @throws IllegalArgumentException if the amount is out of range
     */
    public static GaugePressure parse(String text) {
        return of(Quantity.parse(text, Dimension.GAUGE_PRESSURE));
    }

    /**
     * Makes one from a bare number.
     *
     * @param psi the amount in pounds-force per square inch
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static GaugePressure ofPsi(double psi) {
        return new GaugePressure(Unit.PSI.toBase(psi));
    }

    /**
     * Makes one from a bare number.
     *
     * @param kilopascals the amount in kilopascals
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static GaugePressure ofKilopascals(double kilopascals) {
        return new GaugePressure(Unit.KPA.toBase(kilopascals));
    }

    /**
     * Makes one from a bare number.
     *
     * @param bar the amount in bar
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static GaugePressure ofBar(double bar) {
        return new GaugePressure(Unit.BAR.toBase(bar));
    }

    /** Returns the amount in pounds-force per square inch. */
    public double inPsi() {
        return Unit.PSI.fromBase(pascals);
    }

    /** Returns the amount in kilopascals. */
    public double inKilopascals() {
        return Unit.KPA.fromBase(pascals);
    }

    /** Returns the amount in bar. */
    public double inBar() {
        return Unit.BAR.fromBase(pascals);
    }

    /**
     * Returns the pressure above vacuum, given the pressure of the surrounding air.
     *
     * @param ambient the pressure of the surrounding air
     * @return this pressure plus that of the air
     * @throws IllegalArgumentException if the sum would be below vacuum
     */
    public AbsolutePressure toAbsolute(AbsolutePressure ambient) {
        return new AbsolutePressure(pascals + ambient.pascals());
    }

    @Override
    public int compareTo(GaugePressure other) {
        return Double.compare(pascals, other.pascals);
    }

    /** Prints the amount, such as {@code 634 kPa}. */
    @Override
    public String toString() {
        return Quantities.print(inKilopascals(), Unit.KPA);
    }
}
