package org.fandown.app.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fandown.judgement.Judgement;
import org.fandown.record.BrakingSummary;
import org.fandown.rulebook.Pack;
import org.fandown.rulebook.RulesInForce.Coverage;
import org.fandown.rulebook.SetAside;

/** Cautions, gaps, sources that disagree, and the list of sources, in two columns. */
final class SmallPrintPart {
    private static final String CAUTIONS =
            "Chock before anything else; never go under a vehicle that is not chocked."
                    + " Keep clear of push rods and slack adjusters when brakes apply. Never open a"
                    + " spring-brake chamber. An automatic adjuster out of limit is a symptom, not a"
                    + " thing to turn. Local law, the maker and licensed technicians come first. ";

    private final Judgement judgement;
    private final Required required;
    private final Sources sources;
    private final TwoColumns columns = new TwoColumns();

    private SmallPrintPart(Judgement judgement, Required required, Sources sources) {
        this.judgement = judgement;
        this.required = required;
        this.sources = sources;
    }

    static void print(Tag page, ReportContent content, Required required, Sources sources) {
        SmallPrintPart part = new SmallPrintPart(content.judgement(), required, sources);
        part.cautions(page);
        part.gaps();
        part.contents();
        part.conflicts();
        content.strokesMean().ifPresent(part::assumptions);
        part.proof(content.origin());
        part.sources();
        part.columns.print(page);
    }

    /** Sources that say otherwise than a rule whose finding is on the page. */
    static List<SetAside> conflictsOf(Judgement judgement) {
        return judgement.rules().setAside().stream()
                .filter(aside -> aside.reason() == SetAside.Reason.CONFLICT)
                .filter(
                        aside ->
                                judgement.findings().stream()
                                        .anyMatch(f -> f.ruling().rule().id().equals(aside.by())))
                .toList();
    }

    private void cautions(Tag page) {
        Tag box = page.add("div", "cautions");
        box.add("span", "strong").text("Cautions. ");
        Map<String, List<String>> checked = new LinkedHashMap<>();
        for (Pack pack : judgement.rules().lineage()) {
            checked.computeIfAbsent(pack.checkedOn().toString(), day -> new ArrayList<>())
                    .add(pack.place().code());
        }
        box.text(CAUTIONS + "Rules can be out of date; last checked: ");
        List<String> texts = new ArrayList<>();
        checked.forEach((day, places) -> texts.add(String.join(", ", places) + " on " + day));
        box.text(String.join("; ", texts) + ".");
    }

    private void gaps() {
        List<Coverage> gaps = judgement.rules().gaps();
        if (gaps.isEmpty()) {
            return;
        }
        columns.heading("Not known here");
        Map<String, List<String>> standIns = new LinkedHashMap<>();
        for (Coverage gap : gaps) {
            if (gap.from().isPresent()) {
                standIns.computeIfAbsent(gap.from().get().code(), code -> new ArrayList<>())
                        .add(Words.small(gap.check().title()));
            } else {
                columns.add(gap.check().title() + ": ", "no rule. " + gap.says().strip());
            }
        }
        standIns.forEach(
                (place, checks) ->
                        columns.add(
                                "Rules of " + place + " stand in ",
                                "where "
                                        + judgement.rules().place()
                                        + " has none: "
                                        + String.join(", ", checks)
                                        + "."));
    }

    private void contents() {
        if (required.rulings().isEmpty()) {
            return; // said among the gaps, since every place is expected to have such a rule
        }
        StringBuilder text = new StringBuilder("What ");
        required.rulings().forEach(ruling -> text.append(sources.cite(ruling)).append(' '));
        text.append("asks a report to hold has its place above; fill empty lines by pen.");
        columns.add("", text.toString());
    }

    private void conflicts() {
        List<SetAside> conflicts = conflictsOf(judgement);
        if (conflicts.isEmpty()) {
            return;
        }
        columns.heading("Sources that say otherwise");
        for (SetAside aside : conflicts) {
            String effect =
                    aside.settled()
                            ? "not applied. "
                            : "not applied, not settled: where they differ, nothing is decided. ";
            String why =
                    aside.ruling().rule().kinship().conflict().map(c -> c.why().strip()).orElse("");
            columns.add(
                    aside.ruling().rule().title() + ": ",
                    aside.ruling().limit().toString().strip()
                            + " "
                            + sources.cite(aside.ruling())
                            + ", "
                            + effect
                            + why);
        }
    }

    /** By which key it is signed, what it was made from, and how anybody can check both. */
    private void proof(Origin origin) {
        origin.signer()
                .ifPresent(
                        signer ->
                                columns.add(
                                        "Signed by the site " + Clean.entry(signer.site()) + ": ",
                                        "certificate SHA-256 "
                                                + Words.inGroups(signer.fingerprint())
                                                + ". Compare it with what the site says of itself,"
                                                + " and check by: fandown verify REPORT.pdf"));
        origin.record()
                .ifPresent(
                        record ->
                                columns.add(
                                        "Made from record.json, SHA-256 ",
                                        Words.inGroups(RecordReport.hash(record)) + "."));
    }

    private void assumptions(BrakingSummary summary) {
        List<String> parts = new ArrayList<>();
        for (String assumption : summary.assumptions()) {
            boolean last = parts.size() + 1 == summary.assumptions().size();
            parts.add(assumption + (last ? "." : ";"));
        }
        columns.add("The estimate of braking assumes: ", parts);
    }

    private void sources() {
        if (sources.lastChecked().isEmpty()) {
            return;
        }
        columns.heading(
                "Sources, last checked "
                        + sources.lastChecked().get()
                        + "; their published text was read unless they say otherwise");
        sources.entries().forEach(entry -> columns.add("", entry));
    }
}
