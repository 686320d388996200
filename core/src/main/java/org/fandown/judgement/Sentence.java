package org.fandown.judgement;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
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

/** From findings to defects and the verdict. */
final class Sentence {
    private final Case before;
    private final List<Finding> findings;
    private final List<Defect> defects = new ArrayList<>();

    private Sentence(Case before, List<Finding> findings) {
        this.before = before;
        this.findings = findings;
    }

    static Judgement pass(Case before, List<Finding> findings) {
        return new Sentence(before, findings).pass();
    }

    private Judgement pass() {
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
        }
        unruledAnswers();
        List<String> because = new ArrayList<>();
        Verdict verdict = verdict(because);
        return new Judgement(
                before.inspection(), before.rules(), findings, defects, verdict, because);
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
                defects.add(
                        new Defect(
                                answer.check().id(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                answer.check().title() + ": no"));
            }
        }
    }

    private Verdict verdict(List<String> because) {
        for (Defect defect : defects) {
            if (defect.severity().equals(Optional.of(Severity.MAJOR))) {
                because.add("Major defect: " + defect.text() + at(defect));
            }
        }
        if (!because.isEmpty()) {
            return Verdict.NOT_FIT_TO_MOVE;
        }
        for (Defect defect : defects) {
            if (defect.severity().isEmpty()) {
                because.add("Nobody says how bad this is: " + defect.text() + at(defect));
            }
        }
        for (Finding finding : findings) {
            if (leavesOpen(finding)) {
                because.add(
                        finding.ruling().rule().title()
                                + finding.wheel().map(w -> " (" + w + ")").orElse("")
                                + ": "
                                + word(finding));
            }
        }
        if (!isAirProven()) {
            because.add(
                    "No pressure, air loss or low-air warning was measured against a rule that"
                            + " decides.");
        }
        return because.isEmpty() ? Verdict.FIT_TO_MOVE : Verdict.NOT_PROVEN;
    }

    private boolean isAirProven() {
        for (Finding finding : findings) {
            if (provesAir(finding)) {
                return true;
            }
        }
        return false;
    }

    /** Without at least one of these passed, nothing is known of the air system. */
    private static boolean provesAir(Finding finding) {
        boolean ofAir =
                switch (finding.ruling().rule().check()) {
                    case GOVERNOR_CUT_IN,
                            GOVERNOR_CUT_OUT,
                            LOW_AIR_WARNING,
                            BUILD_UP,
                            AIR_LOSS_APPLIED,
                            AIR_LOSS_RELEASED ->
                            true;
                    default -> false;
                };
        return ofAir && finding.decides() && finding.status() == Status.MET;
    }

    private static boolean leavesOpen(Finding finding) {
        if (!finding.decides()) {
            return false;
        }
        boolean unconfirmed = finding.ruling().rule().weight().standing() == Standing.UNCONFIRMED;
        return switch (finding.status()) {
            case UNDETERMINED, SPOILED, NOT_CHECKED -> true;
            case NOT_MET -> unconfirmed;
            case MET, NOT_APPLICABLE -> false;
        };
    }

    private static String word(Finding finding) {
        return switch (finding.status()) {
            case SPOILED -> "spoiled";
            case NOT_CHECKED -> "not checked";
            case NOT_MET -> "not met, but the limit is unconfirmed";
            default -> "undetermined";
        };
    }

    private static String at(Defect defect) {
        return defect.wheel().map(w -> " at " + w).orElse("");
    }
}
