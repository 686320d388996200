package org.fandown.judgement;

import java.util.function.Supplier;

/**
 * The words for a finding. They are put together only when somebody asks, since most findings of a
 * large batch are never read.
 */
public final class Why {
    private final Supplier<String> reason;
    private final Supplier<String> advice;

    private Why(Supplier<String> reason, Supplier<String> advice) {
        this.reason = reason;
        this.advice = advice;
    }

    static Why of(Supplier<String> reason) {
        return new Why(reason, () -> "");
    }

    static Why of(Supplier<String> reason, Supplier<String> advice) {
        return new Why(reason, advice);
    }

    /** Why the finding is what it is. */
    public String reason() {
        return reason.get();
    }

    /** What to do next, empty if nothing. */
    public String advice() {
        return advice.get();
    }

    @Override
    public String toString() {
        return reason();
    }
}
