package org.fandown.units;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Words the refusals of one text that was meant as a quantity. */
final class Refusals {
    private static final String ANY =
            "a number with its unit, such as 92 psi, 634 kPa, 1 3/8 in or 1 min 14 s";

    private final String written;
    private final Set<Dimension> allowed;

    Refusals(String written, Set<Dimension> allowed) {
        this.written = written;
        if (allowed.isEmpty()) {
            throw new IllegalArgumentException("At least one dimension must be allowed.");
        }
        this.allowed = EnumSet.copyOf(allowed);
    }

    QuantityFormatException because(String problem) {
        return refuse(problem, "write it like '" + example() + "'");
    }

    QuantityFormatException empty() {
        return because("nothing is written");
    }

    QuantityFormatException noNumber() {
        return because("it does not start with a number");
    }

    QuantityFormatException bare() {
        return refuse("the unit is missing", "add the unit, as in '" + example() + "'");
    }

    QuantityFormatException range() {
        return refuse("two numbers stand where one is needed", "write one value, not a range");
    }

    QuantityFormatException unknownUnit(String name) {
        return because("'" + QuantityFormatException.shown(name) + "' is not a known unit");
    }

    /** Refuses a comma, with both ways in which it may have been meant. */
    QuantityFormatException comma(String text, int at) {
        String before = text.substring(0, at);
        int end = at + 1;
        while (end < text.length() && Decimals.isDigit(text.charAt(end))) {
            end++;
        }
        String after = text.substring(at + 1, end);
        String step = "write '" + before + "." + after + "'";
        if (after.length() == 3) {
            step = "write '" + before + after + "' for thousands, or a point for decimals";
        } else if (after.isEmpty()) {
            step = "leave the comma out";
        }
        return refuse("a comma in a number can be read in two ways", step);
    }

    void requireAllowed(Unit unit) {
        if (allowed.contains(unit.dimension())) {
            return;
        }
        String problem =
                "'" + unit.symbol() + "' is " + unit.dimension().phrase() + ", not " + phrases();
        if (unit.dimension() == Dimension.GAUGE_PRESSURE
                && allowed.contains(Dimension.ABSOLUTE_PRESSURE)) {
            throw refuse(problem, "write '" + unit.symbol() + " abs' if it counts from vacuum");
        }
        throw because(problem);
    }

    private QuantityFormatException refuse(String problem, String nextStep) {
        return new QuantityFormatException(written, problem, allowedText(), nextStep);
    }

    private String phrases() {
        List<String> phrases = new ArrayList<>();
        for (Dimension dimension : allowed) {
            phrases.add(dimension.phrase());
        }
        return String.join(" or ", phrases);
    }

    private String allowedText() {
        if (allowed.size() == Dimension.values().length) {
            return ANY;
        }
        List<String> parts = new ArrayList<>();
        for (Dimension dimension : allowed) {
            List<String> symbols = new ArrayList<>();
            for (Unit unit : Unit.of(dimension)) {
                symbols.add(unit.symbol());
            }
            parts.add(dimension.phrase() + " in " + String.join(", ", symbols));
        }
        return String.join("; or ", parts);
    }

    private String example() {
        return allowed.iterator().next().example();
    }
}
