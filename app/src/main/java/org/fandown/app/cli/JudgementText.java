package org.fandown.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fandown.evidence.Inspection;
import org.fandown.judgement.Defect;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Judgement;
import org.fandown.judgement.Status;
import org.fandown.record.BrakingSummary;
import org.fandown.record.PracticeNotice;
import org.fandown.rulebook.Provenance;

/** A judgement as text: the verdict first, then what is wrong or open, then what is in order. */
final class JudgementText {
    private final Judgement judgement;
    private final Optional<BrakingSummary> braking;
    private final boolean assumptions;
    private final Screen screen;
    private final Sources sources = new Sources();

    JudgementText(
            Judgement judgement,
            Optional<BrakingSummary> braking,
            boolean assumptions,
            Screen screen) {
        this.assumptions = assumptions;
        this.judgement = judgement;
        this.braking = braking;
        this.screen = screen;
    }

    void print() {
        head();
        defects();
        open();
        met();
        new JudgementNotes(judgement, sources, screen).print(braking, assumptions);
        sources.print(screen);
        Cautions.print(screen);
        screen.done();
    }

    private void head() {
        Inspection inspection = judgement.inspection();
        String verdict = judgement.verdict().title();
        boolean simulated = inspection.simulated();
        String said = simulated ? PracticeNotice.WORD + ": " + verdict : verdict;
        screen.title(said.toUpperCase(Locale.ROOT));
        if (simulated) {
            screen.wrapped("", PracticeNotice.TEXT);
        }
        screen.line(
                inspection.vehicle().name()
                        + ", "
                        + inspection.place()
                        + " "
                        + judgement.rules().lineage().get(0).name()
                        + ", "
                        + inspection.moment());
        judgement.because().forEach(text -> screen.wrapped("  - ", text));
    }

    private void defects() {
        if (judgement.defects().isEmpty()) {
            return;
        }
        screen.heading("Defects");
        for (Defect defect : judgement.defects()) {
            screen.wrapped(
                    "  ",
                    defect.severity()
                                    .map(s -> s.name().toLowerCase(Locale.ROOT))
                                    .orElse("severity not stated")
                            + ": "
                            + defect.text()
                            + defect.wheel().map(w -> " at " + w).orElse(""));
        }
    }

    /** Whatever decides and is not met, with its words. */
    private void open() {
        List<Finding> open = findings(f -> f.decides() && f.status() != Status.MET);
        if (open.isEmpty()) {
            return;
        }
        screen.heading("Not met or not decided");
        for (Finding finding : open) {
            screen.wrapped(
                    "  ",
                    mark(finding.status())
                            + "  "
                            + name(finding)
                            + " "
                            + sources.mark(finding.ruling()));
            screen.wrapped("      ", finding.why().reason());
            if (!finding.why().advice().isEmpty()) {
                screen.wrapped("      ", "Next: " + finding.why().advice());
            }
            if (finding.ruling().rule().provenance() == Provenance.FROM_MEMORY) {
                screen.wrapped(
                        "      ", "This limit was not compared with its text; have it confirmed.");
            }
        }
    }

    private void met() {
        List<Finding> met = findings(f -> f.decides() && f.status() == Status.MET);
        if (met.isEmpty()) {
            return;
        }
        screen.heading("Met");
        TextTable table = new TextTable();
        String last = "";
        for (Finding finding : met) {
            String title = finding.ruling().rule().title();
            table.add(
                    "  " + (finding.wheel().isPresent() && title.equals(last) ? "" : title),
                    finding.wheel().map(Object::toString).orElse(""),
                    finding.measured()
                            .map(Object::toString)
                            .orElseGet(() -> Limits.answer(finding)),
                    finding.measured().isPresent() ? Limits.text(finding) : "",
                    sources.mark(finding.ruling()));
            last = title;
        }
        screen.table(table);
    }

    private List<Finding> findings(java.util.function.Predicate<Finding> wanted) {
        List<Finding> found = new ArrayList<>();
        judgement.findings().stream().filter(wanted).forEach(found::add);
        return found;
    }

    static String name(Finding finding) {
        return finding.ruling().rule().title() + finding.wheel().map(w -> ", " + w).orElse("");
    }

    private static String mark(Status status) {
        return switch (status) {
            case NOT_MET -> "NOT MET";
            case UNDETERMINED -> "UNDETERMINED";
            case SPOILED -> "SPOILED";
            case NOT_CHECKED -> "NOT CHECKED";
            case MET -> "met";
            case NOT_APPLICABLE -> "does not apply";
        };
    }
}
