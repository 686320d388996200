package org.fandown.practice;

import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * One thing a person does, in the form scripts write it: {@code foot-brake: 100 %}.
 *
 * @param verb what is done
 * @param value how far, or to what; see {@link Argument}
 */
public record OperatorAction(Verb verb, String value) {
    /**
     * Checks the value.
     *
     * @throws IllegalArgumentException if the verb cannot be done so
     */
    public OperatorAction {
        if (!verb.argument().accepts(value, verb.words())) {
            throw new IllegalArgumentException(
                    "'"
                            + verb.id()
                            + ": "
                            + value
                            + "' cannot be done. Allowed: "
                            + allowed(verb)
                            + ".");
        }
    }

    /** Returns which values a verb takes, in words. */
    public static String allowed(Verb verb) {
        return verb.argument().allowed(verb.words());
    }

    /** Whether the value is the given word. */
    boolean is(String word) {
        return value.equals(word);
    }

    /** A share of the travel, 0 to 1. */
    double travel() {
        return quantity().valueIn(Unit.PERCENT) / 100;
    }

    /** Whether the value is a share, not a speed. */
    boolean isShare() {
        return quantity().dimension() == Dimension.RATIO;
    }

    Quantity quantity() {
        return Quantity.parse(value);
    }

    /** Returns the form scripts write. */
    @Override
    public String toString() {
        return verb.id() + ": " + value;
    }
}
