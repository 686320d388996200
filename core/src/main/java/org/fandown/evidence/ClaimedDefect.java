package org.fandown.evidence;

import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.Component;

/**
 * A defect that a person names at the end of an inspection.
 *
 * @param check the check that showed it, empty if a part is named
 * @param part the part that has it, empty if a check is named
 * @param at the wheel ({@code 3R}) or the unit ({@code unit2}) it is at; empty text if not said
 */
public record ClaimedDefect(Optional<Check> check, Optional<Component> part, String at) {
    /**
     * Checks that one thing is named.
     *
     * @throws IllegalArgumentException if a check and a part are named, or neither
     */
    public ClaimedDefect {
        if (check.isPresent() == part.isPresent()) {
            throw new IllegalArgumentException("A defect names either a check or a part.");
        }
    }

    /** A defect that a check showed. */
    public static ClaimedDefect of(Check check, String at) {
        return new ClaimedDefect(Optional.of(check), Optional.empty(), at);
    }

    /** A defect of a part. */
    public static ClaimedDefect of(Component part, String at) {
        return new ClaimedDefect(Optional.empty(), Optional.of(part), at);
    }

    /** Returns the text form of what is named. */
    public String id() {
        return check.map(Check::id).or(() -> part.map(Component::id)).orElse("");
    }

    @Override
    public String toString() {
        return at.isEmpty() ? id() : id() + " at " + at;
    }
}
