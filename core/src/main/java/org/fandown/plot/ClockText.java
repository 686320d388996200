package org.fandown.plot;

import org.fandown.units.Decimals;
import org.fandown.units.Num;

/** Prints times as a stopwatch does. */
public final class ClockText {
    private static final int MINUTE = 60;
    private static final int TEN = 10;

    private ClockText() {}

    /**
     * Prints a time as minutes and seconds.
     *
     * @param seconds 0 or more
     * @return for example {@code 1:04.2}
     */
    public static String tenths(double seconds) {
        return of(Num.roundTo(seconds, 1), 1);
    }

    /**
     * Prints a time as minutes and whole seconds.
     *
     * @param seconds 0 or more
     * @return for example {@code 1:04}
     */
    public static String whole(double seconds) {
        return of(Num.round(seconds), 0);
    }

    private static String of(double rounded, int decimals) {
        double minutes = Math.floor(rounded / MINUTE);
        double rest = rounded - minutes * MINUTE;
        return Decimals.format(minutes, 0)
                + (rest < TEN ? ":0" : ":")
                + Decimals.format(rest, decimals);
    }
}
