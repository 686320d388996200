package org.fandown.app.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fandown.check.Check;
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
    private final List<Paragraph> paragraphs = new ArrayList<>();

    /** A paragraph with its first words in bold; a heading has no text. */
    private record Paragraph(String lead, String text) {
        private static final int LETTERS_OF_A_LINE = 95;

        int lines() {
            return 1 + (lead.length() + text.length()) / LETTERS_OF_A_LINE;
        }
    }

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
        part.sources();
        part.columns(page);
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
        List<String> checked = new ArrayList<>();
        for (Pack pack : judgement.rules().lineage()) {
            checked.add(pack.place() + " on " + pack.checkedOn());
        }
        box.text(CAUTIONS + "Rules can be out of date; last checked: ");
        box.text(String.join(", ", checked) + ".");
    }

    private void gaps() {
        List<Coverage> gaps = judgement.rules().gaps();
        if (gaps.isEmpty()) {
            return;
        }
        heading("Not known here");
        Map<String, List<String>> standIns = new LinkedHashMap<>();
        for (Coverage gap : gaps) {
            if (gap.from().isPresent()) {
                standIns.computeIfAbsent(gap.from().get().code(), code -> new ArrayList<>())
                        .add(Words.small(gap.check().title()));
            } else {
                add(gap.check().title() + ": ", "no rule. " + gap.says().strip());
            }
        }
        standIns.forEach(
                (place, checks) ->
                        add(
                                "Rules of " + place + " stand in ",
                                "where "
                                        + judgement.rules().place()
                                        + " has none: "
                                        + String.join(", ", checks)
                                        + "."));
    }

    private void contents() {
        if (required.rulings().isEmpty()) {
            add(Check.REPORT_CONTENTS.title() + ": ", "no rule is known here.");
            return;
        }
        StringBuilder text = new StringBuilder("What ");
        required.rulings().forEach(ruling -> text.append(sources.cite(ruling)).append(' '));
        text.append("asks a report to hold has its place above; fill empty lines by pen.");
        add("", text.toString());
    }

    private void conflicts() {
        List<SetAside> conflicts = conflictsOf(judgement);
        if (conflicts.isEmpty()) {
            return;
        }
        heading("Sources that say otherwise");
        for (SetAside aside : conflicts) {
            String effect =
                    aside.settled()
                            ? "not applied. "
                            : "not applied, not settled: where they differ, nothing is decided. ";
            String why =
                    aside.ruling().rule().kinship().conflict().map(c -> c.why().strip()).orElse("");
            add(
                    aside.ruling().rule().title() + ": ",
                    aside.ruling().limit().toString().strip()
                            + " "
                            + sources.cite(aside.ruling())
                            + ", "
                            + effect
                            + why);
        }
    }

    private void assumptions(BrakingSummary summary) {
        add("The estimate of braking assumes: ", String.join("; ", summary.assumptions()) + ".");
    }

    private void sources() {
        if (sources.lastChecked().isEmpty()) {
            return;
        }
        heading(
                "Sources, last checked "
                        + sources.lastChecked().get()
                        + "; their published text was read unless they say otherwise");
        sources.entries().forEach(entry -> add("", entry));
    }

    private void heading(String text) {
        paragraphs.add(new Paragraph(text, ""));
    }

    private void add(String lead, String text) {
        paragraphs.add(new Paragraph(lead, text));
    }

    /** Fills the left column to about half of the lines and the right one with the rest. */
    private void columns(Tag page) {
        int left = (paragraphs.stream().mapToInt(Paragraph::lines).sum() + 1) / 2;
        Tag row = page.add("table", "small columns").columns(List.of(50, 50)).add("tr");
        Tag column = row.add("td", "first");
        Tag other = row.add("td");
        for (Paragraph paragraph : paragraphs) {
            boolean fits = left > (paragraph.text().isEmpty() ? 1 : 0);
            Tag line = (fits ? column : other).add("div");
            line.add("span", "strong").text(paragraph.lead());
            line.text(paragraph.text());
            left = fits ? left - paragraph.lines() : 0;
        }
    }
}
