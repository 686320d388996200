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
import org.fandown.record.FollowingDates;
import org.fandown.record.FollowingDates.Following;
import org.fandown.rulebook.Limit.TermSense;
import org.fandown.rulebook.Provenance;
import org.fandown.rulebook.RulesInForce.Coverage;
import org.fandown.rulebook.SetAside;
import org.fandown.rulebook.Standing;

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
        remarks();
        braking();
        gaps();
        dates();
        sources.print(screen);
        Cautions.print(screen);
        screen.done();
    }

    private void head() {
        Inspection inspection = judgement.inspection();
        screen.title(judgement.verdict().title().toUpperCase(Locale.ROOT));
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
                    finding.measured().map(Object::toString).orElse("yes"),
                    finding.measured().isPresent() ? Limits.text(finding) : "",
                    sources.mark(finding.ruling()));
            last = title;
        }
        screen.table(table);
    }

    /** Advisory findings that are not met: worth knowing, never deciding. */
    private void remarks() {
        List<Finding> remarks =
                findings(
                        f ->
                                f.ruling().rule().weight().standing() == Standing.ADVISORY
                                        && f.status() == Status.NOT_MET);
        List<SetAside> contested =
                judgement.rules().setAside().stream()
                        .filter(s -> s.reason() == SetAside.Reason.CONFLICT)
                        .filter(
                                s ->
                                        judgement
                                                .inspection()
                                                .reading(s.ruling().rule().check())
                                                .isPresent())
                        .toList();
        if (remarks.isEmpty() && contested.isEmpty()) {
            return;
        }
        screen.heading("Worth knowing (decides nothing)");
        for (Finding finding : remarks) {
            screen.wrapped(
                    "  ",
                    name(finding)
                            + ": "
                            + finding.why().reason()
                            + " "
                            + sources.mark(finding.ruling()));
        }
        for (SetAside aside : contested) {
            screen.wrapped(
                    "  ",
                    aside.ruling().rule().title()
                            + ": another text says "
                            + aside.ruling().limit()
                            + " "
                            + sources.mark(aside.ruling())
                            + "; applied instead: "
                            + aside.by()
                            + ". "
                            + aside.ruling()
                                    .rule()
                                    .kinship()
                                    .conflict()
                                    .map(c -> c.why().strip())
                                    .orElse(""));
        }
    }

    private void braking() {
        if (braking.isEmpty()) {
            return;
        }
        screen.heading("What the strokes mean (an estimate, not a finding)");
        TextTable table = new TextTable();
        braking.get()
                .lines()
                .forEach(line -> table.add("  " + line.what(), line.value(), line.remark()));
        screen.table(table);
        if (assumptions) {
            screen.wrapped(
                    "  ", "Assumed: " + String.join("; ", braking.get().assumptions()) + ".");
        } else {
            screen.wrapped(
                    "  ",
                    "It rests on "
                            + braking.get().assumptions().size()
                            + " assumptions, which --assumptions lists.");
        }
    }

    private void gaps() {
        if (judgement.rules().gaps().isEmpty()) {
            return;
        }
        screen.heading("What the rules of this place do not cover here");
        for (Coverage gap : judgement.rules().gaps()) {
            screen.wrapped(
                    "  ",
                    gap.check().title()
                            + ": "
                            + gap.from()
                                    .map(place -> "rule of " + place + " used. ")
                                    .orElse("no rule known. ")
                            + gap.says().strip());
        }
    }

    private void dates() {
        List<Following> dates = FollowingDates.of(judgement);
        if (dates.isEmpty()) {
            return;
        }
        screen.heading("Dates");
        for (Following date : dates) {
            String sense =
                    date.sense() == TermSense.LASTS
                            ? "Valid until "
                            : date.sense() == TermSense.KEEP ? "Keep until " : "Hand in by ";
            screen.wrapped("  ", sense + date.until() + " " + sources.mark(date.ruling()));
        }
    }

    private List<Finding> findings(java.util.function.Predicate<Finding> wanted) {
        List<Finding> found = new ArrayList<>();
        judgement.findings().stream().filter(wanted).forEach(found::add);
        return found;
    }

    private static String name(Finding finding) {
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
