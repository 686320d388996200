package org.fandown.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Severity;
import org.fandown.check.Verdict;
import org.fandown.evidence.EarlierDefect;
import org.fandown.rulebook.Standing;

/** From findings and defects to the verdict. */
final class Sentence {
    private final List<Finding> findings;
    private final List<Defect> defects;
    private final List<EarlierDefect> earlier;

    private Sentence(List<Finding> findings, List<Defect> defects, List<EarlierDefect> earlier) {
        this.findings = findings;
        this.defects = defects;
        this.earlier = earlier;
    }

    static Judgement pass(Case before, List<Finding> findings) {
        List<Defect> defects = Defects.of(before, findings);
        List<String> because = new ArrayList<>();
        Verdict verdict =
                new Sentence(findings, defects, before.inspection().earlier()).verdict(because);
        return new Judgement(
                before.inspection(), before.rules(), findings, defects, verdict, because);
    }

    private Verdict verdict(List<String> because) {
        for (Defect defect : defects) {
            if (defect.severity().equals(Optional.of(Severity.MAJOR))) {
                because.add("Major defect: " + defect.text() + at(defect));
            }
        }
        for (EarlierDefect defect : earlier) {
            if (grounds(defect)) {
                because.add("Not put right since " + defect.since() + ": " + defect.text());
            }
        }
        if (!because.isEmpty()) {
            return Verdict.NOT_FIT_TO_MOVE;
        }
        open(because);
        return because.isEmpty() ? Verdict.FIT_TO_MOVE : Verdict.NOT_PROVEN;
    }

    private static boolean grounds(EarlierDefect defect) {
        return defect.outOfService() || defect.severity().equals(Optional.of(Severity.MAJOR));
    }

    /** What leaves a vehicle without major defect unproven. */
    private void open(List<String> because) {
        for (EarlierDefect defect : earlier) {
            because.add(
                    "Reported on "
                            + defect.since()
                            + ", and neither put right nor certified as not needing it: "
                            + defect.text());
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
