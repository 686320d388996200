package org.fandown.braking;

import java.util.Optional;
import java.util.function.Function;

/**
 * Something that could be estimated, or the reason why it could not.
 *
 * @param value the estimate, empty if there is none
 * @param reason why there is none, empty text if there is one
 * @param <T> the type of the estimate
 */
public record Answer<T>(Optional<T> value, String reason) {

    /** Refuses an answer that is both or neither. */
    public Answer {
        if (value.isPresent() != reason.isEmpty()) {
            throw new IllegalArgumentException("An answer has either a value or a reason.");
        }
    }

    /** Returns an estimate. */
    public static <T> Answer<T> known(T value) {
        return new Answer<>(Optional.of(value), "");
    }

    /** Returns the reason why there is no estimate. */
    public static <T> Answer<T> unknown(String reason) {
        return new Answer<>(Optional.empty(), reason);
    }

    /** Returns whether there is an estimate. */
    public boolean isKnown() {
        return value.isPresent();
    }

    /** Returns what follows from the estimate, or the same reason. */
    <R> Answer<R> then(Function<T, Answer<R>> next) {
        return value.isPresent() ? next.apply(value.get()) : unknown(reason);
    }
}
