package org.fandown.referee;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.check.Verdict;
import org.fandown.evidence.ClaimedDefect;
import org.fandown.evidence.PartReading;
import org.fandown.evidence.Reading;
import org.fandown.evidence.Statement;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Judgement;
import org.fandown.judgement.Status;
import org.fandown.practice.HiddenFault;
import org.fandown.practice.Run;

/** Holds what was concluded against what was written down, and against what is really wrong. */
final class Conclusions {
    private final Run run;
    private final Attempts attempts;
    private final Judgement judged;
    private final Set<Check> doubtful;
    private final List<Feedback> found = new ArrayList<>();

    /**
     * The conclusions of a run.
     *
     * @param judged what follows from what was written down
     * @param doubtful checks that were spoiled, not made, or written down wrong
     */
    Conclusions(Run run, Attempts attempts, Judgement judged, Set<Check> doubtful) {
        this.run = run;
        this.attempts = attempts;
        this.judged = judged;
        this.doubtful = doubtful;
    }

    List<Feedback> mistakes() {
        Optional<Statement.Conclude> said = attempts.conclusion();
        if (said.isEmpty()) {
            add(
                    Item.VERDICT,
                    "The run ended without a verdict.",
                    "Nobody knows whether the vehicle may move.",
                    "Say whether it is fit to move, not fit, or not proven.");
        } else {
            verdict(said.get());
        }
        List<HiddenFault> faults = HiddenFault.of(run.scenario());
        boolean missed = false;
        boolean known = false;
        for (HiddenFault fault : faults) {
            if (!isFound(fault) && !isWithinLimits(fault)) {
                boolean matters = matters(fault);
                missed |= matters;
                missed(fault, matters);
            }
            known |= isRecorded(fault) && matters(fault);
        }
        said.ifPresent(s -> phantoms(s, faults));
        boolean fit = said.map(s -> s.verdict() == Verdict.FIT_TO_MOVE).orElse(false);
        boolean failed =
                judged.verdict() == Verdict.NOT_FIT_TO_MOVE
                        || (known && judged.verdict() == Verdict.NOT_PROVEN);
        if (fit && (failed || missed)) {
            add(
                    Item.FIT,
                    failed
                            ? "The vehicle was called fit to move against the record: "
                                    + judged.because().get(0)
                                    + "."
                            : "The vehicle was called fit to move with a fault that matters here.",
                    "An unfit vehicle goes on the road.",
                    "Call a vehicle fit only when every check was made and passed.");
        }
        return found;
    }

    private void add(Item item, String happened, String led, String instead) {
        double when = attempts.conclusion().isPresent() ? attempts.concludedAt() : run.seconds();
        found.add(new Feedback(item, when, happened, led, instead));
    }

    private void verdict(Statement.Conclude said) {
        if (said.verdict() == judged.verdict()) {
            return;
        }
        String because =
                judged.because().isEmpty()
                        ? "every check was written down and passed"
                        : judged.because().get(0);
        add(
                Item.VERDICT,
                "The verdict was '"
                        + said.verdict().title()
                        + "'; from what was written down follows '"
                        + judged.verdict().title()
                        + "'.",
                Words.sentence(because),
                "Go through the record line by line before you conclude.");
    }

    /**
     * Whether a defect that was named, a figure or a part that was written down shows the fault.
     */
    private boolean isFound(HiddenFault fault) {
        boolean named =
                attempts.conclusion().stream()
                        .flatMap(said -> said.defects().stream())
                        .anyMatch(defect -> names(defect, fault));
        return named || isRecorded(fault);
    }

    private static boolean names(ClaimedDefect defect, HiddenFault fault) {
        boolean there = defect.at().isEmpty() || fault.at().isEmpty();
        boolean place = there || defect.at().equals(fault.at());
        boolean thing =
                defect.check().map(fault.checks()::contains).orElse(false)
                        || defect.part().map(fault.parts()::contains).orElse(false);
        return place && thing;
    }

    private boolean isRecorded(HiddenFault fault) {
        for (Finding finding : judged.findings()) {
            boolean own = fault.checks().contains(finding.ruling().rule().check());
            boolean at =
                    finding.wheel().isEmpty()
                            || fault.at().isEmpty()
                            || finding.wheel().get().toString().equals(fault.at());
            if (own && at && finding.status() == Status.NOT_MET) {
                return true;
            }
        }
        for (Check check : fault.checks()) {
            Reading reading = attempts.all().readings().get(check);
            if (reading instanceof Reading.Answer answer && !answer.yes()) {
                return true;
            }
        }
        return fault.parts().stream().anyMatch(this::isWrittenUp);
    }

    private boolean isWrittenUp(Component part) {
        PartReading reading = attempts.all().parts().get(part);
        return reading != null && !reading.found().isEmpty();
    }

    /** Whether a check that is meant to find it was soundly made, and its limits were kept. */
    private boolean isWithinLimits(HiddenFault fault) {
        for (Finding finding : judged.findings()) {
            Check check = finding.ruling().rule().check();
            boolean measured =
                    finding.status() == Status.MET
                            && finding.decides()
                            && finding.measured().isPresent();
            if (measured && fault.checks().contains(check) && !doubtful.contains(check)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a rule of the place that decides asks about it. */
    private boolean matters(HiddenFault fault) {
        for (Finding finding : judged.findings()) {
            boolean own = fault.checks().contains(finding.ruling().rule().check());
            if (own && finding.decides() && finding.status() != Status.NOT_APPLICABLE) {
                return true;
            }
        }
        return false;
    }

    private void missed(HiddenFault fault, boolean matters) {
        List<String> how = new ArrayList<>();
        fault.checks().forEach(check -> how.add(Words.inside(check.title())));
        fault.parts().forEach(part -> how.add("a look at: " + Words.inside(part.title())));
        add(
                matters ? Item.FOUND : Item.NOTICED,
                "Not found: " + fault + ".",
                matters
                        ? "The place has a rule about it."
                        : "No rule of the place asks about it, but it is there.",
                how.isEmpty()
                        ? "Look and listen for it."
                        : "It is found by " + String.join("; ", how) + ".");
    }

    /** Defects that nothing is behind: no fault, and no sound figure beyond a limit. */
    private void phantoms(Statement.Conclude said, List<HiddenFault> faults) {
        for (ClaimedDefect defect : said.defects()) {
            boolean real = faults.stream().anyMatch(fault -> names(defect, fault));
            if (!real && !isBacked(defect)) {
                add(
                        Item.PHANTOM,
                        "Called a defect: "
                                + defect
                                + "; nothing of the kind is wrong with the vehicle.",
                        "A sound vehicle stands still, and the next report is believed less.",
                        "Make the check again before you call a defect.");
            }
        }
        boolean called = said.verdict() == Verdict.NOT_FIT_TO_MOVE && said.defects().isEmpty();
        if (called && faults.isEmpty() && !anySoundFailure()) {
            add(
                    Item.PHANTOM,
                    "The vehicle was called not fit to move; nothing is wrong with it.",
                    "A sound vehicle stands still.",
                    "Make the check again before you call a vehicle unfit.");
        }
    }

    private boolean isBacked(ClaimedDefect defect) {
        return judged.findings().stream()
                .anyMatch(
                        f ->
                                isSoundFailure(f)
                                        && defect.check()
                                                .map(c -> c == f.ruling().rule().check())
                                                .orElse(false));
    }

    private boolean anySoundFailure() {
        return judged.findings().stream().anyMatch(this::isSoundFailure);
    }

    private boolean isSoundFailure(Finding finding) {
        return finding.status() == Status.NOT_MET
                && !doubtful.contains(finding.ruling().rule().check());
    }
}
