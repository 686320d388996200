package org.fandown.rulebook;

import org.fandown.check.PlaceCode;

/**
 * A pack that is sound by itself does not fit the others: its parent is missing or it is its own
 * ancestor, or a rule refers to one that is not there. It names the entry at fault, so that a
 * reader of files can say where it stands.
 */
public final class UnfitPackException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String place;
    private final String rule;
    private final String key;
    private final String value;
    private final String problem;
    private final String allowed;
    private final String nextStep;

    UnfitPackException(
            PlaceCode place,
            String rule,
            String key,
            String value,
            String problem,
            String allowed,
            String nextStep) {
        super(
                "Rule pack "
                        + place
                        + (rule.isEmpty() ? "" : ", rule " + rule)
                        + ": "
                        + key
                        + " '"
                        + value
                        + "' "
                        + problem
                        + ".");
        this.place = place.code();
        this.rule = rule;
        this.key = key;
        this.value = value;
        this.problem = problem;
        this.allowed = allowed;
        this.nextStep = nextStep;
    }

    /** The place of the pack. */
    public PlaceCode place() {
        return new PlaceCode(place);
    }

    /** The id of the rule, empty if the pack as a whole is at fault. */
    public String rule() {
        return rule;
    }

    /** The key at fault: {@code parent}, {@code overrides} or {@code conflict}. */
    public String key() {
        return key;
    }

    /** The value at fault. */
    public String value() {
        return value;
    }

    /** What is wrong, a clause. */
    public String problem() {
        return problem;
    }

    /** What would be accepted, a clause. */
    public String allowed() {
        return allowed;
    }

    /** What to do next. */
    public String nextStep() {
        return nextStep;
    }
}
