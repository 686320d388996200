package org.fandown.reference.judgement;

import java.util.List;
import org.fandown.app.files.DocumentText;
import org.fandown.app.files.RulePacks;
import org.fandown.check.Verdict;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.InspectionReader;
import org.fandown.evidence.VehicleSource;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Judge;
import org.fandown.judgement.Judgement;
import org.fandown.judgement.Status;
import org.fandown.rulebook.Rulebook;
import org.fandown.rulebook.RulesInForce;
import org.fandown.rulebook.Ruling;
import org.fandown.rulebook.SetAside;

/** A written-down inspection, judged by the packs that come with the program. */
final class Judged {
    private static final RulePacks PACKS = RulePacks.builtIn();

    private final Judgement judgement;

    private Judged(Judgement judgement) {
        this.judgement = judgement;
    }

    /** Reads an inspection document with exact instruments and every test made as printed. */
    static Judged inspection(String place, String day, String vehicle, String evidence) {
        return at(place, day + "T07:30:00-05:00", vehicle, evidence);
    }

    /** The same, made at a given moment. */
    static Judged at(String place, String moment, String vehicle, String evidence) {
        String head =
                """
                place: %s
                moment: %s
                instruments: exact
                conditions: as-printed
                vehicle:
                """
                        .formatted(place, moment);
        return of(head + vehicle.indent(2) + evidence);
    }

    private static Judged of(String yaml) {
        Inspection inspection =
                new InspectionReader(VehicleSource.NONE)
                        .read(DocumentText.yaml("inspection.yaml", yaml));
        Rulebook rulebook = PACKS.rulebookFor(inspection.place()).orElseThrow();
        return new Judged(Judge.judge(rulebook, inspection));
    }

    /** The only finding under the rule. */
    Finding finding(String rule) {
        return only(rule, findings(rule));
    }

    /** The finding under the rule at one wheel. */
    Finding finding(String rule, String wheel) {
        return only(rule + " at " + wheel, at(wheel, findings(rule)));
    }

    /** Every finding under the rule. */
    List<Finding> findings(String rule) {
        return judgement.findings().stream().filter(f -> isOf(f, rule)).toList();
    }

    /** The rule ids that are not met, in the order of the findings. */
    List<String> notMet() {
        return judgement.findings().stream()
                .filter(f -> f.status() == Status.NOT_MET)
                .map(f -> f.ruling().rule().id())
                .toList();
    }

    /**
     * The finding under a rule that the rulebook knows but sets aside for another, as it would be
     * if it were applied.
     */
    Finding ifApplied(String rule) {
        return only(rule, findingsIfApplied(rule));
    }

    /** The same at one wheel. */
    Finding ifApplied(String rule, String wheel) {
        return only(rule + " at " + wheel, at(wheel, findingsIfApplied(rule)));
    }

    private List<Finding> findingsIfApplied(String rule) {
        RulesInForce rules = judgement.rules();
        Ruling ruling =
                rules.setAside().stream()
                        .map(SetAside::ruling)
                        .filter(r -> r.rule().id().equals(rule))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError(rule + " is not set aside."));
        RulesInForce alone =
                new RulesInForce(
                        rules.lineage(),
                        rules.vehicle(),
                        rules.day(),
                        List.of(ruling),
                        List.of(),
                        List.of());
        return Judge.by(alone).judge(judgement.inspection()).findings();
    }

    Verdict verdict() {
        return judgement.verdict();
    }

    Judgement judgement() {
        return judgement;
    }

    private static boolean isOf(Finding finding, String rule) {
        return finding.ruling().rule().id().equals(rule);
    }

    private static List<Finding> at(String wheel, List<Finding> findings) {
        return findings.stream()
                .filter(f -> f.wheel().map(w -> w.toString().equals(wheel)).orElse(false))
                .toList();
    }

    private static Finding only(String what, List<Finding> findings) {
        if (findings.size() != 1) {
            throw new AssertionError(findings.size() + " findings under " + what + ", not one.");
        }
        return findings.get(0);
    }

    /** Where the value in force can be read, as {@code section} of a source. */
    static String section(Finding finding) {
        return finding.ruling().value().source().section();
    }
}
