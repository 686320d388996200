package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fandown.yard.Packs.rule;

import java.util.Optional;
import org.fandown.units.Unit;
import org.fandown.yard.Trial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumericJudgeTest {
    /** Conversion of units in double arithmetic. */
    private static final double ROUNDING = 1e-9;

    @Test
    void value_well_inside_is_met_with_value_doubt_and_limit() {
        Trial trial = cutOut("'limit': {'at-most': ['135 psi', '930 kPa']}", "'120 psi'");
        Finding finding = trial.only();

        assertThat(finding.status()).isEqualTo(Status.MET);
        assertThat(finding.why().reason())
                .isEqualTo("Measured 120 psi \u00b1 0.5 psi, limit at most 135 psi (930 kPa).");
        assertThat(finding.why().advice()).isEmpty();
        assertThat(finding.measured()).contains(new Measurement(120, Unit.PSI, 0.5));
        assertThat(finding.allowed())
                .contains(new Allowed(Optional.empty(), Optional.of(new Edge(135, true))));
        assertThat(finding.wheel()).isEmpty();
    }

    @Test
    void value_well_outside_is_not_met_and_the_rule_speaks() {
        Trial trial =
                cutOut(
                        "'limit': {'at-most': '135 psi'}, 'words': 'Cut-out may not exceed 135"
                                + " psi.'",
                        "'140 psi'");

        assertThat(trial.status()).isEqualTo(Status.NOT_MET);
        assertThat(trial.reason())
                .contains("Measured 140 psi")
                .contains("limit at most 135 psi")
                .endsWith("Rule: Cut-out may not exceed 135 psi.");
    }

    @Test
    void value_too_close_to_call_says_by_how_much_it_may_be_off_and_what_to_do() {
        Trial trial = cutOut("'limit': {'at-most': '135 psi'}", "'135 psi'");

        assertThat(trial.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(trial.reason())
                .contains("135 psi \u00b1 0.5 psi")
                .contains("too close to the limit (at most 135 psi)")
                .contains("off by 0.5 psi");
        assertThat(trial.only().why().advice()).contains("finer gauge");
    }

    @ParameterizedTest(name = "{0} under {1} is {2}")
    @CsvSource({
        "3 psi,   20 kPa, MET",
        "3 psi,   21 kPa, MET",
        "20 kPa,  20 kPa, MET",
        "21 kPa,  20 kPa, NOT_MET",
        "21 kPa,  21 kPa, MET",
        "22 kPa,  21 kPa, NOT_MET",
        "0.2 bar, 20 kPa, MET",
        "0.21 bar, 20 kPa, NOT_MET",
        "0.21 bar, 21 kPa, MET"
    })
    void reading_is_compared_with_the_figure_printed_for_its_unit(
            String reading, String printed, Status expected) {
        Trial trial =
                Trial.of(
                        rule(
                                "xa.lamp",
                                "stop-lamp-pressure",
                                "'limit': {'at-most': ['3 psi', '" + printed + "']}"),
                        "'instruments': 'exact', 'readings': {'stop-lamp-pressure': '"
                                + reading
                                + "'}");

        assertThat(trial.status()).isEqualTo(expected);
    }

    @Test
    void edge_is_shown_in_the_unit_of_the_reading() {
        Finding finding = cutOut("'limit': {'at-most': ['135 psi', '930 kPa']}", "'9 bar'").only();

        assertThat(finding.measured().orElseThrow().unit()).isEqualTo(Unit.BAR);
        assertThat(finding.allowed().orElseThrow().upper().orElseThrow().value())
                .isEqualTo(9.3, within(ROUNDING));
        assertThat(finding.measured().orElseThrow().uncertainty())
                .isEqualTo(0.03447378646, within(ROUNDING));
    }

    // Which needle

    @ParameterizedTest
    @CsvSource({"highest, 140, NOT_MET", "lowest, 120, MET", "each, 140, NOT_MET"})
    void gauge_says_which_of_two_needles_counts(String gauge, double counted, Status expected) {
        Trial trial =
                cutOut(
                        "'limit': {'at-most': '135 psi'}, 'gauge': '" + gauge + "'",
                        "['120 psi', '140 psi']");

        assertThat(trial.status()).isEqualTo(expected);
        assertThat(trial.only().measured().orElseThrow().value()).isEqualTo(counted);
    }

    @Test
    void worst_of_several_needles_decides_where_each_counts() {
        Trial trial =
                cutOut("'limit': {'at-most': '135 psi'}", "['120 psi', '135 psi', '110 psi']");

        assertThat(trial.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(trial.only().measured().orElseThrow().value()).isEqualTo(135);
    }

    // Rounding

    @ParameterizedTest(name = "{0} is taken for {1}")
    @CsvSource({
        "0.44 s, 0.4, MET",
        "0.45 s, 0.5, MET",
        "0.54 s, 0.5, MET",
        "0.55 s, 0.6, NOT_MET",
        "0.549 s, 0.5, MET"
    })
    void value_is_rounded_half_up_where_the_text_rounds(
            String time, double taken, Status expected) {
        Trial trial =
                Trial.of(
                        rule(
                                "xa.time",
                                "application-time",
                                "'limit': {'at-most': '0.5 s'}, 'rounded-to': '0.1 s'"),
                        "'instruments': 'exact', 'readings': {'application-time': '" + time + "'}");

        assertThat(trial.status()).isEqualTo(expected);
        assertThat(trial.only().measured().orElseThrow().value())
                .isEqualTo(taken, within(ROUNDING));
    }

    @Test
    void half_that_no_double_holds_is_rounded_up_all_the_same() {
        Trial trial =
                Trial.of(
                        rule(
                                "xa.time",
                                "release-time",
                                "'limit': {'at-most': '1.4 s'}, 'rounded-to': '0.1 s'"),
                        "'instruments': 'exact', 'readings': {'release-time': '1.45 s'}");

        assertThat(trial.status()).isEqualTo(Status.NOT_MET);
    }

    private static Trial cutOut(String keys, String reading) {
        return Trial.of(
                rule("xa.cut-out", "governor-cut-out", keys),
                "'readings': {'governor-cut-out': " + reading + "}");
    }
}
