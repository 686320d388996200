package org.fandown.practice;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.fandown.units.Decimals;
import org.fandown.units.Num;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * Reads and writes the amounts of scenarios and scripts.
 *
 * <p>They are held to a fixed fineness (a microsecond, a thousandth of a pascal and the like), so
 * that what is written is read back to the last bit and a run that is stored replays the same.
 */
final class Amounts {
    private static final int MICRO = 6;
    private static final int MILLI = 3;
    private static final int NANO = 9;
    private static final int MOST_DECIMALS = 9;

    private Amounts() {}

    static double seconds(Quantity time) {
        return Num.roundTo(base(time), MICRO);
    }

    static double pascals(Quantity pressure) {
        return Num.roundTo(base(pressure), MILLI);
    }

    /** A share, 1 being the whole. */
    static double share(Quantity share) {
        return Num.roundTo(base(share), NANO);
    }

    static double kelvins(Quantity temperature) {
        return Num.roundTo(base(temperature), MICRO);
    }

    static double size(Quantity size, Unit unit) {
        return Num.roundTo(size.valueIn(unit), NANO);
    }

    /** A part of the whole or a number without unit. */
    static double plain(double number) {
        return Num.roundTo(number, NANO);
    }

    private static double base(Quantity quantity) {
        return quantity.unit().toBase(quantity.value());
    }

    static String ofSeconds(double seconds) {
        List<Unit> units = List.of(Unit.SECOND, Unit.MINUTE, Unit.HOUR);
        return text(seconds, units, unit -> unit.fromBase(seconds), Amounts::seconds);
    }

    static String ofPascals(double pascals) {
        List<Unit> units = List.of(Unit.PSI, Unit.KPA, Unit.BAR);
        return text(pascals, units, unit -> unit.fromBase(pascals), Amounts::pascals);
    }

    static String ofShare(double share) {
        List<Unit> units = List.of(Unit.PERCENT);
        return text(share, units, unit -> unit.fromBase(share), Amounts::share);
    }

    static String ofKelvins(double kelvins) {
        List<Unit> units = List.of(Unit.CELSIUS, Unit.FAHRENHEIT, Unit.KELVIN);
        return text(kelvins, units, unit -> unit.fromBase(kelvins), Amounts::kelvins);
    }

    static String ofSize(double size, Unit own) {
        return text(size, List.of(own), unit -> size, read -> size(read, own));
    }

    /** The shortest text that reads back the same; else the closest in the first unit. */
    private static String text(
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
