package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fandown.yard.Packs.rule;

import java.util.List;
import org.fandown.check.Check;
import org.fandown.check.Severity;
import org.fandown.check.Verdict;
import org.fandown.yard.Packs;
import org.fandown.yard.Trial;
import org.fandown.yard.Trucks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every way to each verdict. */
class SentenceTest {
    /** A rule that is met by {@link #CUT_OUT_NOTED}, so that the air is proven. */
    private static final String CUT_OUT =
            rule("xa.cut-out", "governor-cut-out", "'limit': {'at-most': '135 psi'}");

    private static final String CUT_OUT_NOTED = "'governor-cut-out': '120 psi'";

    private static final String NO_AIR =
            "No pressure, air loss or low-air warning was measured against a rule that decides.";

    @Test
    void everything_asked_and_met_is_fit_to_move() {
        Trial trial = judged("", "");

        assertThat(trial.verdict()).isEqualTo(Verdict.FIT_TO_MOVE);
        assertThat(trial.because()).isEmpty();
        assertThat(trial.defects()).isEmpty();
    }

    // Not fit to move

    @Test
    void major_rule_not_met_is_not_fit() {
        Trial trial = judged(tug("'title': 'Tug test'"), "'coupling-tug': 'no'");

        assertThat(trial.verdict()).isEqualTo(Verdict.NOT_FIT_TO_MOVE);
        assertThat(trial.because()).containsExactly("Major defect: Tug test");
        Defect defect = trial.defects().get(0);
        assertThat(defect.component()).isEqualTo("coupling-tug");
        assertThat(defect.severity()).contains(Severity.MAJOR);
        assertThat(defect.rule().orElseThrow().id()).isEqualTo("xa.tug");
        assertThat(defect.text()).isEqualTo("Tug test");
    }

    @Test
    void major_defect_at_a_wheel_names_the_wheel() {
        Trial trial =
                Trial.of(
                        Packs.of(
                                CUT_OUT,
                                rule(
                                        "xa.free",
                                        "pushrod-free-stroke",
                                        "'title': 'Free stroke', 'limit': {'at-most': '3/4 in'},"
                                                + " 'evidence': 'if-observed'")),
                        Trucks.TRUCK,
                        "'readings': {" + CUT_OUT_NOTED + "}, 'wheels': {'2R': {'free': '1 in'}}");

        assertThat(trial.because()).containsExactly("Major defect: Free stroke at 2R");
        assertThat(trial.defects().get(0).wheel().orElseThrow()).hasToString("2R");
    }

    @Test
    void major_condition_that_the_place_has_no_rule_for_is_not_fit_by_the_person_s_word() {
        Trial trial =
                withParts(
                        "",
                        "'tires': {'condition': 'cord-showing', 'severity': 'major', 'note':"
                                + " 'left rear'}");

        assertThat(trial.verdict()).isEqualTo(Verdict.NOT_FIT_TO_MOVE);
        assertThat(trial.because()).containsExactly("Major defect: cord showing: left rear");
        assertThat(trial.defects().get(0).rule()).isEmpty();
    }

    @Test
    void defect_noted_at_a_wheel_is_major() {
        Trial trial =
                Trial.of(
                        Packs.of(CUT_OUT),
                        Trucks.TRUCK,
                        "'readings': {"
                                + CUT_OUT_NOTED
                                + "}, 'wheels': {'1L': {'defects': ['lining-cracked']}}");

        assertThat(trial.verdict()).isEqualTo(Verdict.NOT_FIT_TO_MOVE);
        assertThat(trial.because()).containsExactly("Major defect: lining cracked at 1L");
    }

    @Test
    void nothing_that_is_open_is_told_beside_a_major_defect() {
        Trial trial =
                Trial.of(
                        Packs.of(CUT_OUT, tug(""), asked()),
                        Trucks.TRUCK,
                        "'readings': {" + CUT_OUT_NOTED + ", 'coupling-tug': 'no'}");

        assertThat(trial.verdict()).isEqualTo(Verdict.NOT_FIT_TO_MOVE);
        assertThat(trial.because()).hasSize(1);
    }

    // Defects of earlier reports

    @Test
    void earlier_major_defect_that_nobody_settled_grounds_a_vehicle_that_passes_everything() {
        assertThat(earlier("'severity': 'major'").verdict()).isEqualTo(Verdict.NOT_FIT_TO_MOVE);
        assertThat(earlier("'severity': 'major'").because())
                .containsExactly("Not put right since 2026-01-02: 4R: stroke over its limit");
        assertThat(earlier("'severity': 'minor', 'out-of-service': true").verdict())
                .isEqualTo(Verdict.NOT_FIT_TO_MOVE);
    }

    @Test
    void earlier_minor_defect_that_nobody_settled_leaves_the_vehicle_unproven() {
        for (String severity : List.of("'severity': 'minor'", "'out-of-service': false")) {
            Trial trial = earlier(severity);
            assertThat(trial.verdict()).isEqualTo(Verdict.NOT_PROVEN);
            assertThat(trial.because())
                    .containsExactly(
                            "Reported on 2026-01-02, and neither put right nor certified as not"
                                    + " needing it: 4R: stroke over its limit");
        }
    }

    private static Trial earlier(String severity) {
        return Trial.of(
                Packs.of(CUT_OUT),
                Trucks.TRUCK,
                "'readings': {"
                        + CUT_OUT_NOTED
                        + "}, 'earlier-defects': [{'report': 'r1', 'since': '2026-01-02', 'text':"
                        + " '4R: stroke over its limit', "
                        + severity
                        + "}]");
    }

    // Fit in spite of defects

    @Test
    void minor_defects_alone_leave_the_vehicle_fit() {
        Trial trial = judged(tug("'severity': 'minor'"), "'coupling-tug': 'no'");

        assertThat(trial.verdict()).isEqualTo(Verdict.FIT_TO_MOVE);
        assertThat(trial.because()).isEmpty();
        assertThat(trial.defects().get(0).severity()).contains(Severity.MINOR);
    }

    @Test
    void minor_condition_by_the_person_s_word_leaves_the_vehicle_fit() {
        Trial trial = withParts("", "'horn': {'condition': 'weak', 'severity': 'minor'}");

        assertThat(trial.verdict()).isEqualTo(Verdict.FIT_TO_MOVE);
        assertThat(trial.defects()).hasSize(1);
    }

    @Test
    void place_s_severity_goes_before_the_person_s() {
        String minor =
                rule(
                        "xa.horn",
                        "component-condition",
                        "'limit': {'absent': 'weak', 'on': 'horn'}, 'severity': 'minor', 'title':"
                                + " 'Horn'");
        Trial trial = withParts(minor, "'horn': {'condition': 'weak', 'severity': 'major'}");

        assertThat(trial.verdict()).isEqualTo(Verdict.FIT_TO_MOVE);
        assertThat(trial.defects())
                .singleElement()
                .satisfies(d -> assertThat(d.severity()).contains(Severity.MINOR))
                .satisfies(d -> assertThat(d.component()).isEqualTo("horn"));
    }

    @ParameterizedTest
    @CsvSource({"advisory", "new-vehicle"})
    void rule_that_never_decides_does_not_even_leave_a_defect(String standing) {
        Trial trial = judged(tug("'standing': '" + standing + "'"), "'coupling-tug': 'no'");

        assertThat(trial.finding("xa.tug").status()).isEqualTo(Status.NOT_MET);
        assertThat(trial.verdict()).isEqualTo(Verdict.FIT_TO_MOVE);
        assertThat(trial.defects()).isEmpty();
    }

    @Test
    void condition_only_an_advisory_rule_names_keeps_the_person_s_severity() {
        String advice =
                rule(
                        "xa.horn",
                        "component-condition",
                        "'limit': {'absent': 'weak', 'on': 'horn'}, 'standing': 'advisory'");

        assertThat(
                        withParts(advice, "'horn': {'condition': 'weak', 'severity': 'major'}")
                                .verdict())
                .isEqualTo(Verdict.NOT_FIT_TO_MOVE);
    }

    // Not proven

    @Test
    void condition_whose_severity_nobody_states_is_not_proven() {
        Trial trial = withParts("", "'glass': {'condition': 'cracked'}");

        assertThat(trial.verdict()).isEqualTo(Verdict.NOT_PROVEN);
        assertThat(trial.because()).containsExactly("Nobody says how bad this is: cracked");
        assertThat(trial.defects().get(0).severity()).isEmpty();
    }

    @Test
    void no_to_a_check_without_a_rule_is_not_proven() {
        Trial trial = judged("", "'coupling-tug': 'no'");

        assertThat(trial.verdict()).isEqualTo(Verdict.NOT_PROVEN);
        assertThat(trial.because())
                .containsExactly("Nobody says how bad this is: " + title("coupling-tug") + ": no");
    }

    @Test
    void yes_to_a_check_without_a_rule_is_nothing() {
        assertThat(judged("", "'coupling-tug': 'yes'").verdict()).isEqualTo(Verdict.FIT_TO_MOVE);
    }

    @Test
    void no_at_a_wheel_to_a_check_without_a_rule_there_is_not_proven() {
        String steerOnly =
                rule(
                        "xa.hidden",
                        "stroke-indicator-hidden",
                        "'applies': {'axle': 'steer'}, 'limit': {'is': 'yes'}, 'evidence':"
                                + " 'if-observed'");
        String noted =
                "'readings': {"
                        + CUT_OUT_NOTED
                        + "}, 'wheels': {'1L': {'indicator-hidden': 'yes'}, '2L':"
                        + " {'indicator-hidden': 'no'}}";

        Trial without = Trial.of(Packs.of(CUT_OUT), Trucks.TRUCK, noted);
        Trial elsewhere = Trial.of(Packs.of(CUT_OUT, steerOnly), Trucks.TRUCK, noted);

        assertThat(without.verdict()).isEqualTo(Verdict.NOT_PROVEN);
        assertThat(without.because())
                .containsExactly(
                        "Nobody says how bad this is: "
                                + title("stroke-indicator-hidden")
                                + ": no at 2L");
        assertThat(elsewhere.because()).isEqualTo(without.because());
    }

    @Test
    void check_not_made_is_not_proven() {
        Trial trial = judged(tug("'title': 'Tug test'"), "");

        assertThat(trial.verdict()).isEqualTo(Verdict.NOT_PROVEN);
        assertThat(trial.because()).containsExactly("Tug test: not checked");
    }

    @Test
    void reading_too_close_to_call_is_not_proven() {
        Trial trial =
                judged(
                        rule(
                                "xa.cut-in",
                                "governor-cut-in",
                                "'title': 'Cut-in', 'limit': {'at-least': '85 psi'}"),
                        "'governor-cut-in': '85 psi'");

        assertThat(trial.because()).containsExactly("Cut-in: undetermined");
    }

    @Test
    void spoiled_reading_is_not_proven() {
        Trial trial =
                judged(
                        tug("'title': 'Tug test', 'conditions': {'gear': 'low'}"),
                        "'coupling-tug': {'answer': 'yes', 'gear': 'neutral'}");

        assertThat(trial.because()).containsExactly("Tug test: spoiled");
    }

    @Test
    void unconfirmed_limit_not_met_is_not_proven_and_no_defect() {
        Trial trial =
                judged(
                        tug(
                                "'title': 'Tug test', 'standing': 'unconfirmed', 'provenance':"
                                        + " 'from-memory'"),
                        "'coupling-tug': 'no'");

        assertThat(trial.verdict()).isEqualTo(Verdict.NOT_PROVEN);
        assertThat(trial.because())
                .containsExactly("Tug test: not met, but the limit is unconfirmed");
        assertThat(trial.defects()).isEmpty();
    }

    @Test
    void unconfirmed_limit_that_nobody_asks_for_leaves_the_vehicle_fit_if_met_or_not_made() {
        String rule = tug("'standing': 'unconfirmed', 'provenance': 'from-memory'");

        assertThat(judged(rule, "").verdict()).isEqualTo(Verdict.FIT_TO_MOVE);
        assertThat(judged(rule, "'coupling-tug': 'yes'").verdict()).isEqualTo(Verdict.FIT_TO_MOVE);
    }

    @Test
    void open_finding_at_a_wheel_names_the_wheel() {
        Trial trial =
                Trial.of(
                        Packs.of(
                                CUT_OUT,
                                rule(
                                        "xa.free",
                                        "pushrod-free-stroke",
                                        "'title': 'Free stroke', 'limit': {'at-most': '3/4 in'},"
                                                + " 'evidence': 'if-observed'")),
                        Trucks.TRUCK,
                        "'readings': {"
                                + CUT_OUT_NOTED
                                + "}, 'wheels': {'2R': {'free': '3/4 in'}}");

        assertThat(trial.because()).containsExactly("Free stroke (2R): undetermined");
    }

    // Nothing proves the air

    @Test
    void nothing_measured_of_the_air_is_not_proven() {
        Trial trial = Trial.of(tug(""), "'readings': {'coupling-tug': 'yes'}");

        assertThat(trial.verdict()).isEqualTo(Verdict.NOT_PROVEN);
        assertThat(trial.because()).containsExactly(NO_AIR);
    }

    @Test
    void rule_that_never_decides_proves_no_air() {
        Trial trial =
                Trial.of(
                        rule(
                                "xa.cut-out",
                                "governor-cut-out",
                                "'standing': 'advisory', 'limit': {'at-most': '135 psi'}"),
                        "'readings': {" + CUT_OUT_NOTED + "}");

        assertThat(trial.status()).isEqualTo(Status.MET);
        assertThat(trial.because()).containsExactly(NO_AIR);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "governor-cut-in | {'at-least': '85 psi'} | '100 psi'",
                "governor-cut-out | {'at-most': '135 psi'} | '120 psi'",
                "low-air-warning | {'at-least': '55 psi'} | '65 psi'",
                "air-loss-applied | {'at-most': '3 psi', 'per': '1 min'} | {'loss': '1 psi',"
                        + " 'time': '60 s'}",
                "air-loss-released | {'at-most': '2 psi', 'per': '1 min'} | {'loss': '0 psi',"
                        + " 'time': '60 s'}"
            },
            quoteCharacter = '"')
    void any_of_these_met_proves_the_air(String check, String limit, String reading) {
        Trial trial =
                Trial.of(
                        rule("xa.r", check, "'limit': " + limit),
                        "'readings': {'" + check + "': " + reading + "}");

        assertThat(trial.verdict()).isEqualTo(Verdict.FIT_TO_MOVE);
    }

    @Test
    void build_up_met_proves_the_air_and_unmet_leaves_it_open_beside_the_defect() {
        String rule =
                rule(
                        "xa.build-up",
                        "build-up",
                        "'window': {'from': '85 psi', 'to': '100 psi'}, 'limit': {'at-most': '2"
                                + " min'}, 'severity': 'minor', 'title': 'Build-up'");
        String reading =
                "'readings': {'build-up': {'from': '85 psi', 'to': '100 psi', 'time': '%s'}}";

        assertThat(Trial.of(rule, reading.formatted("60 s")).verdict())
                .isEqualTo(Verdict.FIT_TO_MOVE);
        Trial slow = Trial.of(rule, reading.formatted("200 s"));
        assertThat(slow.verdict()).isEqualTo(Verdict.NOT_PROVEN);
        assertThat(slow.because()).containsExactly(NO_AIR);
        assertThat(slow.defects()).hasSize(1);
    }

    @Test
    void verdicts_have_titles_for_people() {
        assertThat(Verdict.FIT_TO_MOVE.title()).isEqualTo("fit to move");
        assertThat(Verdict.NOT_FIT_TO_MOVE.title()).isEqualTo("not fit to move");
        assertThat(Verdict.NOT_PROVEN.title()).isEqualTo("not proven");
    }

    private static Trial judged(String rule, String readings) {
        return Trial.of(
                rule.isEmpty() ? Packs.of(CUT_OUT) : Packs.of(CUT_OUT, rule),
                Trucks.TRUCK,
                "'readings': {"
                        + CUT_OUT_NOTED
                        + (readings.isEmpty() ? "" : ", " + readings)
                        + "}");
    }

    private static Trial withParts(String rule, String parts) {
        return Trial.of(
                rule.isEmpty() ? Packs.of(CUT_OUT) : Packs.of(CUT_OUT, rule),
                Trucks.TRUCK,
                "'readings': {" + CUT_OUT_NOTED + "}, 'parts': {" + parts + "}");
    }

    private static String tug(String keys) {
        return rule(
                "xa.tug",
                "coupling-tug",
                "'limit': {'is': 'yes'}" + (keys.isEmpty() ? "" : ", ") + keys);
    }

    private static String asked() {
        return rule("xa.asked", "check-valve", "'limit': {'is': 'yes'}");
    }

    private static String title(String check) {
        return Check.byId(check).orElseThrow().title();
    }
}
