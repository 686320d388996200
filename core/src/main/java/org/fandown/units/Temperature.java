package org.fandown.units;

/**
 * A temperature.
 *
 * <p>Not a difference of temperatures: a difference is a bare number. Holds the SI amount, so an
 * amount read back in another unit may differ in the last digit; where the entered text matters
 * keep the {@link Quantity}.
 *
 * <p><i>Valid for:</i> 0 to 10 000 K. Immutable.
 *
 * @param kelvins the amount in kelvins
 */
public record Temperature(double kelvins) implements Comparable<Temperature> {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the amount is not finite or out of range
     */
    public Temperature {
        kelvins = Ranges.require("A temperature", kelvins, 0, 1e4, "0 to 10 000 K");
    }

    /**
     * Makes one from a quantity.
     *
     * @param quantity a quantity that is a temperature
     * @return the amount
     * @throws IllegalArgumentException if the dimension differs or the amount is out of range
     */
    public static Temperature of(Quantity quantity) {
        return new Temperature(quantity.baseValue(Dimension.TEMPERATURE));
    }

    /**
     * Reads what a person wrote, such as {@code -20 C}.
     *
     * @param text the text
     * @return the amount
     * @throws QuantityFormatException if the text is not a temperature
     * @throws IllegalArgumentException if the amount is out of range
     */
    public static Temperature parse(String text) {
        return of(Quantity.parse(text, Dimension.TEMPERATURE));
    }

    /**
     * Makes one from a bare number.
     *
     * @param kelvins the amount in kelvins
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static Temperature ofKelvins(double kelvins) {
        return new Temperature(Unit.KELVIN.toBase(kelvins));
    }

    /**
     * Makes one from a bare number.
     *
     * @param celsius the amount in degrees Celsius
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static Temperature ofCelsius(double celsius) {
        return new Temperature(Unit.CELSIUS.toBase(celsius));
    }

    /**
     * Makes one from a bare number.
     *
     * @param fahrenheit the amount in degrees Fahrenheit
     * @return the amount
     * @throws IllegalArgumentException if it is out of range
     */
    public static Temperature ofFahrenheit(double fahrenheit) {
        return new Temperature(Unit.FAHRENHEIT.toBase(fahrenheit));
    }

    /** Returns the amount in degrees Celsius. */
    public double inCelsius() {
        return Unit.CELSIUS.fromBase(kelvins);
    }

    /** Returns the amount in degrees Fahrenheit. */
    public double inFahrenheit() {
        return Unit.FAHRENHEIT.fromBase(kelvins);
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(kelvins, other.kelvins);
    }

    /** Prints the amount, such as {@code 20 C}. */
    @Override
    public String toString() {
        return Quantities.print(inCelsius(), Unit.CELSIUS);
    }
}
