package org.fandown.braking;

import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * The least and the most something can be. Both are equal where nothing is open.
 *
 * @param least the lower end
 * @param most the upper end, in the same unit
 */
public record Range(Quantity least, Quantity most) {

    /** Refuses ends in different units or in the wrong order. */
    public Range {
        if (least.unit() != most.unit() || least.value() > most.value()) {
            throw new IllegalArgumentException(least + " to " + most + " is not a range.");
        }
    }

    static Range of(Span span, Unit unit) {
        return new Range(Quantity.of(span.least(), unit), Quantity.of(span.most(), unit));
    }

    /** Returns whether both ends are equal. */
    public boolean isExact() {
        return least.value() == most.value();
    }
}
