package org.fandown.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fandown.yard.Packs.rule;

import java.time.OffsetDateTime;
import java.util.List;
import org.fandown.record.FollowingDates.Following;
import org.fandown.rulebook.Limit.TermSense;
import org.fandown.yard.Packs;
import org.fandown.yard.Trial;
import org.fandown.yard.Trucks;
import org.junit.jupiter.api.Test;

class FollowingDatesTest {
    private static final String VALID =
            rule(
                    "xa.valid",
                    "inspection-validity",
                    "'limit': {'duty': 'An inspection is good for a day.', 'lasts': '24 h'}");

    private static final String KEPT =
            rule(
                    "xa.kept",
                    "report-retention",
                    "'limit': {'duty': 'Keep the report.', 'keep': '6 months'}");

    private static final String HANDED_IN =
            rule(
                    "xa.handed-in",
                    "report-submission",
                    "'limit': {'duty': 'Hand the report in.', 'within': '20 days'}");

    @Test
    void dates_follow_from_the_moment_of_the_inspection_in_the_order_of_the_rules() {
        List<Following> dates = dates("2026-08-31T07:30:00-05:00", KEPT, HANDED_IN, VALID);

        assertThat(dates)
                .extracting(Following::sense)
                .containsExactly(TermSense.LASTS, TermSense.KEEP, TermSense.WITHIN);
        assertThat(dates)
                .extracting(Following::until)
                .containsExactly(
                        OffsetDateTime.parse("2026-09-01T07:30:00-05:00"),
                        OffsetDateTime.parse("2027-02-28T07:30:00-05:00"),
                        OffsetDateTime.parse("2026-09-20T07:30:00-05:00"));
        assertThat(dates.get(0).ruling().rule().id()).isEqualTo("xa.valid");
    }

    @Test
    void duty_without_a_time_or_on_another_matter_gives_no_date() {
        String untimed =
                rule("xa.keep", "report-retention", "'limit': {'duty': 'Keep the report.'}");
        String periodic =
                rule(
                        "xa.yearly",
                        "periodic-inspection",
                        "'limit': {'duty': 'Once a year.', 'within': '1 year'}");

        assertThat(dates("2026-03-02T07:30:00-05:00", untimed, periodic)).isEmpty();
    }

    @Test
    void duty_that_is_no_longer_law_gives_no_date() {
        String historic =
                rule(
                        "xa.kept",
                        "report-retention",
                        "'standing': 'historic', 'limit': {'duty': 'Keep the report.', 'keep': '3"
                                + " months'}");

        assertThat(dates("2026-03-02T07:30:00-05:00", historic)).isEmpty();
    }

    @Test
    void each_of_two_rules_on_one_matter_gives_its_date() {
        String shorter =
                rule(
                        "xa.kept-short",
                        "report-retention",
                        "'limit': {'duty': 'Keep the report.', 'keep': '3 months'}");

        assertThat(dates("2026-03-02T07:30:00-05:00", KEPT, shorter)).hasSize(2);
    }

    private static List<Following> dates(String moment, String... rules) {
        return FollowingDates.of(
                Trial.of(Packs.of(rules), Trucks.TRUCK, "'moment': '" + moment + "'").judgement());
    }
}
