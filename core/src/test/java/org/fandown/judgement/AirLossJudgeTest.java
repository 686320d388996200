package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fandown.yard.Packs.rule;

import org.fandown.units.Unit;
import org.fandown.yard.Trial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AirLossJudgeTest {
    /** Sums of a few readings in double arithmetic. */
    private static final double ROUNDING = 1e-9;

    private static final String THREE =
            rule(
                    "xa.loss",
                    "air-loss-applied",
                    "'limit': {'at-most': ['3 psi', '21 kPa'], 'per': '1 min'}, 'words':"
                            + " 'At most 3 psi in one minute.'");

    private static final String EXACT = "'instruments': 'exact', ";

    @ParameterizedTest(name = "{0} to {1} in {2} is {3}: {4}")
    @CsvSource({
        "110 psi, 107 psi, 60 s, 3, MET",
        "110 psi, 106 psi, 60 s, 4, NOT_MET",
        "110 psi, 104 psi, 2 min, 3, MET",
        "110 psi, 103 psi, 2 min, 3.5, NOT_MET",
        "110 psi, 105 psi, 1 min 40 s, 3, MET",
        "760 kPa, 739 kPa, 60 s, 21, MET",
        "760 kPa, 738 kPa, 60 s, 22, NOT_MET"
    })
    void two_readings_give_the_loss_in_the_rule_s_time(
            String start, String end, String time, double lost, Status expected) {
        Finding finding = Trial.of(THREE, EXACT + span(start, end, time)).only();

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.measured().orElseThrow().value()).isEqualTo(lost, within(ROUNDING));
        assertThat(finding.measured().orElseThrow().uncertainty()).isZero();
    }

    @Test
    void two_readings_carry_the_doubt_of_needle_and_clock() {
        Measurement loss =
                Trial.of(THREE, span("110 psi", "108 psi", "60 s")).only().measured().orElseThrow();

        // Needle: 2 x 1/sqrt(6) psi; clock: 2 psi x 2 x 1/sqrt(6) s / 60 s.
        double needle = 0.816496580927726;
        double clock = 2 * 0.816496580927726 / 60;
        assertThat(loss.value()).isEqualTo(2);
        assertThat(loss.unit()).isEqualTo(Unit.PSI);
        assertThat(loss.uncertainty())
                .isEqualTo(Math.sqrt(needle * needle + clock * clock), within(ROUNDING));
    }

    @Test
    void longer_test_halves_the_doubt_and_decides_where_a_minute_could_not() {
        Trial minute = Trial.of(THREE, span("110 psi", "107.5 psi", "1 min"));
        Trial twoMinutes = Trial.of(THREE, span("110 psi", "105 psi", "2 min"));

        assertThat(minute.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(minute.reason()).contains("too close to the limit (at most 3 psi (21 kPa) in");
        assertThat(minute.only().why().advice()).contains("longer");
        assertThat(twoMinutes.status()).isEqualTo(Status.MET);
    }

    @Test
    void loss_noted_as_a_difference_is_a_difference_of_two_readings_too() {
        Finding finding =
                Trial.of(
                                THREE,
                                "'readings': {'air-loss-applied': {'loss': '5 psi', 'time': '60 s'}}")
                        .only();

        assertThat(finding.status()).isEqualTo(Status.NOT_MET);
        assertThat(finding.why().reason())
                .startsWith(
                        "Measured 5 psi \u00b1 0.82 psi, limit at most 3 psi (21 kPa) in 1 min.")
                .endsWith("Rule: At most 3 psi in one minute.");
    }

    @Test
    void several_readings_are_taken_together() {
        Finding finding =
                Trial.of(
                                THREE,
                                EXACT
                                        + "'readings': {'air-loss-applied': {'points': [{'at': '0"
                                        + " s', 'gauge': '110 psi'}, {'at': '20 s', 'gauge': '109"
                                        + " psi'}, {'at': '1 min', 'gauge': '107 psi'}, {'at':"
                                        + " '80 s', 'gauge': '106 psi'}]}}")
                        .only();

        assertThat(finding.measured().orElseThrow().value()).isEqualTo(3, within(ROUNDING));
        assertThat(finding.status()).isEqualTo(Status.MET);
    }

    @Test
    void several_readings_do_not_feign_more_certainty_than_their_steps_allow() {
        Finding finding =
                Trial.of(
                                THREE,
                                "'instruments': {'gauge': '2 psi'}, 'readings':"
                                        + " {'air-loss-applied': {'points': [{'at': '0 s', 'gauge':"
                                        + " '110 psi'}, {'at': '30 s', 'gauge': '109 psi'}, {'at':"
                                        + " '60 s', 'gauge': '108 psi'}]}}")
                        .only();

        // Any of the three may be off by half of 2 psi: the loss lies between 0 and 4 psi.
        assertThat(finding.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(finding.measured().orElseThrow().low()).isLessThanOrEqualTo(0);
        assertThat(finding.measured().orElseThrow().high()).isGreaterThanOrEqualTo(4);
    }

    @Test
    void pressure_that_rose_spoils_the_test() {
        Trial trial = Trial.of(THREE, span("108 psi", "110 psi", "60 s"));

        assertThat(trial.status()).isEqualTo(Status.SPOILED);
        assertThat(trial.reason()).contains("The pressure rose");
        assertThat(trial.only().why().advice()).contains("Switch the engine off");
        assertThat(trial.only().measured().orElseThrow().value()).isEqualTo(-2);
    }

    @Test
    void rise_within_the_doubt_of_the_needle_is_no_rise() {
        assertThat(Trial.of(THREE, span("108 psi", "108.5 psi", "60 s")).status())
                .isEqualTo(Status.MET);
    }

    private static String span(String start, String end, String time) {
        return "'readings': {'air-loss-applied': {'start': '"
                + start
                + "', 'end': '"
                + end
                + "', 'time': '"
                + time
                + "'}}";
    }
}
