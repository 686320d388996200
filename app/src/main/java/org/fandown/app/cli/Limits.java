package org.fandown.app.cli;

import org.fandown.judgement.Allowed;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Measurement;
import org.fandown.rulebook.Limit;
import org.fandown.units.Quantities;

/** The limit of a finding in a few words. */
final class Limits {
    private Limits() {}

    static String text(Finding finding) {
        boolean isTable = finding.ruling().limit() instanceof Limit.Strokes;
        if (isTable && finding.allowed().isPresent() && finding.measured().isPresent()) {
            return upper(finding.allowed().get(), finding.measured().get());
        }
        return finding.ruling().limit().toString();
    }

    /** What was noted, where nothing was measured. */
    static String answer(Finding finding) {
        Limit limit = finding.ruling().limit();
        if (limit instanceof Limit.Absent) {
            return limit.toString();
        }
        if (limit instanceof Limit.ReportHolds) {
            return "complete";
        }
        if (limit instanceof Limit.LookAt) {
            return "all looked at";
        }
        return limit instanceof Limit.SameAcross ? "alike" : "yes";
    }

    private static String upper(Allowed allowed, Measurement measured) {
        return allowed.upper()
                .map(e -> "at most " + Quantities.print(e.value(), measured.unit()))
                .orElse("");
    }
}
