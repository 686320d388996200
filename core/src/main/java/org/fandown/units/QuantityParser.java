package org.fandown.units;

import java.util.Optional;
import java.util.Set;

/** Reads one quantity from text; made anew for each text. */
final class QuantityParser {
    private static final int MAX_LENGTH = 60;
    private static final int MAX_DIGITS = 15;
    private static final double MAX_SIZE = 1e9;
    private static final int GROUP = 3;

    private final Refusals refusals;
    private final String text;
    private int at;
    private boolean plain;
    private boolean clock;
    private double clockSmall;

    QuantityParser(String written, Set<Dimension> allowed) {
        this.refusals = new Refusals(written, allowed);
        this.text = QuantityScript.plain(written);
    }

    /** A number and the unit it counts. */
    record Amount(double value, Unit unit) {}

    Amount parse() {
        if (text.isEmpty()) {
            throw refusals.empty();
        }
        if (text.length() > MAX_LENGTH) {
            throw refusals.because("the text is longer than a quantity can be");
        }
        boolean negative = text.charAt(0) == '-';
        if (negative || text.charAt(0) == '+') {
            at++;
        }
        Amount amount = amount();
        refusals.requireAllowed(amount.unit());
        if (amount.value() > MAX_SIZE) {
            throw refusals.because("the number is larger than anything that is measured here");
        }
        return negative ? new Amount(-amount.value(), amount.unit()) : amount;
    }

    private Amount amount() {
        double number = number();
        String rest = text.substring(at).strip();
        if (rest.isEmpty()) {
            throw refusals.bare();
        }
        Optional<Unit> unit = UnitNames.find(rest);
        if (unit.isPresent()) {
            return clock ? clockAmount(number, unit.get()) : new Amount(number, unit.get());
        }
        return compound(number, rest).orElseThrow(() -> refusals.unknownUnit(rest));
    }

    /** Reads a larger unit followed by a smaller one, such as {@code 1 min 14 s}. */
    private Optional<Amount> compound(double number, String rest) {
        for (int i = 1; i < rest.length(); i++) {
            if (Decimals.isDigit(rest.charAt(i)) && !Decimals.isDigit(rest.charAt(i - 1))) {
                Optional<Unit> large = UnitNames.find(rest.substring(0, i));
                if (large.isPresent() && plain) {
                    at = text.length() - rest.length() + i;
                    return Optional.of(joined(number, large.get()));
                }
            }
        }
        return Optional.empty();
    }

    private Amount joined(double number, Unit large) {
        Amount small = amount();
        double ratio = ratio(large, small.unit());
        if (ratio == 0 || clock) {
            throw refusals.because("only h, min and s, or ft and in can be joined");
        }
        if (number != Math.floor(number) || small.value() >= ratio) {
            throw refusals.because(
                    "the larger unit must be a whole number and the smaller one less than "
                            + Decimals.format(ratio, 0));
        }
        return new Amount(number * ratio + small.value(), small.unit());
    }

    private Amount clockAmount(double number, Unit unit) {
        if (unit == Unit.MINUTE) {
            return new Amount(number * 60 + clockSmall, Unit.SECOND);
        }
        if (unit == Unit.HOUR) {
            return new Amount(number * 60 + clockSmall, Unit.MINUTE);
        }
        throw refusals.because("a colon stands only between min and s or between h and min");
    }

    /** Returns how many of the small unit make the large one, or 0 if the two are not joined. */
    private static double ratio(Unit large, Unit small) {
        boolean joined =
                switch (large) {
                    case HOUR -> small == Unit.MINUTE || small == Unit.SECOND;
                    case MINUTE -> small == Unit.SECOND;
                    case FOOT -> small == Unit.INCH;
                    default -> false;
                };
        return joined ? large.convert(1, small) : 0;
    }

    /** Reads the number at the cursor: plain, grouped, fraction, mixed or clock. */
    private double number() {
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
