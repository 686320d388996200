package org.fandown.referee;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fandown.check.Check;
import org.fandown.evidence.Observations;
import org.fandown.evidence.Statement;
import org.fandown.practice.Run;
import org.fandown.practice.RunEntry;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.StepSet;

/**
 * What a person said in a run, sorted by checks. A window opens where the check was begun; where
 * that was not said, at the statement before. Whoever records a check again has the later one
 * counted.
 */
final class Attempts {
    private final StepSet set;
    private final Map<Check, Long> begun = new EnumMap<>(Check.class);
    private final Map<Check, Attempt> attempts = new EnumMap<>(Check.class);
    private final List<Check> inTurn = new ArrayList<>();
    private Observations all = Observations.NONE;
    private Optional<Statement.Conclude> conclusion = Optional.empty();
    private long concludedAt;

    private Attempts(StepSet set) {
        this.set = set;
    }

    static Attempts of(Run run, StepSet set) {
        Attempts attempts = new Attempts(set);
        long before = 0;
        for (RunEntry entry : run.entries()) {
            if (entry instanceof RunEntry.Stated said) {
                attempts.hear(said, before);
                before = said.tick();
            }
        }
        return attempts;
    }

    private void hear(RunEntry.Stated said, long before) {
        Statement statement = said.statement();
        if (statement instanceof Statement.Begin begin) {
            begun.put(begin.check(), said.tick());
        } else if (statement instanceof Statement.Record observed) {
            observed(observed.observations(), before, said.tick());
        } else if (statement instanceof Statement.Conclude concluded) {
            conclusion = Optional.of(concluded);
            concludedAt = said.tick();
        }
    }

    private void observed(Observations now, long before, long tick) {
        for (Check check : checks(now)) {
            Optional<Long> begin = begun(check);
            Stretch window = new Stretch(begin.orElse(before), tick);
            attempts.put(check, new Attempt(check, window, begin.isPresent(), now));
            inTurn.remove(check);
            inTurn.add(check);
        }
        all = all.then(now);
    }

    private static Set<Check> checks(Observations now) {
        Set<Check> checks = EnumSet.noneOf(Check.class);
        checks.addAll(now.readings().keySet());
        now.wheels()
                .values()
                .forEach(
                        wheel -> {
                            checks.addAll(wheel.values().keySet());
                            checks.addAll(wheel.answers().keySet());
                        });
        if (!now.parts().isEmpty() || now.allOtherPartsSeen()) {
            checks.add(Check.WALK_ROUND);
        }
        return checks;
    }

    /** When a check, or the one in whose step it is made, was begun. */
    private Optional<Long> begun(Check check) {
        Long own = begun.get(check);
        if (own != null) {
            return Optional.of(own);
        }
        Optional<CheckStep> step = set.find(check.id());
        return step.map(host -> begun.get(host.check()));
    }

    /** The attempt of a check, empty if nothing was written down of it. */
    Optional<Attempt> of(Check check) {
        return Optional.ofNullable(attempts.get(check));
    }

    /** The checks of which something was written down, in the order of the last time. */
    List<Check> inTurn() {
        return Collections.unmodifiableList(inTurn);
    }

    /** All that was written down, the later before the earlier. */
    Observations all() {
        return all;
    }

    /** What was concluded last, empty if nothing was. */
    Optional<Statement.Conclude> conclusion() {
        return conclusion;
    }

    double concludedAt() {
        return Tale.seconds(concludedAt);
    }
}
