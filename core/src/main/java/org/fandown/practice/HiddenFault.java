package org.fandown.practice;

import java.util.ArrayList;
import java.util.List;
import org.fandown.air.FaultCase;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.document.Names;

/**
 * Something wrong in a scenario, with what is meant to find it.
 *
 * @param title what is wrong, in words
 * @param at the wheel or unit it is at, empty text where it has no such place
 * @param checks the checks that are meant to find it, empty if it is only looked at
 * @param parts the parts that show it to a person who looks or listens
 */
public record HiddenFault(String title, String at, List<Check> checks, List<Component> parts) {
    /** Copies the lists. */
    public HiddenFault {
        checks = List.copyOf(checks);
        parts = List.copyOf(parts);
    }

    /** Returns all that is wrong in a scenario, in its order, parts of the walk-round last. */
    public static List<HiddenFault> of(Scenario scenario) {
        List<HiddenFault> all = new ArrayList<>();
        for (FaultCase one : scenario.faults()) {
            all.add(
                    new HiddenFault(
                            one.fault().title(),
                            one.place(),
                            FaultChecks.checks(one.fault()),
                            FaultChecks.parts(one.fault())));
        }
        scenario.parts()
                .forEach(
                        (part, found) ->
                                all.add(
                                        new HiddenFault(
                                                Names.kebab(part) + ": " + String.join(", ", found),
                                                "",
                                                List.of(Check.WALK_ROUND),
                                                List.of(part))));
        return List.copyOf(all);
    }

    /** Returns what is wrong and where. */
    @Override
    public String toString() {
        return at.isEmpty() ? title : title + " at " + at;
    }
}
