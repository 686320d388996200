package org.fandown.vehicle;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The day a unit was built, and how exactly it is known.
 *
 * @param day the day; the first of the month where only the month is known
 * @param precision whether the day or only the month was given
 */
public record BuildDate(LocalDate day, Precision precision) {

    /** The earliest year. */
    public static final int EARLIEST = 1900;

    private static final int LATEST = 9999;
    private static final int DASH = 4;
    static final int MONTH_LENGTH = 7;

    /** How exactly the date is known. */
    public enum Precision {
        /** The day is known. */
        DAY,
        /** Only the month is known; the first of the month stands for it. */
        MONTH
    }

    /**
     * Refuses a year before 1900 or after 9999, and a month given by another day than its first.
     */
    public BuildDate {
        if (day.getYear() < EARLIEST || day.getYear() > LATEST) {
            throw new ImpossibleVehicleException(
                    "built",
                    "year " + day.getYear() + " is not possible",
                    EARLIEST + " to " + LATEST,
                    "write the date as 2018-05-14, or as 2018-05 if only the month is known");
        }
        if (precision == Precision.MONTH && day.getDayOfMonth() != 1) {
            throw new IllegalArgumentException(
                    "A month is written by its first day, not by " + day + ".");
        }
    }

    /** Returns a date known to the day. */
    public static BuildDate of(LocalDate day) {
        return new BuildDate(day, Precision.DAY);
    }

    /**
     * Returns a date known to the month.
     *
     * @param year the year, 1900 to 9999
     * @param month the month, 1 to 12
     */
    public static BuildDate ofMonth(int year, int month) {
        if (month < 1 || month > 12) {
            throw new IllegalArgumentException("There is no month " + month + ".");
        }
        return new BuildDate(LocalDate.of(year, month, 1), Precision.MONTH);
    }

    /**
     * Reads {@code 2018-05}.
     *
     * @return the month, empty if the text is not a year from 1900 and a month
     */
    public static Optional<BuildDate> parseMonth(String text) {
        if (text.length() != MONTH_LENGTH || text.charAt(DASH) != '-') {
            return Optional.empty();
        }
        int digits = 0;
        for (int i = 0; i < MONTH_LENGTH; i++) {
            int digit = text.charAt(i) - '0';
            if (i != DASH && (digit < 0 || digit > 9)) {
                return Optional.empty();
            }
            digits = i == DASH ? digits : digits * 10 + digit;
        }
        int year = digits / 100;
        int month = digits - year * 100;
        boolean real = year >= EARLIEST && month >= 1 && month <= 12;
        return real ? Optional.of(ofMonth(year, month)) : Optional.empty();
    }

    /** Returns the date as a vehicle file has it: {@code 2018-05-14} or {@code 2018-05}. */
    @Override
    public String toString() {
        String text = day.toString();
        return precision == Precision.DAY ? text : text.substring(0, MONTH_LENGTH);
    }
}
