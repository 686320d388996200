package org.fandown.document;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;

/**
 * Reads dates and moments by a grammar of our own, so that no library's message reaches a person.
 * What is wrong is raised as an {@link IllegalArgumentException} whose message is a clause.
 */
final class DateText {
    static final String DATE = "a date such as 2026-11-25, in the years 1900 to 2999";
    static final String MOMENT =
            "a date, a time of day and the distance from UTC, such as 2026-11-25T08:15:00-08:00";

    private static final int MIN_YEAR = 1900;
    private static final int MAX_YEAR = 2999;
    private static final int DATE_LENGTH = 10;
    private static final int MAX_OFFSET_HOURS = 14;
    private static final int NANO_DIGITS = 9;

    private final String text;
    private int at;

    private DateText(String text) {
        this.text = text;
    }

    static LocalDate date(String text) {
        DateText reader = new DateText(text);
        if (text.length() != DATE_LENGTH) {
            throw new IllegalArgumentException("it is not a date with year, month and day");
        }
        return reader.date();
    }

    static OffsetDateTime moment(String text) {
        DateText reader = new DateText(text);
        LocalDate date = reader.date();
        if (!reader.accept('T') && !reader.accept(' ')) {
            throw new IllegalArgumentException("the time of day is missing");
        }
        int hour = reader.number(2, 23, "the hour");
        reader.need(':', "the minutes are missing");
        int minute = reader.number(2, 59, "the minutes");
        int second = reader.accept(':') ? reader.number(2, 59, "the seconds") : 0;
        int nano = reader.accept('.') ? reader.nanos() : 0;
        ZoneOffset offset = reader.offset();
        return OffsetDateTime.of(
                date.getYear(),
                date.getMonthValue(),
                date.getDayOfMonth(),
                hour,
                minute,
                second,
                nano,
                offset);
    }

    private LocalDate date() {
        int year = number(4, MAX_YEAR, "the year");
        if (year < MIN_YEAR) {
            throw new IllegalArgumentException("the year must be 1900 to 2999");
        }
        need('-', "the month is missing");
        int month = number(2, 12, "the month");
        need('-', "the day is missing");
        int day = number(2, 31, "the day");
        if (month == 0 || day == 0 || day > daysIn(year, month)) {
            throw new IllegalArgumentException("there is no such day in the calendar");
        }
        return LocalDate.of(year, month, day);
    }

    private ZoneOffset offset() {
        accept(' ');
        if (accept('Z')) {
            requireEnd();
            return ZoneOffset.UTC;
        }
        boolean west = accept('-');
        if (!west && !accept('+')) {
            throw new IllegalArgumentException("the distance from UTC is missing or not clear");
        }
        int hours = number(2, MAX_OFFSET_HOURS, "the distance from UTC");
        need(':', "the minutes of the distance from UTC are missing");
        int minutes = number(2, 59, "the minutes of the distance from UTC");
        requireEnd();
        int total = hours * 60 + minutes;
        return ZoneOffset.ofTotalSeconds((west ? -total : total) * 60);
    }

    private int nanos() {
        int end = Texts.digits(text, at);
        int count = end - at;
        if (count == 0 || count > NANO_DIGITS) {
            throw new IllegalArgumentException("the fraction of a second needs 1 to 9 digits");
        }
        String digits = text.substring(at, end) + "0".repeat(NANO_DIGITS - count);
        at = end;
        return Integer.parseInt(digits);
    }

    private int number(int digits, int max, String what) {
        int end = Texts.digits(text, at);
        if (end - at != digits) {
            throw new IllegalArgumentException(what + " must have " + digits + " digits");
        }
        int number = Integer.parseInt(text.substring(at, end));
        if (number > max) {
            throw new IllegalArgumentException(what + " must be at most " + max);
        }
        at = end;
        return number;
    }

    private boolean accept(char wanted) {
        if (at >= text.length() || text.charAt(at) != wanted) {
            return false;
        }
        at++;
        return true;
    }

    private void need(char wanted, String problem) {
        if (!accept(wanted)) {
            throw new IllegalArgumentException(problem);
        }
    }

    private void requireEnd() {
        if (at != text.length()) {
            throw new IllegalArgumentException("something follows the distance from UTC");
        }
    }

    private static int daysIn(int year, int month) {
        boolean leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
        return switch (month) {
            case 2 -> leap ? 29 : 28;
            case 4, 6, 9, 11 -> 30;
            default -> 31;
        };
    }
}
