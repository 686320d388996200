package org.fandown.judgement;

import java.util.Optional;
import org.fandown.check.Severity;
import org.fandown.rulebook.Rule;
import org.fandown.vehicle.WheelId;

/**
 * Something wrong with the vehicle.
 *
 * @param component the part, or the check where no part is named, as a text id
 * @param wheel where, empty if not at one wheel
 * @param severity minor or major; empty where neither the place nor the person says
 * @param rule the rule that is not met, empty if only the person says so
 * @param text what is wrong
 */
public record Defect(
        String component,
        Optional<WheelId> wheel,
        Optional<Severity> severity,
        Optional<Rule> rule,
        String text) {}
