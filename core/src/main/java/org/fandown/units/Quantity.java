package org.fandown.units;

import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;

/**
 * A number with the unit in which it was entered, kept as entered.
 *
 * <p>Books print pairs such as {@code 3 psi} with {@code 20 kPa} or with {@code 21 kPa}, so a
 * quantity is never quietly converted: it is compared in the unit in which it was written. {@link
 * #toString} gives back exactly the text that was read. For physics, where only the amount counts,
 * take a typed value such as {@link GaugePressure} or {@link Length}.
 *
 * <p>Not a record, because number, unit and text must agree: only {@link #parse} and {@link #of}
 * make one. Two quantities are equal if number and unit are; the text does not count, so {@code 3/4
 * in} equals {@code 0.75 in}, while {@code 10 mm} does not equal {@code 1 cm}.
 *
 * <p><i>Valid for:</i> finite numbers of size up to 1e15, and up to 1e9 where read from text.
 * Immutable.
 */
public final class Quantity {
    private static final int DECIMALS_OF_COMPUTED = 6;
    private static final int MOST_DECIMALS = 15;

    private final double value;
    private final Unit unit;
    private final String written;

    private Quantity(double value, Unit unit, String written) {
        if (!(Math.abs(value) <= Decimals.MAX)) {
            throw new IllegalArgumentException(
                    "A quantity must be a finite number of size up to 1e15.");
        }
        this.value = value == 0 ? 0 : value;
        this.unit = Objects.requireNonNull(unit, "unit");
        this.written = Objects.requireNonNull(written, "written");
    }

    /**
     * Makes a quantity of a computed number. Its text has at most six decimals; the number itself
     * is kept whole.
     *
     * @param value a finite number of size up to 1e15, in the unit
     * @param unit the unit
     * @return the quantity
     * @throws IllegalArgumentException if the number is not finite or too large
     */
    public static Quantity of(double value, Unit unit) {
        Objects.requireNonNull(unit, "unit");
        String number = Decimals.formatShort(value, DECIMALS_OF_COMPUTED);
        return new Quantity(value, unit, number + " " + unit.symbol());
    }

    /**
     * Reads what a person wrote, of any dimension, such as {@code 92 psi}, {@code 1 3/8 in}, {@code
     * 1 min 14 s} or {@code 1 000 kPa}. Minutes with seconds are held in seconds, feet with inches
     * in inches.
     *
     * @param text the text; space around it is dropped
     * @return the quantity
     * @throws QuantityFormatException if the text is not a number with a known unit
     */
    public static Quantity parse(String text) {
        return parse(text, EnumSet.allOf(Dimension.class));
    }

    /**
     * Reads what a person wrote, of one dimension.
     *
     * @param text the text; space around it is dropped
     * @param allowed the dimension needed
     * @return the quantity
     * @throws QuantityFormatException if the text is not a quantity of that dimension
     */
    public static Quantity parse(String text, Dimension allowed) {
        return parse(text, EnumSet.of(allowed));
    }

    /**
     * Reads what a person wrote, of one of several dimensions.
     *
     * @param text the text; space around it is dropped
     * @param allowed the dimensions that will do, at least one
     * @return the quantity
     * @throws QuantityFormatException if the text is not a quantity of such a dimension
     * @throws IllegalArgumentException if no dimension is allowed
     */
    public static Quantity parse(String text, Set<Dimension> allowed) {
        String written = text.strip();
        QuantityParser.Amount amount = new QuantityParser(written, allowed).parse();
        return new Quantity(amount.value(), amount.unit(), written);
    }

    /** Returns the number, in {@link #unit}. */
    public double value() {
        return value;
    }

    /** Returns the unit as entered. */
    public Unit unit() {
        return unit;
    }

    /** Returns the text as entered, or as made by {@link #of}. */
    public String written() {
        return written;
    }

    /**
     * Returns a text that {@link #parse} reads back to an equal quantity: the text as entered, or
     * of a computed number as many decimals as it needs.
     *
     * @return the text; where 15 decimals are not enough, the closest with 15
     */
    public String exactText() {
        String text = written;
        for (int decimals = DECIMALS_OF_COMPUTED + 1; decimals <= MOST_DECIMALS; decimals++) {
            if (parse(text).equals(this)) {
                return text;
            }
            text = Decimals.formatShort(value, decimals) + " " + unit.symbol();
        }
        return text;
    }

    /** Returns what is measured. */
    public Dimension dimension() {
        return unit.dimension();
    }

    /**
     * Returns the number in another unit.
     *
     * @param target a unit of the same dimension
     * @return the number in that unit
     * @throws IllegalArgumentException if the dimension differs
     */
    public double valueIn(Unit target) {
        return unit.convert(value, target);
    }

    /** Returns the amount in the base unit of a dimension, which must be this quantity's own. */
    double baseValue(Dimension wanted) {
        if (unit.dimension() != wanted) {
            throw new IllegalArgumentException(
                    "'"
                            + written
                            + "' is "
                            + dimension().phrase()
                            + ", not "
                            + wanted.phrase()
                            + ".");
        }
        return unit.toBase(value);
    }

    /**
     * Returns the same amount in another unit.
     *
     * @param target a unit of the same dimension
     * @return this quantity itself if that is its unit already
     * @throws IllegalArgumentException if the dimension differs
     */
    public Quantity in(Unit target) {
        return target == unit ? this : of(valueIn(target), target);
    }

    /**
     * Prints the amount in a unit, rounded as people write it; see {@link Quantities#print}.
     *
     * @param target a unit of the same dimension
     * @return for example {@code 813.6 kPa}
     * @throws IllegalArgumentException if the dimension differs
     */
    public String print(Unit target) {
        return Quantities.print(valueIn(target), target);
    }

    /** Two quantities are equal if number and unit are. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Quantity that && value == that.value && unit == that.unit;
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(value) + unit.symbol().hashCode();
    }

    /** Returns the text exactly as entered. */
    @Override
    public String toString() {
        return written;
    }
}
