package org.fandown.rulebook;

import java.util.List;
import org.fandown.vehicle.WheelId;

/**
 * A rule in force for one vehicle on one day.
 *
 * @param rule the rule
 * @param value the value in force on the day
 * @param fit yes, or unknown with the missing fact
 * @param wheels the wheels it is judged at, for a check made at each wheel or axle; empty otherwise
 */
public record Ruling(Rule rule, DatedValue value, Fit fit, List<WheelId> wheels) {
    /** Copies the list. */
    public Ruling {
        wheels = List.copyOf(wheels);
    }

    /** The demand in force. */
    public Limit limit() {
        return value.limit();
    }

    /** Whether the rule decides when it is not met. */
    public boolean decides() {
        return rule.weight().standing().decides();
    }
}
