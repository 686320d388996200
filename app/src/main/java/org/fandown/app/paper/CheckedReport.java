package org.fandown.app.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was found out about a report.
 *
 * @param lines what came of each check
 * @param record the record it was made from, canonical JSON, empty if it holds none that is sound
 * @param seal the record's link in the chains of the site, empty if none is in it
 */
public record CheckedReport(List<CheckLine> lines, Optional<String> record, Optional<String> seal) {
    /** Copies the list. */
    public CheckedReport {
        lines = List.copyOf(lines);
    }

    /** The same with more checks. */
    public CheckedReport and(List<CheckLine> more) {
        List<CheckLine> all = new ArrayList<>(lines);
        all.addAll(more);
        return new CheckedReport(all, record, seal);
    }
}
