package org.fandown.procedure;

import java.util.List;
import org.fandown.check.Check;

/**
 * What is wrong with an order.
 *
 * @param order the order
 * @param steps its steps on the clock
 * @param violations what is wrong, in the order of the steps
 * @param unproven checks the place asks for that the order leaves out or spoils
 */
public record Examination(
        Order order, List<PlannedStep> steps, List<Violation> violations, List<Check> unproven) {
    /** Copies the lists. */
    public Examination {
        steps = List.copyOf(steps);
        violations = List.copyOf(violations);
        unproven = List.copyOf(unproven);
    }

    /** Whether nothing is wrong and nothing is missing. */
    public boolean isSound() {
        return violations.isEmpty() && unproven.isEmpty();
    }

    /** Time on the clock, tenths of a second. */
    public int tenths() {
        return steps.isEmpty() ? 0 : steps.get(steps.size() - 1).end();
    }
}
