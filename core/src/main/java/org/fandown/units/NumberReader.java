package org.fandown.units;

/** Reads the numbers of one text that was meant as a quantity, from a cursor on. */
final class NumberReader {
    private static final int MAX_DIGITS = 15;
    private static final int GROUP = 3;

    private final Refusals refusals;
    private final String text;
    private int at;
    private boolean plain;
    private boolean clock;
    private double clockSmall;

    NumberReader(Refusals refusals, String text) {
        this.refusals = refusals;
        this.text = text;
    }

    /** Takes a sign, if one is next, and says whether it was a minus. */
    boolean minus() {
        boolean minus = peek(0) == '-';
        if (minus || peek(0) == '+') {
            at++;
        }
        return minus;
    }

    /** Returns what follows the numbers read so far. */
    String rest() {
        return text.substring(at).strip();
    }

    /** Moves the cursor so that this many characters of the rest are behind it. */
    void skip(int count) {
        at = text.length() - rest().length() + count;
    }

    /** Says whether the last number was plain: neither a fraction nor a clock reading. */
    boolean isPlain() {
        return plain;
    }

    /** Says whether the last number was a clock reading, such as {@code 1:14}. */
    boolean isClock() {
        return clock;
    }

    /** Returns what stood after the colon of a clock reading. */
    double afterColon() {
        return clockSmall;
    }

    /** Reads the number at the cursor: plain, grouped, fraction, mixed or clock. */
    double number() {
        plain = false;
        clock = false;
        String whole = digits();
        char next = peek(0);
        if (whole.isEmpty() && next != '.') {
            throw refusals.noNumber();
        }
        if (next == '/') {
            return fraction(whole, false);
        }
        if (next == ':') {
            return clock(whole);
        }
        if ((next == ' ' || next == '-') && Decimals.isDigit(peek(1))) {
            return afterGap(whole, next);
        }
        plain = true;
        return decimal(whole);
    }

    /** Reads what follows digits and a space or hyphen: a fraction, or a group of three digits. */
    private double afterGap(String whole, char gap) {
        int start = at;
        at++;
        String second = digits();
        if (peek(0) == '/') {
            return whole(whole) + fraction(second, true);
        }
        if (gap == '-') {
            throw refusals.range();
        }
        at = start;
        StringBuilder grouped = new StringBuilder(whole);
        while (peek(0) == ' ' && Decimals.isDigit(peek(1))) {
            at++;
            String group = digits();
            if (whole.length() > GROUP || group.length() != GROUP) {
                throw refusals.because("two numbers stand where one is needed");
            }
            grouped.append(group);
        }
        plain = true;
        return decimal(grouped.toString());
    }

    private double decimal(String whole) {
        String number = whole.isEmpty() ? "0" : whole;
        if (peek(0) == '.' && Decimals.isDigit(peek(1))) {
            at++;
            number = number + "." + digits();
        }
        if (peek(0) == ',') {
            throw refusals.comma(text, at);
        }
        if (peek(0) == '.') {
            throw refusals.because("a point must stand between digits");
        }
        return checked(number);
    }

    private double fraction(String numerator, boolean mixed) {
        at++;
        String denominator = digits();
        boolean ends = peek(0) != '/' && peek(0) != '.' && peek(0) != ',';
        if (denominator.isEmpty() || !ends || whole(denominator) == 0) {
            throw refusals.because("the fraction is not complete");
        }
        if (mixed && whole(numerator) >= whole(denominator)) {
            throw refusals.because("the fraction after a whole number must be less than one");
        }
        return whole(numerator) / whole(denominator);
    }

    private double clock(String whole) {
        at++;
        String small = digits();
        if (small.length() != 2 || whole(small) >= 60 || peek(0) == ':') {
            throw refusals.because("after a colon two digits below 60 are needed, and no more");
        }
        clock = true;
        clockSmall = whole(small);
        return whole(whole);
    }

    private double whole(String digits) {
        return checked(digits);
    }

    private double checked(String number) {
        if (number.length() > MAX_DIGITS + 1) {
            throw refusals.because("the number has more digits than any gauge shows");
        }
        return Decimals.parse(number);
    }

    private String digits() {
        int start = at;
        while (Decimals.isDigit(peek(0))) {
            at++;
        }
        return text.substring(start, at);
    }

    /** Returns the character some places on, or NUL past the end. */
    private char peek(int ahead) {
        return at + ahead < text.length() ? text.charAt(at + ahead) : 0;
    }
}
