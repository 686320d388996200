package org.fandown.practice;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.fandown.units.Decimals;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * Writes an amount as a quantity from which the very same amount is read back, so that a run that
 * is stored replays to the same bits.
 */
final class ExactText {
    private static final int MOST_DECIMALS = 9;

    private ExactText() {}

    /** Writes an amount given in the base unit of its dimension. */
    static String ofBase(double base, Unit... units) {
        return of(
                base,
                List.of(units),
                unit -> unit.fromBase(base),
                read -> read.unit().toBase(read.value()));
    }

    /** Writes an amount given in one of the units. */
    static String of(double value, Unit own, Unit... units) {
        return of(
                value, List.of(units), unit -> own.convert(value, unit), read -> read.valueIn(own));
    }

    /** The shortest text that reads back the same; else the closest in the first unit. */
    private static String of(
            double amount,
            List<Unit> units,
            ToDoubleFunction<Unit> number,
            ToDoubleFunction<Quantity> reader) {
        for (int decimals = 0; decimals <= MOST_DECIMALS; decimals++) {
            for (Unit unit : units) {
                String text = text(number.applyAsDouble(unit), decimals, unit);
                if (reader.applyAsDouble(Quantity.parse(text)) == amount) {
                    return text;
                }
            }
        }
        return text(number.applyAsDouble(units.get(0)), MOST_DECIMALS, units.get(0));
    }

    private static String text(double number, int decimals, Unit unit) {
        return Decimals.formatShort(number, decimals) + " " + unit.symbol();
    }
}
