package org.fandown.judgement;

import org.fandown.units.Decimals;
import org.fandown.units.Quantities;
import org.fandown.units.Unit;

/**
 * A measured value and how far it may be off.
 *
 * @param value the value, in the unit
 * @param unit the unit it was entered in
 * @param uncertainty half the width of the interval that holds the true value in about 95 of 100
 *     cases, in the unit
 */
public record Measurement(double value, Unit unit, double uncertainty) {
    private static final int DECIMALS = 2;

    /** Lower end of the interval. */
    public double low() {
        return value - uncertainty;
    }

    /** Upper end of the interval. */
    public double high() {
        return value + uncertainty;
    }

    /** In words: {@code 2 psi}, or with its doubt {@code 2 psi +/- 0.8 psi}. */
    @Override
    public String toString() {
        String text = Quantities.print(value, unit);
        return uncertainty > 0 ? text + " \u00b1 " + doubt() : text;
    }

    private String doubt() {
        return Decimals.formatShort(uncertainty, DECIMALS) + " " + unit.symbol();
    }
}
