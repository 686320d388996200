package org.fandown.operator;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.evidence.ClaimedDefect;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.Statement;
import org.fandown.judgement.Defect;
import org.fandown.judgement.Judge;
import org.fandown.judgement.Judgement;
import org.fandown.vehicle.WheelId;

/** What follows from a performance, as the perfect operator says it at the end. */
final class Conclusion {
    private Conclusion() {}

    /** The verdict of the rules, their defects, and what was abnormal beside them. */
    static Statement.Conclude of(Performance performance, Inspection inspection) {
        Judgement judged = Judge.by(performance.plan().set().rules()).judge(inspection);
        Set<ClaimedDefect> defects = new LinkedHashSet<>();
        for (Defect defect : judged.defects()) {
            claimed(defect).ifPresent(defects::add);
        }
        List<ClaimedDefect> all = new ArrayList<>(defects);
        for (Abnormal abnormal : performance.abnormal()) {
            ClaimedDefect more = new ClaimedDefect(abnormal.check(), abnormal.part(), "");
            if (all.stream().noneMatch(named -> named.id().equals(more.id()))) {
                all.add(more);
            }
        }
        return new Statement.Conclude(judged.verdict(), all);
    }

    private static Optional<ClaimedDefect> claimed(Defect defect) {
        String at = defect.wheel().map(WheelId::toString).orElse("");
        Optional<Check> check = Check.byId(defect.component());
        if (check.isPresent()) {
            return Optional.of(ClaimedDefect.of(check.get(), at));
        }
        for (Component part : Component.values()) {
            if (part.id().equals(defect.component())) {
                return Optional.of(ClaimedDefect.of(part, at));
            }
        }
        return Optional.empty();
    }
}
