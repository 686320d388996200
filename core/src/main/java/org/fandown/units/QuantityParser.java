package org.fandown.units;

import java.util.Optional;
import java.util.Set;

/** Reads one quantity from text; made anew for each text. */
final class QuantityParser {
    private static final int MAX_LENGTH = 60;
    private static final double MAX_SIZE = 1e9;

    private final Refusals refusals;
    private final String text;
    private final NumberReader numbers;

    QuantityParser(String written, Set<Dimension> allowed) {
        this.refusals = new Refusals(written, allowed);
        this.text = QuantityScript.plain(written).strip();
        this.numbers = new NumberReader(refusals, text);
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
        boolean negative = numbers.minus();
        Amount amount = amount();
        refusals.requireAllowed(amount.unit());
        if (amount.value() > MAX_SIZE) {
            throw refusals.because("the number is larger than anything that is measured here");
        }
        return negative ? new Amount(-amount.value(), amount.unit()) : amount;
    }

    private Amount amount() {
        double number = numbers.number();
        String rest = numbers.rest();
        if (rest.isEmpty()) {
            throw refusals.bare();
        }
        if (rest.startsWith("to ")) {
            throw refusals.range();
        }
        Optional<Unit> unit = UnitNames.find(rest);
        if (unit.isPresent()) {
            return numbers.isClock()
                    ? clockAmount(number, unit.get())
                    : new Amount(number, unit.get());
        }
        return compound(number, rest).orElseThrow(() -> refusals.unknownUnit(rest));
    }

    /** Reads a larger unit followed by a smaller one, such as {@code 1 min 14 s}. */
    private Optional<Amount> compound(double number, String rest) {
        for (int i = 1; i < rest.length(); i++) {
            if (Decimals.isDigit(rest.charAt(i)) && !Decimals.isDigit(rest.charAt(i - 1))) {
                Optional<Unit> large = UnitNames.find(rest.substring(0, i));
                if (large.isPresent() && numbers.isPlain()) {
                    numbers.skip(i);
                    return Optional.of(joined(number, large.get()));
                }
            }
        }
        return Optional.empty();
    }

    private Amount joined(double number, Unit large) {
        Amount small = amount();
        double ratio = ratio(large, small.unit());
        if (ratio == 0 || numbers.isClock()) {
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
            return new Amount(number * 60 + numbers.afterColon(), Unit.SECOND);
        }
        if (unit == Unit.HOUR) {
            return new Amount(number * 60 + numbers.afterColon(), Unit.MINUTE);
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
}
