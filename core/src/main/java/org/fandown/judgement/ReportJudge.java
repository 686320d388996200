package org.fandown.judgement;

import java.util.ArrayList;
import java.util.List;
import org.fandown.check.ReportItem;
import org.fandown.evidence.Report;
import org.fandown.evidence.Report.Entry;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Ruling;
import org.fandown.vehicle.Part;

/**
 * Judges whether the report holds what the place asks for. Statements and signatures are printed
 * for signing, so their absence while judging is not held against the report; date, findings and
 * defects are always on it.
 */
final class ReportJudge {
    private ReportJudge() {}

    static Finding judge(Case before, Ruling ruling) {
        List<ReportItem> missing = new ArrayList<>();
        for (ReportItem item : ((Limit.ReportHolds) ruling.limit()).items()) {
            if (!holds(before, item)) {
                missing.add(item);
            }
        }
        if (missing.isEmpty()) {
            return Finding.of(
                    ruling, Status.MET, Why.of(() -> "The report holds what the place asks for."));
        }
        return Finding.of(
                ruling,
                Status.NOT_CHECKED,
                Why.of(
                        () -> "The report is incomplete: " + titles(missing) + " missing.",
                        () -> "Add it under report."));
    }

    private static boolean holds(Case before, ReportItem item) {
        Report report = before.inspection().report();
        return switch (item) {
            case PLATE -> report.holds(Entry.PLATE);
            case OPERATOR -> report.holds(Entry.OPERATOR);
            case LOCATION -> report.holds(Entry.LOCATION);
            case INSPECTOR_NAME -> report.holds(Entry.INSPECTOR);
            case ODOMETER -> report.holds(Entry.ODOMETER);
            case ODOMETER_IF_FITTED ->
                    report.holds(Entry.ODOMETER) || !before.vehicle().has(Part.ODOMETER);
            // The vehicle file names every unit; the rest is on the page or is signed there.
            case PLATE_OR_UNIT,
                    TRAILER_UNITS,
                    DATE_AND_TIME,
                    DEFECTS_OR_NONE,
                    PARTS_INSPECTED,
                    INSPECTOR_SIGNATURE,
                    INSPECTOR_STATEMENT,
                    DRIVER_SIGNATURE_IF_DIFFERENT,
                    REPAIR_STATEMENT,
                    WORK_DONE,
                    RESULT ->
                    true;
        };
    }

    private static String titles(List<ReportItem> items) {
        StringBuilder text = new StringBuilder();
        for (ReportItem item : items) {
            text.append(text.length() == 0 ? "" : ", ").append(item.title());
        }
        return text.toString();
    }
}
