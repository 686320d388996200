package org.fandown.judgement;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.CheckKind;
import org.fandown.evidence.Inspection;
import org.fandown.rulebook.Fit;
import org.fandown.rulebook.Rulebook;
import org.fandown.rulebook.RulesInForce;
import org.fandown.rulebook.Ruling;
import org.fandown.rulebook.SetAside;

/** Judges inspections of one vehicle by the rules in force for it. Immutable and safe to share. */
public final class Judge {
    private final RulesInForce rules;
    private final List<SetAside> contested;

    private Judge(RulesInForce rules) {
        this.rules = rules;
        this.contested =
                rules.setAside().stream()
                        .filter(s -> s.reason() == SetAside.Reason.CONFLICT && !s.settled())
                        .toList();
    }

    /** A judge by the given rules. */
    public static Judge by(RulesInForce rules) {
        return new Judge(rules);
    }

    /**
     * Judges one inspection by the rules of its place, vehicle and day.
     *
     * @throws IllegalArgumentException if the rulebook has no pack for the place
     */
    public static Judgement judge(Rulebook rulebook, Inspection inspection) {
        OffsetDateTime moment = inspection.moment();
        RulesInForce rules =
                rulebook.inForce(inspection.place(), inspection.vehicle(), moment.toLocalDate());
        return by(rules).judge(inspection);
    }

    /**
     * Judges one inspection.
     *
     * @param inspection an inspection of the vehicle these rules were found for
     */
    public Judgement judge(Inspection inspection) {
        Case before = new Case(inspection, rules);
        List<Finding> findings = new ArrayList<>();
        for (Ruling ruling : rules.rulings()) {
            if (ruling.rule().weight().standing().isJudged()) {
                for (Finding finding : judge(before, ruling)) {
                    findings.add(weighed(before, finding));
                }
            }
        }
        return Sentence.pass(before, findings);
    }

    private static List<Finding> judge(Case before, Ruling ruling) {
        List<Finding> findings = asThoughItFits(before, ruling);
        if (ruling.fit().answer() != Fit.Answer.UNKNOWN) {
            return findings;
        }
        // Where nothing was asked and nothing noted, it does not matter whether the rule applies.
        return findings.isEmpty() || !ruling.decides()
                ? List.of()
                : List.of(WheelJudge.unknownFit(ruling, ruling.fit()));
    }

    private static List<Finding> asThoughItFits(Case before, Ruling ruling) {
        CheckKind kind = ruling.rule().check().kind();
        return switch (kind) {
            case VALUE, BUILD_UP, AIR_LOSS, RESERVE, YES_NO ->
                    list(ReadingJudge.judge(before, ruling));
            case WHEEL_VALUE, WHEEL_YES_NO -> WheelJudge.judge(before, ruling);
            case BRAKE_COUNT -> list(CountJudge.judge(before, ruling));
            case AXLE_MATCH -> FileJudge.axles(before, ruling);
            case DESIGN -> FileJudge.reservoirs(before, ruling);
            case WALK_ROUND -> list(PartsJudge.walkRound(before, ruling));
            case COMPONENT -> list(PartsJudge.condition(before, ruling));
            case REPORT -> List.of(ReportJudge.judge(before, ruling));
            case DUTY -> List.of();
        };
    }

    private static List<Finding> list(Optional<Finding> finding) {
        return finding.isPresent() ? List.of(finding.get()) : List.of();
    }

    /**
     * Softens a finding where the text says "about" or where sources that are not settled disagree.
     */
    private Finding weighed(Case before, Finding finding) {
        if (finding.status() == Status.NOT_MET && finding.ruling().rule().weight().approximate()) {
            return finding.as(
                    Status.UNDETERMINED,
                    Why.of(
                            () ->
                                    finding.why().reason()
                                            + " The text says \"about\", so this alone does not fail.",
                            () -> "Compare with the maker's figure."));
        }
        for (SetAside other : contested) {
            if (other.by().equals(finding.ruling().rule().id())) {
                return contested(before, finding, other);
            }
        }
        return finding;
    }

    private static Finding contested(Case before, Finding finding, SetAside other) {
        for (Finding rival : judge(before, other.ruling())) {
            boolean sameWheel = rival.wheel().equals(finding.wheel());
            boolean bothDecided = isDecided(rival.status()) && isDecided(finding.status());
            if (sameWheel && bothDecided && rival.status() != finding.status()) {
                return finding.as(
                        Status.UNDETERMINED,
                        Why.of(
                                () ->
                                        "Sources disagree. "
                                                + finding.ruling().rule().id()
                                                + ": "
                                                + finding.why().reason()
                                                + " "
                                                + rival.ruling().rule().id()
                                                + ": "
                                                + rival.why().reason(),
                                () ->
                                        "Ask the authority which text holds, or the maker for the figure."));
            }
        }
        return finding;
    }

    private static boolean isDecided(Status status) {
        return status == Status.MET || status == Status.NOT_MET;
    }
}
