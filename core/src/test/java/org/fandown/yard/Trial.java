package org.fandown.yard;

import java.util.List;
import org.fandown.check.Verdict;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.InspectionReader;
import org.fandown.evidence.VehicleSource;
import org.fandown.judgement.Defect;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Judge;
import org.fandown.judgement.Judgement;
import org.fandown.judgement.Status;
import org.fandown.rulebook.Rulebook;

/** An inspection written down, judged, and its findings looked up. */
public final class Trial {
    private final Judgement judgement;

    private Trial(Judgement judgement) {
        this.judgement = judgement;
    }

    /**
     * Judges a truck in the place XA by one rule.
     *
     * @param rule the text of the rule, its id beginning with {@code xa.}
     * @param evidence keys of the inspection, as in {@link #inspection}
     */
    public static Trial of(String rule, String evidence) {
        return of(Packs.of(rule), Trucks.TRUCK, evidence);
    }

    /** Judges a vehicle in the place XA. */
    public static Trial of(Rulebook book, String vehicle, String evidence) {
        return of(book, inspection("XA", vehicle, evidence));
    }

    /** Judges an inspection. */
    public static Trial of(Rulebook book, Inspection inspection) {
        return new Trial(Judge.judge(book, inspection));
    }

    /**
     * Reads an inspection made on 2 March 2026.
     *
     * @param vehicle the text of the vehicle
     * @param evidence further keys, each {@code 'key': value}, with commas between; may be empty
     */
    public static Inspection inspection(String place, String vehicle, String evidence) {
        String json =
                "{'place': '"
                        + place
                        + "', "
                        + (evidence.contains("'moment'")
                                ? ""
                                : "'moment': '2026-03-02T07:30:00-05:00', ")
                        + "'vehicle': "
                        + vehicle
                        + (evidence.isEmpty() ? "" : ", " + evidence)
                        + "}";
        return new InspectionReader(VehicleSource.NONE).read(Quoted.read("inspection.json", json));
    }

    /** The only finding. */
    public Finding only() {
        return one("all rules", judgement.findings());
    }

    /** The only finding under the rule. */
    public Finding finding(String rule) {
        return one(rule, findings(rule));
    }

    /** The finding under the rule at one wheel. */
    public Finding finding(String rule, String wheel) {
        return one(
                rule + " at " + wheel,
                findings(rule).stream()
                        .filter(f -> f.wheel().map(w -> w.toString().equals(wheel)).orElse(false))
                        .toList());
    }

    /** Every finding under the rule. */
    public List<Finding> findings(String rule) {
        return judgement.findings().stream()
                .filter(f -> f.ruling().rule().id().equals(rule))
                .toList();
    }

    /** The status of the only finding. */
    public Status status() {
        return only().status();
    }

    /** The reason of the only finding. */
    public String reason() {
        return only().why().reason();
    }

    /** The verdict. */
    public Verdict verdict() {
        return judgement.verdict();
    }

    /** What decided the verdict. */
    public List<String> because() {
        return judgement.because();
    }

    /** The defects. */
    public List<Defect> defects() {
        return judgement.defects();
    }

    /** The whole judgement. */
    public Judgement judgement() {
        return judgement;
    }

    private static Finding one(String what, List<Finding> findings) {
        if (findings.size() != 1) {
            throw new AssertionError(
                    findings.size() + " findings under " + what + ", not one: " + findings);
        }
        return findings.get(0);
    }
}
