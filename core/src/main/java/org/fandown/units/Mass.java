package org.fandown.units;

/**
 * A mass, such as the load on an axle.
 *
 * <p>Not a {@link Force}: {@code lb} is a mass, {@code lbf} a force. Never negative. Holds the SI
 * amount, so an amount read back in another unit may differ in the last digit; where the entered
 * text matters keep the {@link Quantity}.
 *
 * <p><i>Valid for:</i> 0 to 1e9 kg. Immutable.
 *
 * @param kilograms the amount in kilograms
 */
public record Mass(double kilograms) implements Comparable<Mass> {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the amount is not finite or out of range
     */
    public Mass {
        kilograms = Ranges.require("A mass", kilograms, 0, 1e9, "0 to 1e9 kg");
    }

    /**
     * Makes one from a quantity.
     *
     * @param quantity a quantity that is a mass
     * @return the amount
     * @throws IllegalArgumentException if the dimension differs or the amount is out of range
     */
    public static Mass of(Quantity quantity) {
        return new Mass(quantity.baseValue(Dimension.MASS));
    }

    /**
     * Reads what a person wrote, such as {@code 80000 lb}.
     *
     * @param text the text
     * @return the amount
     * @throws QuantityFormatException if the text is not a mass
     * @throws IllegalArgumentException if the amount is out of range
     */
    public static Mass parse(String text) {
        return of(Quantity.parse(text, Dimension.MASS));
    }

    /**
     * Makes one from a bare number.
     *
     * @param kilograms the amount in kilograms
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static Mass ofKilograms(double kilograms) {
        return new Mass(Unit.KILOGRAM.toBase(kilograms));
    }

    /**
     * Makes one from a bare number.
     *
     * @param pounds the amount in pounds
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static Mass ofPounds(double pounds) {
        return new Mass(Unit.POUND.toBase(pounds));
    }

    /**
     * Makes one from a bare number.
     *
     * @param tonnes the amount in tonnes
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static Mass ofTonnes(double tonnes) {
        return new Mass(Unit.TONNE.toBase(tonnes));
    }

    /** Returns the amount in pounds. */
    public double inPounds() {
        return Unit.POUND.fromBase(kilograms);
    }

    /** Returns the amount in tonnes. */
    public double inTonnes() {
        return Unit.TONNE.fromBase(kilograms);
    }

    @Override
    public int compareTo(Mass other) {
        return Double.compare(kilograms, other.kilograms);
    }

    /** Prints the amount, such as {@code 36287 kg}. */
    @Override
    public String toString() {
        return Quantities.print(kilograms, Unit.KILOGRAM);
    }
}
