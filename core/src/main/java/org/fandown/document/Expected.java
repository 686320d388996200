package org.fandown.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fandown.units.Decimals;
import org.fandown.units.Dimension;

/** Words for what a value must be. */
final class Expected {
    static final String TRUTH = "yes or no";
    private static final int DECIMALS = 6;

    private Expected() {}

    static String oneOf(Map<String, ?> choices) {
        return String.join(", ", choices.keySet());
    }

    static String quantity(Set<Dimension> dimensions) {
        List<String> phrases = new ArrayList<>();
        for (Dimension dimension : Dimension.values()) {
            if (dimensions.contains(dimension)) {
                phrases.add(dimension.phrase() + " such as '" + dimension.example() + "'");
            }
        }
        return String.join(" or ", phrases);
    }

    static String integer(int min, int max) {
        return "a whole number from " + min + " to " + max;
    }

    static String number(double min, double max) {
        return "a number from " + shown(min) + " to " + shown(max);
    }

    private static String shown(double bound) {
        return Math.abs(bound) <= Decimals.MAX ? Decimals.formatShort(bound, DECIMALS) : "any size";
    }
}
