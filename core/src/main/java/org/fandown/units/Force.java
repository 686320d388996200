package org.fandown.units;

/**
 * A force along a line that the context gives.
 *
 * <p>May be negative, for the other way along the line. Holds the SI amount, so an amount read back
 * in another unit may differ in the last digit; where the entered text matters keep the {@link
 * Quantity}.
 *
 * <p><i>Valid for:</i> up to 1e9 N either way. Immutable.
 *
 * @param newtons the amount in newtons
 */
public record Force(double newtons) implements Comparable<Force> {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the amount is not finite or out of range
     */
    public Force {
        newtons = Ranges.require("A force", newtons, -1e9, 1e9, "-1e9 N to 1e9 N");
    }

    /**
     * Makes one from a quantity.
     *
     * @param quantity a quantity that is a force
     * @return the amount
     * @throws IllegalArgumentException if the dimension differs or the amount is out of range
     */
    public static Force of(Quantity quantity) {
        return new Force(quantity.baseValue(Dimension.FORCE));
    }

    /**
     * Reads what a person wrote, such as {@code 1750 lbf}.
     *
     * @param text the text
     * @return the amount
     * @throws QuantityFormatException if the text is not a force
     * @throws IllegalArgumentException if the amount is out of range
     */
    public static Force parse(String text) {
        return of(Quantity.parse(text, Dimension.FORCE));
    }

    /**
     * Makes one from a bare number.
     *
     * @param newtons the amount in newtons
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static Force ofNewtons(double newtons) {
        return new Force(Unit.NEWTON.toBase(newtons));
    }

    /**
     * Makes one from a bare number.
     *
     * @param kilonewtons the amount in kilonewtons
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static Force ofKilonewtons(double kilonewtons) {
        return new Force(Unit.KILONEWTON.toBase(kilonewtons));
    }

    /**
     * Makes one from a bare number.
     *
     * @param poundsForce the amount in pounds-force
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static Force ofPoundsForce(double poundsForce) {
        return new Force(Unit.LBF.toBase(poundsForce));
    }

    /** Returns the amount in kilonewtons. */
    public double inKilonewtons() {
        return Unit.KILONEWTON.fromBase(newtons);
    }

    /** Returns the amount in pounds-force. */
    public double inPoundsForce() {
        return Unit.LBF.fromBase(newtons);
    }

    @Override
    public int compareTo(Force other) {
        return Double.compare(newtons, other.newtons);
    }

    /** Prints the amount, such as {@code 7784 N}. */
    @Override
    public String toString() {
        return Quantities.print(newtons, Unit.NEWTON);
    }
}
