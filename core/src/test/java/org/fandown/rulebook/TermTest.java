package org.fandown.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.OffsetDateTime;
import org.fandown.rulebook.Term.TermUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TermTest {
    @ParameterizedTest(name = "{1} {2} from {0} is {3}")
    @CsvSource({
        "2026-03-02T07:30:00-05:00, 24, HOUR,  2026-03-03T07:30:00-05:00",
        "2026-12-31T23:15:00+13:00, 24, HOUR,  2027-01-01T23:15:00+13:00",
        "2026-02-20T06:00:00-05:00, 20, DAY,   2026-03-12T06:00:00-05:00",
        "2028-02-20T06:00:00-05:00, 20, DAY,   2028-03-11T06:00:00-05:00",
        "2026-08-31T08:00:00-07:00, 6,  MONTH, 2027-02-28T08:00:00-07:00",
        "2027-08-31T08:00:00-07:00, 6,  MONTH, 2028-02-29T08:00:00-07:00",
        "2026-03-31T08:00:00-07:00, 1,  MONTH, 2026-04-30T08:00:00-07:00",
        "2026-11-30T08:00:00-07:00, 3,  MONTH, 2027-02-28T08:00:00-07:00",
        "2028-02-29T08:00:00-07:00, 1,  YEAR,  2029-02-28T08:00:00-07:00",
        "2028-02-29T08:00:00-07:00, 4,  YEAR,  2032-02-29T08:00:00-07:00",
        "2099-12-31T08:00:00-07:00, 1,  YEAR,  2100-12-31T08:00:00-07:00"
    })
    void term_ends_on_the_calendar(
            OffsetDateTime start, int amount, TermUnit unit, OffsetDateTime end) {
        assertThat(new Term(amount, unit).from(start)).isEqualTo(end);
    }

    @Test
    void a_month_later_is_not_always_the_last_of_the_month() {
        Term month = new Term(1, TermUnit.MONTH);
        OffsetDateTime endOfFebruary = OffsetDateTime.parse("2026-02-28T08:00:00-07:00");

        assertThat(month.from(endOfFebruary))
                .isEqualTo(OffsetDateTime.parse("2026-03-28T08:00:00-07:00"));
    }

    @Test
    void term_of_nothing_is_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Term(0, TermUnit.DAY));
        assertThatIllegalArgumentException().isThrownBy(() -> new Term(-6, TermUnit.MONTH));
    }

    @Test
    void terms_are_said_in_words() {
        assertThat(new Term(24, TermUnit.HOUR)).hasToString("24 h");
        assertThat(new Term(1, TermUnit.DAY)).hasToString("1 day");
        assertThat(new Term(20, TermUnit.DAY)).hasToString("20 days");
        assertThat(new Term(1, TermUnit.MONTH)).hasToString("1 month");
        assertThat(new Term(6, TermUnit.MONTH)).hasToString("6 months");
        assertThat(new Term(1, TermUnit.YEAR)).hasToString("1 year");
        assertThat(new Term(2, TermUnit.YEAR)).hasToString("2 years");
    }
}
