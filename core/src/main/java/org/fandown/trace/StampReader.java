package org.fandown.trace;

/** Reads the time in brackets at the start of a line. */
final class StampReader {
    private static final long SECOND = 1_000_000_000L;

    /** More seconds than this do not fit in nanoseconds. */
    private static final long MOST_SECONDS = 9_000_000_000L;

    private static final int MOST_DECIMALS = 9;
    private static final int FAIL = -1;

    private byte[] bytes = new byte[0];
    private int at;
    private int end;
    private long nanos;

    /** The time read last, ns. */
    long nanos() {
        return nanos;
    }

    /**
     * Reads a time.
     *
     * @param buffer where it is
     * @param from place behind the opening bracket
     * @param to place behind the line
     * @return place behind the closing bracket, -1 if this is no time
     */
    int read(byte[] buffer, int from, int to) {
        bytes = buffer;
        at = from;
        end = to;
        long first = number();
        if (first < 0) {
            return FAIL;
        }
        long seconds = first;
        if (at < end && bytes[at] == '-') {
            seconds = date(first);
        }
        if (seconds < 0) {
            return FAIL;
        }
        long fraction = fraction();
        if (fraction < 0 || at >= end || bytes[at] != ')') {
            return FAIL;
        }
        nanos = seconds * SECOND + fraction;
        return at + 1;
    }

    /** Reads the rest of a date and time of day; the year is read. Gives seconds since 1970. */
    private long date(long year) {
        long month = after('-');
        long day = after('-');
        long hour = after(' ');
        long minute = after(':');
        long second = after(':');
        boolean possible = isPossible(year, month, day, hour, minute, second);
        return possible ? ((days(year, month, day) * 24 + hour) * 60 + minute) * 60 + second : FAIL;
    }

    /** Whether such a date and time of day may be; -1 for what could not be read. */
    static boolean isPossible(
            long year, long month, long day, long hour, long minute, long second) {
        return year >= 1970
                && year <= 2200
                && month >= 1
                && month <= 12
                && day >= 1
                && day <= 31
                && hour >= 0
                && hour <= 23
                && minute >= 0
                && minute <= 59
                && second >= 0
                && second <= 60;
    }

    /** Days since 1970, counting years from March so that the leap day is the last. */
    static long days(long year, long month, long day) {
        long y = month <= 2 ? year - 1 : year;
        long sinceMarch = month <= 2 ? month + 9 : month - 3;
        long inYear = (153 * sinceMarch + 2) / 5 + day - 1;
        return 365 * y + y / 4 - y / 100 + y / 400 + inYear - 719_468;
    }

    private long after(char mark) {
        if (at >= end || bytes[at] != mark) {
            return FAIL;
        }
        at++;
        return number();
    }

    private long number() {
        int start = at;
        long value = 0;
        while (at < end && Hex.isDigit(bytes[at])) {
            value = 10 * value + (bytes[at] - '0');
            if (value > MOST_SECONDS) {
                return FAIL;
            }
            at++;
        }
        return at > start ? value : FAIL;
    }

    private long fraction() {
        if (at >= end || bytes[at] != '.') {
            return FAIL;
        }
        at++;
        int start = at;
        long value = 0;
        while (at < end && Hex.isDigit(bytes[at]) && at - start < MOST_DECIMALS) {
            value = 10 * value + (bytes[at] - '0');
            at++;
        }
        if (at == start) {
            return FAIL;
        }
        for (int i = at - start; i < MOST_DECIMALS; i++) {
            value *= 10;
        }
        return value;
    }
}
