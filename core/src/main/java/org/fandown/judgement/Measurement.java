package org.fandown.judgement;

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

    /** Lower end of the interval. */
    public double low() {
        return value - uncertainty;
    }

    /** Upper end of the interval. */
    public double high() {
        return value + uncertainty;
    }

    /** In words: {@code 2 psi (1.2 psi to 2.8 psi)}. */
    @Override
    public String toString() {
        String text = Quantities.print(value, unit);
        return uncertainty > 0
                ? text + " (between " + round(low()) + " and " + round(high()) + ")"
                : text;
    }

    private String round(double edge) {
        return org.fandown.units.Decimals.formatShort(edge, 2) + " " + unit.symbol();
    }
}
