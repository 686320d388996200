package org.fandown.rulebook;

import java.time.OffsetDateTime;

/**
 * A length of calendar time in a duty, counted from a moment: 24 hours, 20 days, 6 months.
 *
 * @param amount how many, at least 1
 * @param unit of what
 */
public record Term(int amount, TermUnit unit) {

    /** What a term is counted in. */
    public enum TermUnit {
        /** Hours on the clock. */
        HOUR,
        /** Days of 24 hours at a fixed offset. */
        DAY,
        /** Calendar months. */
        MONTH,
        /** Calendar years. */
        YEAR
    }

    /**
     * Checks the amount.
     *
     * @throws IllegalArgumentException if the amount is below 1
     */
    public Term {
        if (amount < 1) {
            throw new IllegalArgumentException("A term of " + amount + " is not possible.");
        }
    }

    /** The last moment inside the term. */
    public OffsetDateTime from(OffsetDateTime start) {
        return switch (unit) {
            case HOUR -> start.plusHours(amount);
            case DAY -> start.plusDays(amount);
            case MONTH -> start.plusMonths(amount);
            case YEAR -> start.plusYears(amount);
        };
    }

    @Override
    public String toString() {
        String word =
                switch (unit) {
                    case HOUR -> "h";
                    case DAY -> amount == 1 ? "day" : "days";
                    case MONTH -> amount == 1 ? "month" : "months";
                    case YEAR -> amount == 1 ? "year" : "years";
                };
        return amount + " " + word;
    }
}
