package org.fandown.judgement;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fandown.check.Check;
import org.fandown.check.Severity;
import org.fandown.evidence.PartReading;
import org.fandown.evidence.PartReading.Found;
import org.fandown.evidence.Reading;
import org.fandown.evidence.WheelReading;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Standing;
import org.fandown.vehicle.WheelId;

/** Collects what is wrong with the vehicle: rules not met, and what the person saw besides. */
final class Defects {
    private final Case before;
    private final List<Finding> findings;
    private final List<Defect> defects = new ArrayList<>();

    private Defects(Case before, List<Finding> findings) {
        this.before = before;
        this.findings = findings;
    }

    /** The defects that follow from findings and from what was noted; rules not met first. */
    static List<Defect> of(Case before, List<Finding> findings) {
        Defects defects = new Defects(before, findings);
        defects.collect();
        return defects.defects;
    }

    private void collect() {
        for (Finding finding : findings) {
            if (finding.status() == Status.NOT_MET
                    && finding.ruling().rule().weight().standing() == Standing.REQUIRED) {
                defects.add(defect(finding));
            }
        }
        for (PartReading part : before.inspection().parts().values()) {
            for (Found found : part.found()) {
                unruled(part, found);
            }
        }
        for (WheelReading wheel : before.inspection().wheels().values()) {
            for (String text : wheel.defects()) {
                defects.add(seenAtWheel(wheel, text));
            }
            unruledAnswers(wheel);
        }
        unruledAnswers();
    }

    private static Defect defect(Finding finding) {
        String component =
                finding.ruling().limit() instanceof Limit.Absent absent
                        ? absent.on().id()
                        : finding.ruling().rule().check().id();
        return new Defect(
                component,
                finding.wheel(),
                Optional.of(finding.ruling().rule().weight().severity()),
                Optional.of(finding.ruling().rule()),
                finding.ruling().rule().title());
    }

    private static Defect seenAtWheel(WheelReading wheel, String text) {
        return new Defect(
                "service-brakes",
                Optional.of(wheel.wheel()),
                Optional.of(Severity.MAJOR),
                Optional.empty(),
                text.replace('-', ' '));
    }

    /** A condition the person found and the place has no rule for. */
    private void unruled(PartReading part, Found found) {
        if (!isRuled(part, found)) {
            defects.add(
                    new Defect(
                            part.part().id(),
                            Optional.empty(),
                            found.severity(),
                            Optional.empty(),
                            found.condition().replace('-', ' ')
                                    + (found.note().isEmpty() ? "" : ": " + found.note())));
        }
    }

    private boolean isRuled(PartReading part, Found found) {
        for (Finding finding : findings) {
            if (finding.ruling().limit() instanceof Limit.Absent absent
                    && absent.on() == part.part()
                    && absent.condition().equals(found.condition())
                    && finding.decides()) {
                return true;
            }
        }
        return false;
    }

    /** Each no to a check that no rule of the place judges. */
    private void unruledAnswers() {
        Set<Check> judged = EnumSet.noneOf(Check.class);
        for (Finding finding : findings) {
            judged.add(finding.ruling().rule().check());
        }
        for (Reading reading : before.inspection().readings().values()) {
            if (reading instanceof Reading.Answer answer
                    && !answer.yes()
                    && !judged.contains(answer.check())) {
                defects.add(unruled(answer.check(), Optional.empty()));
            }
        }
    }

    /** Each no at a wheel to a check that no rule of the place judges there. */
    private void unruledAnswers(WheelReading wheel) {
        for (Map.Entry<Check, Boolean> answer : wheel.answers().entrySet()) {
            if (!answer.getValue() && !isJudged(answer.getKey(), wheel.wheel())) {
                defects.add(unruled(answer.getKey(), Optional.of(wheel.wheel())));
            }
        }
    }

    private boolean isJudged(Check check, WheelId wheel) {
        for (Finding finding : findings) {
            if (finding.ruling().rule().check() == check
                    && finding.wheel().equals(Optional.of(wheel))) {
                return true;
            }
        }
        return false;
    }

    private static Defect unruled(Check check, Optional<WheelId> wheel) {
        return new Defect(
                check.id(), wheel, Optional.empty(), Optional.empty(), check.title() + ": no");
    }
}
