package org.fandown.record;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.fandown.judgement.Judgement;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Limit.TermSense;
import org.fandown.rulebook.Ruling;
import org.fandown.rulebook.Standing;

/** Dates that follow from the moment of an inspection: valid until, kept until, handed in by. */
public final class FollowingDates {
    private FollowingDates() {}

    /**
     * A date and the rule it follows from.
     *
     * @param sense what the date means
     * @param until the last moment
     * @param ruling the rule
     */
    public record Following(TermSense sense, OffsetDateTime until, Ruling ruling) {}

    /** The dates, in the order of the rules; none of practice on a simulated vehicle. */
    public static List<Following> of(Judgement judgement) {
        if (judgement.inspection().simulated()) {
            return List.of();
        }
        List<Following> dates = new ArrayList<>();
        for (Ruling ruling : judgement.rules().rulings()) {
            if (ruling.limit() instanceof Limit.Duty duty && isDue(ruling)) {
                duty.term()
                        .ifPresent(
                                term ->
                                        dates.add(
                                                new Following(
                                                        term.sense(),
                                                        term.term()
                                                                .from(
                                                                        judgement
                                                                                .inspection()
                                                                                .moment()),
                                                        ruling)));
            }
        }
        return dates;
    }

    /** Whether a date for the report follows; from what is no longer law none does. */
    private static boolean isDue(Ruling ruling) {
        return ruling.rule().weight().standing() != Standing.HISTORIC && concernsReport(ruling);
    }

    private static boolean concernsReport(Ruling ruling) {
        return switch (ruling.rule().check()) {
            case INSPECTION_VALIDITY, REPORT_RETENTION, REPORT_SUBMISSION -> true;
            default -> false;
        };
    }
}
