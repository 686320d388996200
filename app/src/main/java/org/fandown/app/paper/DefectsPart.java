package org.fandown.app.paper;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.check.Severity;
import org.fandown.check.Verdict;
import org.fandown.evidence.EarlierDefect;
import org.fandown.judgement.Defect;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Judgement;
import org.fandown.judgement.Measurement;

/** The defects, or the words that none were found. */
final class DefectsPart {
    private final Judgement judgement;

    private DefectsPart(Judgement judgement) {
        this.judgement = judgement;
    }

    static void print(Tag parent, Judgement judgement) {
        new DefectsPart(judgement).print(parent);
    }

    private void print(Tag parent) {
        found(parent);
        earlier(parent);
    }

    /** What earlier reports found and nobody settled. */
    private void earlier(Tag parent) {
        List<EarlierDefect> open = judgement.inspection().earlier();
        if (!open.isEmpty()) {
            parent.add("h2").text("Still open from earlier reports");
            Tag table = parent.add("table", "defects").columns(List.of(17, 83));
            open.forEach(defect -> earlier(table.add("tr"), defect));
        }
    }

    private static void earlier(Tag row, EarlierDefect defect) {
        boolean major = defect.severity().equals(Optional.of(Severity.MAJOR));
        row.add("td")
                .add("span", major ? "severity major" : "severity")
                .text(defect.severity().map(s -> major ? "MAJOR" : "minor").orElse("not rated"));
        Tag text = row.add("td");
        text.add("span", "strong").text(Clean.entry(defect.text()));
        text.text(", since " + defect.since());
        if (defect.outOfService()) {
            text.add("span", "flag").text(" out of service");
        }
    }

    private void found(Tag parent) {
        parent.add("h2").text("Defects");
        if (judgement.defects().isEmpty()) {
            parent.add("div", "strong").text("No defects were found.");
            if (judgement.verdict() == Verdict.NOT_PROVEN) {
                parent.add("div")
                        .text(
                                "But not everything was proven that the place asks for: see Findings.");
            }
            return;
        }
        Tag table = parent.add("table", "defects").columns(List.of(17, 83));
        judgement.defects().stream()
                .sorted(Comparator.comparing(DefectsPart::rank))
                .forEach(defect -> row(table.add("tr"), defect));
    }

    private static int rank(Defect defect) {
        return defect.severity().map(s -> s == Severity.MAJOR ? 0 : 2).orElse(1);
    }

    private void row(Tag row, Defect defect) {
        Optional<Severity> severity = defect.severity();
        boolean major = severity.equals(Optional.of(Severity.MAJOR));
        Tag cell = row.add("td");
        cell.add("span", major ? "severity major" : "severity")
                .text(severity.map(s -> major ? "MAJOR" : "minor").orElse("not rated"));
        Tag text = row.add("td");
        text.add("span", "strong").text(what(defect));
        measured(defect).ifPresent(m -> text.text(", " + Words.value(m)));
        if (defect.rule().map(rule -> rule.weight().outOfService()).orElse(false)) {
            text.add("span", "flag").text(" out of service");
        }
        if (defect.rule().isEmpty()) {
            text.add("span", "minor").text(" (noted by the inspector)");
        }
    }

    /** The part and what is wrong with it, or the check that was not met, and where. */
    private static String what(Defect defect) {
        String wheel = defect.wheel().map(w -> w + ": ").orElse("");
        String text = Clean.entry(defect.text());
        boolean check = Check.byId(defect.component()).isPresent();
        return wheel + (check ? text : component(defect.component()) + ": " + text);
    }

    private Optional<Measurement> measured(Defect defect) {
        return judgement.findings().stream()
                .filter(f -> defect.rule().equals(Optional.of(f.ruling().rule())))
                .filter(f -> f.wheel().equals(defect.wheel()))
                .findFirst()
                .flatMap(Finding::measured);
    }

    private static String component(String id) {
        for (Component part : Component.values()) {
            if (part.id().equals(id)) {
                return part.title();
            }
        }
        return Words.capital(Words.spaced(id));
    }
}
