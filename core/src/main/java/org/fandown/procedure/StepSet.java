package org.fandown.procedure;

import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.rulebook.RulesInForce;

/**
 * The checks of an order of work.
 *
 * @param rules the rules in force
 * @param scope how much was taken in
 * @param checks the checks, in the order of the vocabulary
 * @param leftOut checks the rules ask for that nobody makes on the way round the vehicle
 */
public record StepSet(
        RulesInForce rules, Scope scope, List<CheckStep> checks, List<LeftOut> leftOut) {
    /**
     * A check that is not part of an order of work.
     *
     * @param check the check
     * @param why why it is not
     */
    public record LeftOut(Check check, String why) {}

    /** Copies the lists. */
    public StepSet {
        checks = List.copyOf(checks);
        leftOut = List.copyOf(leftOut);
    }

    /** Whether the place asks for nothing that can be ordered, so that good practice stands in. */
    public boolean isPracticeOnly() {
        return checks.stream().allMatch(step -> step.rulings().isEmpty());
    }

    /** The step that establishes a check, empty if none does. */
    public Optional<CheckStep> find(String id) {
        return checks.stream()
                .filter(step -> step.checks().stream().anyMatch(c -> c.id().equals(id)))
                .findFirst();
    }
}
