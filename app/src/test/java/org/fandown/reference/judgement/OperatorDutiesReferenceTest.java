package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.util.List;
import org.fandown.app.files.RulePacks;
import org.fandown.check.PlaceCode;
import org.fandown.judgement.OperatorRisk;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Limit.DutyTerm;
import org.fandown.rulebook.Limit.TermSense;
import org.fandown.rulebook.Rule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OperatorDutiesReferenceTest {

    @Source(
            work = "Being a goods vehicle operator: maintaining your vehicles (UK government page)",
            edition = "text of 2026-11-25",
            where = "records",
            kind = Kind.AGENCY,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "record of {0} on {1}: still to be kept: {2}")
    @CsvSource({
        "2025-08-24T09:00:00Z, 2026-11-25T09:00:00Z, false, 'records: 15 months and a day old'",
        "2025-08-25T09:00:00Z, 2026-11-25T09:00:00Z, true, 'records: 15 months old to the hour'",
        "2025-08-26T09:00:00Z, 2026-11-25T09:00:00Z, true, 'records: a day short of 15 months'"
    })
    void record_may_be_thrown_away_when_15_months_have_passed(
            OffsetDateTime record, OffsetDateTime now, boolean kept, String where) {
        DutyTerm term = duty("GB", "gb.report-retention").term().orElseThrow();

        assertThat(term.sense()).isEqualTo(TermSense.KEEP);
        assertThat(term.term()).hasToString("15 months");
        assertThat(!now.isAfter(term.term().from(record))).isEqualTo(kept);
    }

    @Source(
            work = "COM(2012) 382, the proposal that became Directive 2014/47/EU",
            edition = "2012",
            where = "Annex I, risk rating",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "the directive as adopted was not read; division by checks follows the sum")
    @Test
    void one_major_and_two_minor_defects_in_year_1_weigh_36_points() {
        OperatorRisk year1 = new OperatorRisk(0, 1, 2);

        assertThat(year1.points()).isEqualTo(10 + 2 * 1);
        assertThat(OperatorRisk.weighed(List.of(year1))).isEqualTo((10 + 2 * 1) * 3).isEqualTo(36);
    }

    @Source(
            work = "COM(2012) 382, the proposal that became Directive 2014/47/EU",
            edition = "2012",
            where = "Annex I, risk rating",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "the directive as adopted was not read")
    @Test
    void dangerous_defect_weighs_40_and_years_1_2_and_3_count_three_times_twice_and_once() {
        OperatorRisk dangerous = new OperatorRisk(1, 0, 0);
        OperatorRisk none = new OperatorRisk(0, 0, 0);

        assertThat(dangerous.points()).isEqualTo(40);
        assertThat(OperatorRisk.weighed(List.of(dangerous))).isEqualTo(40 * 3);
        assertThat(OperatorRisk.weighed(List.of(none, dangerous))).isEqualTo(40 * 2);
        assertThat(OperatorRisk.weighed(List.of(none, none, dangerous))).isEqualTo(40 * 1);
    }

    private static Limit.Duty duty(String place, String id) {
        return RulePacks.builtIn()
                .rulebookFor(new PlaceCode(place))
                .orElseThrow()
                .pack(new PlaceCode(place))
                .orElseThrow()
                .rules()
                .stream()
                .filter(rule -> rule.id().equals(id))
                .map(OperatorDutiesReferenceTest::limit)
                .findFirst()
                .orElseThrow();
    }

    private static Limit.Duty limit(Rule rule) {
        return (Limit.Duty) rule.values().get(0).limit();
    }
}
