package org.fandown.app.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Judgement;
import org.fandown.judgement.Status;
import org.fandown.record.BrakingSummary;
import org.fandown.record.BrakingTable;
import org.fandown.record.FollowingDates;
import org.fandown.record.FollowingDates.Following;
import org.fandown.rulebook.Limit.TermSense;
import org.fandown.rulebook.RulesInForce.Coverage;
import org.fandown.rulebook.SetAside;
import org.fandown.rulebook.Standing;

/** What stands below the findings: remarks, what the strokes mean, what is not covered, dates. */
final class JudgementNotes {
    private final Judgement judgement;
    private final Sources sources;
    private final Screen screen;

    JudgementNotes(Judgement judgement, Sources sources, Screen screen) {
        this.judgement = judgement;
        this.sources = sources;
        this.screen = screen;
    }

    void print(Optional<BrakingSummary> braking, boolean assumptions) {
        remarks();
        braking.ifPresent(summary -> braking(summary, assumptions));
        gaps();
        dates();
    }

    /** Advisory findings that are not met: worth knowing, never deciding. */
    private void remarks() {
        List<Finding> remarks =
                judgement.findings().stream()
                        .filter(
                                f ->
                                        f.ruling().rule().weight().standing() == Standing.ADVISORY
                                                && f.status() == Status.NOT_MET)
                        .toList();
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
                    JudgementText.name(finding)
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

    private void braking(BrakingSummary summary, boolean assumptions) {
        screen.heading("What the strokes mean (an estimate, not a finding)");
        BrakingTable table = new BrakingTable(summary);
        TextTable text = new TextTable();
        text.add(row("  Drums", table.states()));
        for (String thing : table.things()) {
            text.add(
                    row(
                            "  " + thing,
                            table.states().stream()
                                    .map(state -> table.value(thing, state))
                                    .toList()));
        }
        screen.table(text);
        table.remarks().forEach(remark -> screen.wrapped("  ", remark));
        if (assumptions) {
            screen.wrapped("  ", "Assumed: " + String.join("; ", summary.assumptions()) + ".");
        } else {
            screen.wrapped(
                    "  ",
                    "It rests on "
                            + summary.assumptions().size()
                            + " assumptions, which --assumptions lists.");
        }
    }

    private static String[] row(String first, List<String> rest) {
        List<String> cells = new ArrayList<>();
        cells.add(first);
        cells.addAll(rest);
        return cells.toArray(new String[0]);
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
        Map<String, String> marks = new LinkedHashMap<>();
        for (Following date : dates) {
            marks.merge(
                    sense(date) + date.until(), sources.mark(date.ruling()), (a, b) -> a + " " + b);
        }
        marks.forEach((text, numbers) -> screen.wrapped("  ", text + " " + numbers));
    }

    private static String sense(Following date) {
        return date.sense() == TermSense.LASTS
                ? "Valid until "
                : date.sense() == TermSense.KEEP ? "Keep until " : "Hand in by ";
    }
}
