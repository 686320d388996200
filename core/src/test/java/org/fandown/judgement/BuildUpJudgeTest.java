package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fandown.yard.Packs.rule;

import org.fandown.units.Unit;
import org.fandown.yard.Trial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BuildUpJudgeTest {
    /** Sums of a few readings in double arithmetic. */
    private static final double ROUNDING = 1e-9;

    private static final String RULE =
            rule(
                    "xa.build-up",
                    "build-up",
                    "'window': {'from': ['85 psi', '587 kPa'], 'to': ['100 psi', '690 kPa']},"
                            + " 'limit': {'at-most': '2 min'}, 'words': 'At a fast idle.'");

    private static final String EXACT = "'instruments': 'exact', ";

    @ParameterizedTest
    @CsvSource({"119 s, MET", "2 min, MET", "121 s, NOT_MET"})
    void time_between_the_rule_s_own_ends_is_taken_as_it_is(String time, Status expected) {
        Finding finding = Trial.of(RULE, EXACT + span("85 psi", "100 psi", time)).only();

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains("limit at most 2 min");
    }

    @Test
    void needle_and_clock_make_the_time_doubtful() {
        Measurement time = measured(RULE, span("85 psi", "100 psi", "90 s"));

        // Clock: 0.8165 s; needle: 0.8165 psi of 15 psi in 90 s.
        double clock = 0.816496580927726;
        double needle = 0.816496580927726 * 90 / 15;
        assertThat(time.uncertainty())
                .isEqualTo(Math.sqrt(clock * clock + needle * needle), within(ROUNDING));
        assertThat(Trial.of(RULE, span("85 psi", "100 psi", "117 s")).status())
                .isEqualTo(Status.UNDETERMINED);
    }

    @Test
    void ends_printed_in_the_other_unit_are_the_same_window() {
        Measurement time = measured(RULE, EXACT + span("587 kPa", "690 kPa", "90 s"));

        assertThat(time.value()).isEqualTo(90, within(ROUNDING));
        assertThat(time.uncertainty()).isEqualTo(0, within(ROUNDING));
    }

    @Test
    void ends_a_needle_s_width_off_are_brought_to_the_window_and_the_shift_is_doubt() {
        // 586 to 690 kPa is 104 kPa; the rule times 103 kPa.
        Measurement time = measured(RULE, EXACT + span("586 kPa", "690 kPa", "104 s"));

        assertThat(time.value()).isEqualTo(103, within(ROUNDING));
        assertThat(time.uncertainty()).isEqualTo(1, within(ROUNDING));
        assertThat(time.unit()).isEqualTo(Unit.SECOND);
    }

    @Test
    void wider_span_proves_a_window_that_was_quick_enough() {
        Trial trial = Trial.of(RULE, span("70 psi", "110 psi", "110 s"));

        assertThat(trial.status()).isEqualTo(Status.MET);
        assertThat(trial.reason()).startsWith("Measured 110 s");
    }

    @Test
    void wider_span_that_took_too_long_proves_nothing() {
        Trial trial = Trial.of(RULE, span("70 psi", "110 psi", "150 s"));

        assertThat(trial.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(trial.reason()).contains("wider span (70 psi to 110 psi)");
        assertThat(trial.only().why().advice())
                .contains("from 85 psi (587 kPa) to 100 psi (690 kPa)")
                .contains("several moments");
        assertThat(trial.defects()).isEmpty();
    }

    @Test
    void end_two_psi_off_is_another_span() {
        Trial trial = Trial.of(RULE, span("85 psi", "102 psi", "125 s"));

        assertThat(trial.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(trial.reason()).contains("wider span (85 psi to 102 psi)");
    }

    @Test
    void wider_span_cannot_prove_that_the_window_took_long_enough() {
        String slow =
                rule(
                        "xa.build-up",
                        "build-up",
                        "'window': {'from': '85 psi', 'to': '100 psi'}, 'limit': {'range': ['10"
                                + " s', '2 min']}");

        assertThat(Trial.of(slow, span("70 psi", "110 psi", "30 s")).status())
                .isEqualTo(Status.UNDETERMINED);
    }

    @Test
    void narrower_span_is_spoiled() {
        Trial trial = Trial.of(RULE, span("90 psi", "100 psi", "40 s"));

        assertThat(trial.status()).isEqualTo(Status.SPOILED);
        assertThat(trial.reason())
                .contains("Timed from 90 psi to 100 psi")
                .contains("from 85 psi (587 kPa) to 100 psi (690 kPa)")
                .contains("Rule: At a fast idle.");
        assertThat(Trial.of(RULE, span("80 psi", "95 psi", "40 s")).status())
                .isEqualTo(Status.SPOILED);
    }

    @Test
    void several_readings_are_interpolated_at_the_ends_of_the_window() {
        // 85 psi at 10 + 20 x 5/10 = 20 s, 100 psi at 50 + 20 x 5/10 = 60 s.
        Measurement time =
                measured(
                        RULE,
                        EXACT
                                + points(
                                        "0 s", "75 psi", "10 s", "80 psi", "30 s", "90 psi", "50 s",
                                        "95 psi", "70 s", "105 psi"));

        assertThat(time.value()).isEqualTo(40, within(ROUNDING));
    }

    @Test
    void readings_at_the_very_ends_of_the_window_need_no_interpolation() {
        assertThat(
                        measured(
                                        RULE,
                                        EXACT
                                                + points(
                                                        "0 s", "85 psi", "40 s", "95 psi", "61 s",
                                                        "100 psi"))
                                .value())
                .isEqualTo(61, within(ROUNDING));
    }

    @Test
    void needle_that_stands_still_for_a_while_is_timed_over_the_whole_climb() {
        assertThat(
                        measured(
                                        RULE,
                                        EXACT
                                                + points(
                                                        "0 s", "80 psi", "10 s", "85 psi", "30 s",
                                                        "85 psi", "60 s", "100 psi"))
                                .value())
                .isEqualTo(50, within(ROUNDING));
    }

    @Test
    void several_readings_that_do_not_reach_the_window_are_spoiled() {
        Trial trial = Trial.of(RULE, points("0 s", "80 psi", "10 s", "85 psi", "60 s", "98 psi"));

        assertThat(trial.status()).isEqualTo(Status.SPOILED);
        assertThat(trial.reason()).contains("Timed from 80 psi to 98 psi");
    }

    @Test
    void window_that_needs_another_reading_stays_open_without_it() {
        String share =
                rule(
                        "xa.build-up",
                        "build-up",
                        "'window': {'from': '0 kPa', 'to': {'percent': 80, 'of':"
                                + " 'governor-cut-out'}}, 'limit': {'at-most': '5 min'}");
        Trial without = Trial.of(share, span("0 kPa", "680 kPa", "200 s"));

        assertThat(without.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(without.reason()).isEqualTo("The window needs a reading of governor-cut-out.");
        assertThat(
                        Trial.of(
                                        share,
                                        EXACT
                                                + "'readings': {'governor-cut-out': '850 kPa',"
                                                + " 'build-up': {'from': '0 kPa', 'to': '680 kPa',"
                                                + " 'time': '200 s'}}")
                                .status())
                .isEqualTo(Status.MET);
    }

    private static Measurement measured(String rule, String evidence) {
        return Trial.of(rule, evidence).only().measured().orElseThrow();
    }

    private static String span(String from, String to, String time) {
        return "'readings': {'build-up': {'from': '"
                + from
                + "', 'to': '"
                + to
                + "', 'time': '"
                + time
                + "'}}";
    }

    private static String points(String... timesAndGauges) {
        StringBuilder points = new StringBuilder("'readings': {'build-up': {'points': [");
        for (int i = 0; i < timesAndGauges.length; i += 2) {
            points.append(i == 0 ? "" : ", ").append("{'at': '").append(timesAndGauges[i]);
            points.append("', 'gauge': '").append(timesAndGauges[i + 1]).append("'}");
        }
        return points.append("]}}").toString();
    }
}
