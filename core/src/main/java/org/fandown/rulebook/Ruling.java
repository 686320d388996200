package org.fandown.rulebook;

import java.util.List;
import org.fandown.check.Check;
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

    /** What is asked, in words; for a yes or no what has to be so. */
    public String asked() {
        return limit() instanceof Limit.IsYes
                ? Texts.lowerFirst(rule.check().title())
                : limit().toString();
    }

    /** What its text says of the order of checks, empty if nothing. */
    public List<TestOrder> orders() {
        return limit() instanceof Limit.Duty duty ? duty.orders() : List.of();
    }

    /** Whether it tells how a check is made. */
    public boolean tellsMethodOf(Check check) {
        return rule.weight().standing() == Standing.DUTY
                && limit() instanceof Limit.Duty duty
                && duty.concerns().contains(check);
    }
}
