package org.fandown.operator;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;

/** The ways in which checks are made, by the check that gives a step its name. */
final class Performings {
    private final Map<Check, Performing> all = new EnumMap<>(Check.class);

    Performings() {
        GovernorChecks.addTo(all);
        LossChecks.addTo(all);
        PumpDownChecks.addTo(all);
        DashChecks.addTo(all);
        WalkRoundChecks.addTo(all);
        EarChecks.addTo(all);
        DrainChecks.addTo(all);
        StrokeChecks.addTo(all);
        LineChecks.addTo(all);
        TrailerChecks.addTo(all);
        RollChecks.addTo(all);
    }

    /** Returns the way of a check, empty if nobody has written down how it is made. */
    Optional<Performing> of(Check check) {
        return Optional.ofNullable(all.get(check));
    }
}
