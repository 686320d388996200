package org.fandown.rulebook;

import java.util.Map;
import java.util.TreeMap;
import org.fandown.document.Fields;
import org.fandown.rulebook.Term.TermUnit;

/** Reads a length of calendar time such as {@code 6 months}. */
final class TermReader {
    private static final String ALLOWED = "a whole number and h, days, months or years";

    private static final Map<String, TermUnit> UNITS = new TreeMap<>();

    static {
        UNITS.put("h", TermUnit.HOUR);
        UNITS.put("day", TermUnit.DAY);
        UNITS.put("days", TermUnit.DAY);
        UNITS.put("month", TermUnit.MONTH);
        UNITS.put("months", TermUnit.MONTH);
        UNITS.put("year", TermUnit.YEAR);
        UNITS.put("years", TermUnit.YEAR);
    }

    private TermReader() {}

    static Term read(Fields fields, String key) {
        String text = fields.text(key);
        int space = text.indexOf(' ');
        int amount = space > 0 && space <= 3 ? amount(text.substring(0, space)) : 0;
        if (amount < 1) {
            throw fields.refuse(
                    key, "is not a time", ALLOWED, "Write for example 24 h or 6 months.");
        }
        TermUnit unit = UNITS.get(text.substring(space + 1));
        if (unit == null) {
            throw fields.refuse(
                    key, "has an unknown unit", ALLOWED, "Write for example 24 h or 6 months.");
        }
        return new Term(amount, unit);
    }

    private static int amount(String digits) {
        int amount = 0;
        for (int i = 0; i < digits.length(); i++) {
            char c = digits.charAt(i);
            if (c < '0' || c > '9') {
                return 0;
            }
            amount = amount * 10 + (c - '0');
        }
        return amount;
    }
}
