package org.fandown.units;

import java.util.Objects;

/**
 * A text that was meant as a quantity cannot be read as one. Says what was written, what is wrong
 * with it, what is allowed and what to do next.
 */
public final class QuantityFormatException extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private static final int SHOWN = 60;

    private final String written;
    private final String problem;
    private final String allowed;
    private final String nextStep;

    /**
     * Creates the exception.
     *
     * @param written the text as it was given
     * @param problem what is wrong with it
     * @param allowed what would be accepted
     * @param nextStep what the writer should do
     */
    public QuantityFormatException(
            String written, String problem, String allowed, String nextStep) {
        super(
                "'"
                        + shown(written)
                        + "': "
                        + problem
                        + ". Allowed: "
                        + allowed
                        + ". Next: "
                        + nextStep
                        + ".");
        this.written = written;
        this.problem = Objects.requireNonNull(problem, "problem");
        this.allowed = Objects.requireNonNull(allowed, "allowed");
        this.nextStep = Objects.requireNonNull(nextStep, "nextStep");
    }

    /** Returns the text as it was given. */
    public String written() {
        return written;
    }

    /** Returns what is wrong, a clause without a full stop. */
    public String problem() {
        return problem;
    }

    /** Returns what would be accepted, without a full stop. */
    public String allowed() {
        return allowed;
    }

    /** Returns what to do next, without a full stop. */
    public String nextStep() {
        return nextStep;
    }

    /** Makes any text fit for one line of a message: cut to length, control characters replaced. */
    static String shown(String text) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < text.length() && line.length() < SHOWN; i++) {
            char c = text.charAt(i);
            boolean plain = c >= ' ' && c != 0x7f && !Character.isSurrogate(c);
            line.append(plain ? c : '?');
        }
        return text.length() > SHOWN ? line + "..." : line.toString();
    }
}
