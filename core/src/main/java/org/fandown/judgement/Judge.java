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
    private final List<Question> questions;
    private final Groundwork groundwork;
    private final int room;

    /**
     * A rule to be judged.
     *
     * @param ruling the rule
     * @param rivals rules of sources that disagree with it, where the matter is not settled
     * @param plain whether a finding stands as it is found
     */
    private record Question(Ruling ruling, List<SetAside> rivals, boolean plain) {}

    private Judge(RulesInForce rules) {
        this.rules = rules;
        this.questions =
                rules.rulings().stream()
                        .filter(r -> r.rule().weight().standing().isJudged())
                        .map(r -> question(rules, r))
                        .toList();
        this.groundwork = Groundwork.of(rules, rules.vehicle());
        this.room = questions.stream().mapToInt(q -> 1 + q.ruling().wheels().size()).sum();
    }

    private static Question question(RulesInForce rules, Ruling ruling) {
        List<SetAside> rivals = rivals(rules, ruling);
        boolean approximate = ruling.rule().weight().approximate();
        return new Question(ruling, rivals, rivals.isEmpty() && !approximate);
    }

    private static List<SetAside> rivals(RulesInForce rules, Ruling ruling) {
        return rules.setAside().stream()
                .filter(s -> s.reason() == SetAside.Reason.CONFLICT && !s.settled())
                .filter(s -> s.by().equals(ruling.rule().id()))
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
        Case before = caseOf(inspection);
        List<Finding> findings = new ArrayList<>(room);
        for (Question question : questions) {
            if (question.plain()) {
                judge(before, question.ruling(), findings);
            } else {
                weigh(before, question, findings);
            }
        }
        return Sentence.pass(before, findings);
    }

    @SuppressWarnings("ReferenceEquality") // An equal vehicle costs the groundwork again, no more.
    private Case caseOf(Inspection inspection) {
        return inspection.vehicle() == groundwork.vehicle()
                ? new Case(inspection, rules, groundwork)
                : Case.of(inspection, rules);
    }

    /** Adds what one rule says to the findings. */
    static void judge(Case before, Ruling ruling, List<Finding> findings) {
        if (ruling.fit().answer() != Fit.Answer.UNKNOWN) {
            asThoughItFits(before, ruling, findings);
        } else if (ruling.decides()) {
            // Where nothing was asked and nothing noted, it does not matter whether the rule
            // applies.
            List<Finding> perhaps = new ArrayList<>();
            asThoughItFits(before, ruling, perhaps);
            if (!perhaps.isEmpty()) {
                findings.add(WheelJudge.unknownFit(ruling, ruling.fit()));
            }
        }
    }

    private static void asThoughItFits(Case before, Ruling ruling, List<Finding> findings) {
        CheckKind kind = ruling.rule().check().kind();
        switch (kind) {
            case VALUE, BUILD_UP, AIR_LOSS, RESERVE, YES_NO ->
                    add(ReadingJudge.judge(before, ruling), findings);
            case WHEEL_VALUE, WHEEL_YES_NO -> WheelJudge.judge(before, ruling, findings);
            case BRAKE_COUNT -> add(CountJudge.judge(before, ruling), findings);
            case AXLE_MATCH -> FileJudge.axles(before, ruling, findings);
            case DESIGN -> FileJudge.reservoirs(before, ruling, findings);
            case WALK_ROUND -> add(PartsJudge.walkRound(before, ruling), findings);
            case COMPONENT -> add(PartsJudge.condition(before, ruling), findings);
            case REPORT -> findings.add(ReportJudge.judge(before, ruling));
            case DUTY -> {}
        }
    }

    private static void add(Optional<Finding> finding, List<Finding> findings) {
        if (finding.isPresent()) {
            findings.add(finding.get());
        }
    }

    private static void weigh(Case before, Question question, List<Finding> findings) {
        List<Finding> found = new ArrayList<>();
        judge(before, question.ruling(), found);
        for (Finding finding : found) {
            findings.add(Softening.of(before, finding, question.rivals()));
        }
    }
}
