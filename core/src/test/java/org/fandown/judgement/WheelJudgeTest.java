package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fandown.yard.Packs.rule;

import org.fandown.yard.Packs;
import org.fandown.yard.Trial;
import org.fandown.yard.Trucks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WheelJudgeTest {
    /** Sums and conversions in double arithmetic. */
    private static final double ROUNDING = 1e-9;

    private static final String EXACT = "'instruments': 'exact', ";

    private static final String TABLE =
            "'limit': {'stroke-table': {'clamp': {'20': ['1 3/4 in', '45 mm'], '30': ['2 in', '51"
                    + " mm']}, 'clamp-long': {'24': '2 in'}, 'clamp-long-3-in': {'24': '2 1/2 in'},"
                    + " 'bolt': {'C': '1 3/4 in'}, 'rotochamber': {'36': '2 3/4 in'}, 'dd3': {'30':"
                    + " '2 1/4 in'}, 'unlisted': {'percent-of-rated-stroke': 80}}}";

    private static final String STROKES =
            rule(
                    "xa.stroke",
                    "pushrod-applied-stroke",
                    TABLE + ", 'words': 'No stroke may exceed the limit of its chamber.'");

    @ParameterizedTest(name = "{0} at {1} is {2}")
    @CsvSource({
        "1L, 1 3/4 in,  MET",
        "1L, 1 13/16 in,NOT_MET",
        "1L, 45 mm,     MET",
        "1L, 46 mm,     NOT_MET",
        "1L, 4.5 cm,    MET",
        "2R, 2 in,      MET",
        "2R, 2 1/16 in, NOT_MET",
        "2R, 51 mm,     MET",
        "2R, 52 mm,     NOT_MET"
    })
    void each_wheel_has_the_limit_of_its_chamber(String wheel, String stroke, Status expected) {
        Trial trial =
                Trial.of(
                        STROKES,
                        EXACT + "'wheels': {'" + wheel + "': {'applied': '" + stroke + "'}}");

        assertThat(trial.finding("xa.stroke", wheel).status()).isEqualTo(expected);
    }

    @Test
    void finding_names_stroke_chamber_and_limit() {
        Finding finding =
                Trial.of(STROKES, "'wheels': {'2L': {'applied': '2 1/4 in'}}")
                        .finding("xa.stroke", "2L");

        assertThat(finding.status()).isEqualTo(Status.NOT_MET);
        assertThat(finding.why().reason())
                .isEqualTo(
                        "Stroke 2 1/4 in \u00b1 0.03 in, limit for clamp 30 2 in. Rule: No stroke"
                                + " may exceed the limit of its chamber.");
        assertThat(finding.measured().orElseThrow().uncertainty())
                .isEqualTo(1.0 / 32, within(ROUNDING));
    }

    @Test
    void stroke_at_its_limit_is_too_close_to_call_with_a_common_rule() {
        Finding finding =
                Trial.of(STROKES, "'wheels': {'2L': {'applied': '2 in'}}")
                        .finding("xa.stroke", "2L");

        assertThat(finding.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(finding.why().reason()).contains("limit for clamp 30 2 in: too close to decide");
        assertThat(finding.why().advice()).contains("finer rule");
    }

    @Test
    void wheels_without_a_stroke_are_not_checked_where_the_place_asks() {
        Trial trial = Trial.of(STROKES, "'wheels': {'2L': {'applied': '1 in'}}");

        assertThat(trial.findings("xa.stroke")).hasSize(4);
        assertThat(trial.finding("xa.stroke", "2L").status()).isEqualTo(Status.MET);
        assertThat(trial.finding("xa.stroke", "1R").status()).isEqualTo(Status.NOT_CHECKED);
    }

    @Test
    void stroke_by_subtraction_has_the_doubt_of_two_readings() {
        Finding finding =
                Trial.of(
                                STROKES,
                                "'wheels': {'2L': {'released': '2 1/4 in', 'fully-applied-length':"
                                        + " '4 in'}}")
                        .finding("xa.stroke", "2L");

        assertThat(finding.measured().orElseThrow().value()).isEqualTo(1.75);
        assertThat(finding.measured().orElseThrow().uncertainty())
                .isEqualTo(2.0 / 16 / Math.sqrt(6), within(ROUNDING));
        assertThat(finding.status()).isEqualTo(Status.MET);
    }

    @ParameterizedTest(name = "{0}: {1} in")
    @CsvSource({
        "clamp 24 long, 2",
        "clamp 24 long 3 in, 2.5",
        "clamp 24 long 76 mm, 2.5",
        "bolt C, 1.75",
        "rotochamber 36, 2.75",
        "dd3 30, 2.25",
        "clamp 16 2 in, 1.6"
    })
    void limit_is_found_by_kind_of_chamber(String chamber, double limit) {
        Finding finding = strokeOf("'" + chamber + "'", "'applied': '1 in'");

        assertThat(finding.allowed().orElseThrow().upper().orElseThrow().value())
                .isEqualTo(limit, within(ROUNDING));
        assertThat(finding.allowed().orElseThrow().upper().orElseThrow().passes()).isTrue();
    }

    @Test
    void actuator_no_table_lists_has_the_limit_marked_on_it() {
        Finding finding =
                strokeOf(
                        "{'mount': 'other', 'type': 'X9', 'rated-stroke': '3 in', 'marked-limit':"
                                + " '2.2 in'}",
                        "'applied': '2.3 in'");

        assertThat(finding.status()).isEqualTo(Status.NOT_MET);
        assertThat(finding.why().reason()).contains("limit for other X9 3 in 2.2 in");
    }

    @Test
    void actuator_no_table_lists_has_a_share_of_the_stroke_marked_on_it() {
        Finding finding =
                strokeOf(
                        "{'mount': 'other', 'type': 'X9', 'rated-stroke': '2.5 in'}",
                        "'applied': '1.9 in'");

        assertThat(finding.status()).isEqualTo(Status.MET);
        assertThat(finding.allowed().orElseThrow().upper().orElseThrow().value())
                .isEqualTo(2, within(ROUNDING));
    }

    @Test
    void chamber_without_any_limit_stays_open() {
        Finding finding = strokeOf("{'mount': 'other', 'type': 'X9'}", "'applied': '1.9 in'");

        assertThat(finding.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(finding.why().reason()).contains("the table lists, or the stroke marked on it");
    }

    @Test
    void limit_the_maker_states_goes_before_the_table() {
        Finding finding =
                Trial.of(
                                STROKES,
                                EXACT
                                        + "'wheels': {'2L': {'applied': '1 7/8 in', 'makers-limit':"
                                        + " '1 3/4 in'}}")
                        .finding("xa.stroke", "2L");

        assertThat(finding.status()).isEqualTo(Status.NOT_MET);
    }

    @Test
    void stroke_measured_at_another_pressure_is_spoiled() {
        String rule =
                rule(
                        "xa.stroke",
                        "pushrod-applied-stroke",
                        "'conditions': {'reservoir-pressure': {'range': ['90 psi', '100 psi']}}, "
                                + TABLE);
        Trial trial =
                Trial.of(
                        rule,
                        "'wheels': {'1L': {'applied': '1 in', 'reservoir-pressure': '80 psi'},"
                                + " '1R': {'applied': '1 in', 'reservoir-pressure': '95 psi'}}");

        assertThat(trial.finding("xa.stroke", "1L").status()).isEqualTo(Status.SPOILED);
        assertThat(trial.finding("xa.stroke", "1L").why().reason())
                .contains("reservoir pressure 80 psi");
        assertThat(trial.finding("xa.stroke", "1R").status()).isEqualTo(Status.MET);
    }

    // Facts of one wheel that the file leaves out

    private static final String STRIP =
            rule(
                    "xa.lining",
                    "lining-thickness",
                    "'applies': {'lining': 'strip'}, 'limit': {'at-least': '3/16 in'}");

    @Test
    void lining_of_unknown_form_leaves_the_measured_thickness_open() {
        Finding finding =
                Trial.of(STRIP, "'wheels': {'2L': {'lining': '1/2 in'}}")
                        .finding("xa.lining", "2L");

        assertThat(finding.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(finding.why().reason()).contains("the form of the lining at 2L");
        assertThat(finding.why().advice()).isEqualTo("Add it to the vehicle file.");
    }

    @Test
    void answer_at_a_wheel_the_rule_may_not_mean_stays_open_too() {
        String rule =
                rule(
                        "xa.hidden",
                        "stroke-indicator-hidden",
                        "'applies': {'lining': 'strip'}, 'limit': {'is': 'yes'}");
        Finding finding =
                Trial.of(rule, "'wheels': {'2L': {'indicator-hidden': 'no'}}")
                        .finding("xa.hidden", "2L");

        assertThat(finding.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(finding.why().reason()).contains("the form of the lining at 2L");
    }

    // Yes or no at a wheel

    @Test
    void answer_at_a_wheel_is_judged_with_its_conditions() {
        String rule =
                rule(
                        "xa.hidden",
                        "stroke-indicator-hidden",
                        "'conditions': {'service-brake': 'released'}, 'limit': {'is': 'yes'},"
                                + " 'words': 'The mark must be hidden.'");
        Trial trial =
                Trial.of(
                        rule,
                        "'circumstances': {'service-brake': 'released'}, 'wheels': {'1L':"
                                + " {'indicator-hidden': 'yes'}, '1R': {'indicator-hidden': 'no'},"
                                + " '2L': {'indicator-hidden': 'no', 'service-brake': 'applied'},"
                                + " '2R': {'applied': '1 in'}}");

        assertThat(trial.finding("xa.hidden", "1L").status()).isEqualTo(Status.MET);
        assertThat(trial.finding("xa.hidden", "1R").why().reason())
                .isEqualTo("Noted: no. Rule: The mark must be hidden.");
        assertThat(trial.finding("xa.hidden", "2L").status()).isEqualTo(Status.SPOILED);
        assertThat(trial.finding("xa.hidden", "2R").status()).isEqualTo(Status.NOT_CHECKED);
    }

    private static Finding strokeOf(String chamber, String reading) {
        String truck =
                Trucks.vehicle(
                        Trucks.unit(
                                "truck",
                                "U3",
                                "",
                                Trucks.STEER,
                                "{'position': 'drive', 'brake': 'drum', 'chamber': "
                                        + chamber
                                        + ", 'spring-brake': 'no'}"));
        return Trial.of(Packs.of(STROKES), truck, EXACT + "'wheels': {'2L': {" + reading + "}}")
                .finding("xa.stroke", "2L");
    }
}
