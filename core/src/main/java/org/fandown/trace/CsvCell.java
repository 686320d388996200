package org.fandown.trace;

/** Reads one cell of a table without making objects. */
final class CsvCell {
    /** Digits beyond these tell nothing that a double can hold. */
    private static final int MOST_DIGITS = 17;

    /** No word is longer. */
    private static final int LONGEST_TEXT = 80;

    private static final double[] TENS = tens();
    private static final String[] YES = {"true", "yes", "on"};
    private static final String[] NO = {"false", "no", "off"};

    private byte[] bytes = new byte[0];
    private int at;
    private int end;

    /** Sets the cell, without white space and quotes around it. */
    void set(byte[] buffer, int from, int to) {
        bytes = buffer;
        at = from;
        end = to;
        while (at < end && isAround(bytes[at])) {
            at++;
        }
        while (end > at && isAround(bytes[end - 1])) {
            end--;
        }
    }

    private static boolean isAround(byte b) {
        return b == ' ' || b == '\t' || b == '"';
    }

    boolean isEmpty() {
        return at == end;
    }

    /** Returns the cell as text; what is not ASCII becomes a question mark. */
    String text() {
        StringBuilder text = new StringBuilder();
        for (int i = at; i < end && text.length() < LONGEST_TEXT; i++) {
            text.append(bytes[i] >= ' ' ? (char) bytes[i] : '?');
        }
        return text.toString();
    }

    /**
     * Reads a decimal number.
     *
     * @param comma whether a comma may stand for the point
     * @return the number, NaN if this is none
     */
    double number(boolean comma) {
        int i = at;
        boolean minus = i < end && bytes[i] == '-';
        if (minus || (i < end && bytes[i] == '+')) {
            i++;
        }
        long whole = 0;
        int digits = 0;
        int seen = 0;
        int decimals = 0;
        boolean point = false;
        for (; i < end; i++) {
            byte b = bytes[i];
            if (!point && (b == '.' || (comma && b == ','))) {
                point = true;
            } else if (!Hex.isDigit(b)) {
                return Double.NaN;
            } else {
                seen++;
                if (digits < MOST_DIGITS) {
                    whole = 10 * whole + (b - '0');
                    digits += whole > 0 ? 1 : 0;
                    decimals += point ? 1 : 0;
                } else if (!point) {
                    return Double.NaN;
                }
            }
        }
        if (seen == 0 || decimals >= TENS.length) {
            return Double.NaN;
        }
        double value = whole / TENS[decimals];
        return minus ? -value : value;
    }

    /** Reads 1 or 0, or a word for them; NaN if this is none. */
    double truth() {
        for (int i = 0; i < YES.length; i++) {
            if (is(YES[i])) {
                return 1;
            }
            if (is(NO[i])) {
                return 0;
            }
        }
        double value = number(false);
        return value == 0 || value == 1 ? value : Double.NaN;
    }

    private boolean is(String word) {
        if (end - at != word.length()) {
            return false;
        }
        for (int i = 0; i < word.length(); i++) {
            if ((bytes[at + i] | 32) != word.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    /**
     * Reads a date and time of day as ISO 8601 has it, with or without an offset.
     *
     * @return seconds since 1970, NaN if this is none
     */
    double moment() {
        if (end - at < 19 || bytes[at + 4] != '-' || bytes[at + 7] != '-') {
            return Double.NaN;
        }
        boolean apart = bytes[at + 10] == 'T' || bytes[at + 10] == ' ';
        if (!apart || bytes[at + 13] != ':' || bytes[at + 16] != ':') {
            return Double.NaN;
        }
        long year = digits(at, 4);
        long month = digits(at + 5, 2);
        long day = digits(at + 8, 2);
        long hour = digits(at + 11, 2);
        long minute = digits(at + 14, 2);
        long second = digits(at + 17, 2);
        if (!StampReader.isPossible(year, month, day, hour, minute, second)) {
            return Double.NaN;
        }
        long whole = ((StampReader.days(year, month, day) * 24 + hour) * 60 + minute) * 60 + second;
        return whole + fractionAndOffset(at + 19);
    }

    private double fractionAndOffset(int from) {
        int i = from;
        double fraction = 0;
        if (i < end && (bytes[i] == '.' || bytes[i] == ',')) {
            i++;
            double unit = 0.1;
            for (; i < end && Hex.isDigit(bytes[i]); i++) {
                fraction += unit * (bytes[i] - '0');
                unit /= 10;
            }
        }
        if (i == end || (i == end - 1 && bytes[i] == 'Z')) {
            return fraction;
        }
        boolean colon = end - i == 6 && bytes[i + 3] == ':';
        boolean sign = bytes[i] == '+' || bytes[i] == '-';
        if (!sign || !(colon || end - i == 5)) {
            return Double.NaN;
        }
        long hours = digits(i + 1, 2);
        long minutes = digits(end - 2, 2);
        if (hours < 0 || minutes < 0) {
            return Double.NaN;
        }
        double offset = 3600.0 * hours + 60.0 * minutes;
        return fraction - (bytes[i] == '-' ? -offset : offset);
    }

    private long digits(int from, int count) {
        long value = 0;
        for (int i = from; i < from + count; i++) {
            if (!Hex.isDigit(bytes[i])) {
                return -1;
            }
            value = 10 * value + (bytes[i] - '0');
        }
        return value;
    }

    private static double[] tens() {
        double[] tens = new double[23];
        tens[0] = 1;
        for (int i = 1; i < tens.length; i++) {
            tens[i] = 10 * tens[i - 1];
        }
        return tens;
    }
}
