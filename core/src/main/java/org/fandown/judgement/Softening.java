package org.fandown.judgement;

import java.util.ArrayList;
import java.util.List;
import org.fandown.rulebook.SetAside;

/** Softens a finding where the text says "about" or where unsettled sources disagree. */
final class Softening {
    private Softening() {}

    /**
     * The finding as it stands before its rivals.
     *
     * @param rivals rules of sources that disagree with the finding's rule
     */
    static Finding of(Case before, Finding finding, List<SetAside> rivals) {
        if (finding.status() == Status.NOT_MET && finding.ruling().rule().weight().approximate()) {
            return about(finding);
        }
        Finding softened = finding;
        for (SetAside rival : rivals) {
            softened = contested(before, softened, rival);
        }
        return softened;
    }

    private static Finding about(Finding finding) {
        return finding.as(
                Status.UNDETERMINED,
                Why.of(
                        () ->
                                finding.why().reason()
                                        + " The text says \"about\", so this alone does not fail.",
                        () -> "Compare with the maker's figure."));
    }

    private static Finding contested(Case before, Finding finding, SetAside other) {
        List<Finding> rivals = new ArrayList<>();
        Judge.judge(before, other.ruling(), rivals);
        for (Finding rival : rivals) {
            boolean sameWheel = rival.wheel().equals(finding.wheel());
            if (sameWheel && isDecided(finding.status()) && mayDiffer(finding, rival)) {
                return disputed(finding, rival);
            }
        }
        return finding;
    }

    private static Finding disputed(Finding finding, Finding rival) {
        return finding.as(
                Status.UNDETERMINED,
                Why.of(
                        () -> "Sources disagree. " + said(finding) + " " + said(rival),
                        () -> "Ask the authority which text holds, or the maker for the figure."));
    }

    private static String said(Finding finding) {
        return finding.ruling().rule().id() + ": " + finding.why().reason();
    }

    /** A rival that is too close to call may differ too: a coarse gauge does not end a dispute. */
    private static boolean mayDiffer(Finding finding, Finding rival) {
        return rival.status() == Status.UNDETERMINED
                || (isDecided(rival.status()) && rival.status() != finding.status());
    }

    private static boolean isDecided(Status status) {
        return status == Status.MET || status == Status.NOT_MET;
    }
}
