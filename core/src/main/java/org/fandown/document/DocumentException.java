package org.fandown.document;

import java.util.Objects;

/**
 * A document cannot be used as it stands. This is the one exception that reading documents raises;
 * it says where, what was found, what is wrong with it, what is allowed and what to do next.
 *
 * <p>Its message has one line: {@code FILE:LINE:COLUMN: PATH: Problem (value 'x'). Allowed: ... .
 * Next: ... .}, without the parts that are unknown.
 */
public final class DocumentException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String file;
    private final int line;
    private final int column;
    private final String path;
    private final String value;
    private final String problem;
    private final String allowed;
    private final String nextStep;

    /**
     * Creates the exception. Texts are clauses; the message begins each with a capital and ends it
     * with a full stop, and leaves out an empty one.
     *
     * @param at where it was found
     * @param path the path of the value, or empty
     * @param value the value as written, or empty
     * @param problem what is wrong
     * @param allowed what would be accepted, or empty
     * @param nextStep what the writer should do, or empty
     */
    public DocumentException(
            Position at,
            String path,
            String value,
            String problem,
            String allowed,
            String nextStep) {
        super(message(at, path, value, problem, allowed, nextStep));
        this.file = at.file();
        this.line = at.line();
        this.column = at.column();
        this.path = path;
        this.value = value;
        this.problem = Objects.requireNonNull(problem, "problem");
        this.allowed = allowed;
        this.nextStep = nextStep;
    }

    /** Returns the name of the file, or empty. */
    public String file() {
        return file;
    }

    /** Returns the line counted from 1, or 0 if unknown. */
    public int line() {
        return line;
    }

    /** Returns the column counted from 1, or 0 if unknown. */
    public int column() {
        return column;
    }

    /** Returns the path of the value, or empty for the document as a whole. */
    public String path() {
        return path;
    }

    /** Returns the value as written, or empty. */
    public String value() {
        return value;
    }

    /** Returns what is wrong. */
    public String problem() {
        return problem;
    }

    /** Returns what would be accepted, or empty. */
    public String allowed() {
        return allowed;
    }

    /** Returns what the writer should do, or empty. */
    public String nextStep() {
        return nextStep;
    }

    private static String message(
            Position at,
            String path,
            String value,
            String problem,
            String allowed,
            String nextStep) {
        StringBuilder text = new StringBuilder();
        if (!at.equals(Position.NONE)) {
            text.append(at).append(": ");
        }
        if (!path.isEmpty()) {
            text.append(path).append(": ");
        }
        text.append(sentence(problem));
        if (!value.isEmpty()) {
            text.append(" (value '").append(Texts.shown(value)).append("')");
        }
        end(text);
        if (!allowed.isEmpty()) {
            text.append(" Allowed: ").append(allowed);
            end(text);
        }
        if (!nextStep.isEmpty()) {
            text.append(" Next: ").append(sentence(nextStep));
            end(text);
        }
        return text.toString();
    }

    private static void end(StringBuilder text) {
        char last = text.charAt(text.length() - 1);
        if (last != '.' && last != '?') {
            text.append('.');
        }
    }

    /** Begins with a capital. */
    private static String sentence(String clause) {
        boolean small = !clause.isEmpty() && clause.charAt(0) >= 'a' && clause.charAt(0) <= 'z';
        return small ? (char) (clause.charAt(0) - 'a' + 'A') + clause.substring(1) : clause;
    }
}
