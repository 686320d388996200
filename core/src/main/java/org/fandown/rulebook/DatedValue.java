package org.fandown.rulebook;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What a rule demands in one interval of dates.
 *
 * @param from first day in force, empty if it has no known beginning
 * @param until first day no longer in force, empty if it is still in force
 * @param limit the demand
 * @param source where it can be read
 */
public record DatedValue(
        Optional<LocalDate> from, Optional<LocalDate> until, Limit limit, Source source) {

    /** Whether the value is in force on the day. */
    public boolean inForceOn(LocalDate day) {
        return hasBegunOn(day) && until.map(day::isBefore).orElse(true);
    }

    /** Whether the value was in force on the day or some day before. */
    boolean hasBegunOn(LocalDate day) {
        return from.map(f -> !day.isBefore(f)).orElse(true);
    }
}
