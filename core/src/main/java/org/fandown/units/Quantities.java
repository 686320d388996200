package org.fandown.units;

import java.util.Objects;

/** Prints amounts the way people write them. */
public final class Quantities {
    private static final int TAPE = 16;
    private static final int SECONDS_PER_MINUTE = 60;

    private Quantities() {}

    /**
     * Prints a number with its unit: at most {@link Unit#decimals} decimals and no trailing zeros;
     * inches as a mixed fraction when they are a whole number of sixteenths; minutes with seconds.
     *
     * @param value a finite number of size up to 1e12, in the unit
     * @param unit the unit
     * @return for example {@code 118 psi}, {@code 813.6 kPa}, {@code 1 3/8 in}, {@code 1 min 14 s}
     * @throws IllegalArgumentException if the number is not finite or too large
     */
    public static String print(double value, Unit unit) {
        Objects.requireNonNull(unit, "unit");
        if (unit == Unit.INCH && Fractions.isMultiple(value, TAPE)) {
            return Fractions.mixed(value, TAPE) + " in";
        }
        if (unit == Unit.MINUTE) {
            return minutes(value);
        }
        return Decimals.formatShort(value, unit.decimals()) + " " + unit.symbol();
    }

    private static String minutes(double value) {
        int decimals = Unit.SECOND.decimals();
        double total = Num.roundTo(Math.abs(value) * SECONDS_PER_MINUTE, decimals);
        double whole = Math.floor(total / SECONDS_PER_MINUTE);
        double seconds = total - whole * SECONDS_PER_MINUTE;
        String sign = value < 0 && total > 0 ? "-" : "";
        String secondsText = Decimals.formatShort(seconds, decimals) + " s";
        if (whole == 0 && seconds != 0) {
            return sign + secondsText;
        }
        String minutesText = sign + Decimals.format(whole, 0) + " min";
        return secondsText.equals("0 s") ? minutesText : minutesText + " " + secondsText;
    }
}
