package org.fandown.units;

/** Checks that amounts lie in their range. */
final class Ranges {
    private Ranges() {}

    /** Returns the amount, with minus zero made zero. */
    static double require(String what, double amount, double min, double max, String range) {
        if (!(amount >= min && amount <= max)) {
            throw new IllegalArgumentException(what + " must be finite and in " + range + ".");
        }
        return amount == 0 ? 0 : amount;
    }
}
