package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fandown.yard.Packs.rule;

import org.fandown.yard.Trial;
import org.junit.jupiter.api.Test;

class ReadingJudgeTest {
    private static final String EXACT = "'instruments': 'exact', ";

    private static final String TUG =
            rule(
                    "xa.tug",
                    "coupling-tug",
                    "'limit': {'is': 'yes'}, 'words': 'Pull gently against the trailer brakes.'");

    @Test
    void yes_meets_the_rule_and_keeps_the_note() {
        assertThat(Trial.of(TUG, "'readings': {'coupling-tug': 'yes'}").reason())
                .isEqualTo("Noted: yes.");
        Trial noted =
                Trial.of(TUG, "'readings': {'coupling-tug': {'answer': 'yes', 'note': 'twice'}}");
        assertThat(noted.status()).isEqualTo(Status.MET);
        assertThat(noted.reason()).isEqualTo("Noted: yes (twice).");
    }

    @Test
    void no_does_not_meet_the_rule_and_the_rule_speaks() {
        Trial trial =
                Trial.of(TUG, "'readings': {'coupling-tug': {'answer': 'no', 'note': 'rolled'}}");

        assertThat(trial.status()).isEqualTo(Status.NOT_MET);
        assertThat(trial.reason())
                .isEqualTo("Noted: no (rolled). Rule: Pull gently against the trailer brakes.");
    }

    @Test
    void asked_check_without_a_reading_is_not_checked_and_says_what_to_do() {
        Trial trial = Trial.of(TUG, "");

        assertThat(trial.status()).isEqualTo(Status.NOT_CHECKED);
        assertThat(trial.reason()).startsWith("Nothing was noted.").contains("Pull gently");
        assertThat(trial.only().why().advice()).contains("coupling-tug");
    }

    @Test
    void check_judged_only_if_observed_has_no_finding_without_a_reading() {
        String rule =
                rule("xa.tug", "coupling-tug", "'limit': {'is': 'yes'}, 'evidence': 'if-observed'");

        assertThat(Trial.of(rule, "").judgement().findings()).isEmpty();
        assertThat(Trial.of(rule, "'readings': {'coupling-tug': 'no'}").status())
                .isEqualTo(Status.NOT_MET);
    }

    // Timed build-ups that were stopped early

    private static final String FROM_WARNING =
            rule(
                    "xa.build-up",
                    "build-up-from-warning",
                    "'window': {'to': ['100 psi', '690 kPa']}, 'limit': {'at-most': '3 min'}");

    @Test
    void time_to_the_pressure_the_rule_names_or_beyond_counts() {
        assertThat(Trial.of(FROM_WARNING, EXACT + timed("150 s", "100 psi")).status())
                .isEqualTo(Status.MET);
        assertThat(Trial.of(FROM_WARNING, EXACT + timed("150 s", "120 psi")).status())
                .isEqualTo(Status.MET);
        assertThat(Trial.of(FROM_WARNING, EXACT + timed("190 s", "690 kPa")).status())
                .isEqualTo(Status.NOT_MET);
    }

    @Test
    void time_to_a_lower_pressure_is_spoiled() {
        Trial trial = Trial.of(FROM_WARNING, EXACT + timed("100 s", "90 psi"));

        assertThat(trial.status()).isEqualTo(Status.SPOILED);
        assertThat(trial.reason())
                .isEqualTo("Timed to 90 psi only; the rule times it to 100 psi (690 kPa).");
    }

    @Test
    void time_without_the_pressure_reached_stays_open_unless_the_test_was_made_as_printed() {
        String brief = "'readings': {'build-up-from-warning': '100 s'}";
        Trial open = Trial.of(FROM_WARNING, brief);

        assertThat(open.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(open.only().why().advice()).contains("`to`");
        assertThat(Trial.of(FROM_WARNING, "'conditions': 'as-printed', " + brief).status())
                .isEqualTo(Status.MET);
    }

    @Test
    void pressure_to_reach_that_needs_another_reading_stays_open_without_it() {
        String rule =
                rule(
                        "xa.build-up",
                        "build-up-from-warning",
                        "'window': {'to': {'percent': 90, 'of': 'governor-cut-out'}},"
                                + " 'limit': {'at-most': '3 min'}");

        assertThat(Trial.of(rule, timed("100 s", "110 psi")).reason())
                .contains("needs a reading of governor-cut-out");
    }

    // Reserve

    @Test
    void reserve_is_the_pressure_after_the_applications() {
        String rule =
                rule(
                        "xa.reserve",
                        "reservoir-reserve",
                        "'limit': {'at-least': ['60 psi', '414 kPa']}");
        Trial trial =
                Trial.of(
                        rule,
                        "'readings': {'reservoir-reserve': {'before': '100 psi', 'after': '59"
                                + " psi'}}");

        assertThat(trial.status()).isEqualTo(Status.NOT_MET);
        assertThat(trial.reason())
                .startsWith("Measured 59 psi \u00b1 0.5 psi, limit at least 60 psi (414 kPa)");
    }

    @Test
    void reserve_as_a_share_doubts_both_readings() {
        String rule =
                rule(
                        "xa.reserve",
                        "reservoir-reserve",
                        "'limit': {'at-least': {'percent': 50, 'of': 'before'}}");

        // 0.5 psi of the pressure after and half of 0.5 psi of the one before: 0.56 psi.
        assertThat(reserve(rule, "50.6 psi").status()).isEqualTo(Status.MET);
        assertThat(reserve(rule, "50.5 psi").status()).isEqualTo(Status.UNDETERMINED);
        assertThat(reserve(rule, "49.5 psi").status()).isEqualTo(Status.UNDETERMINED);
        assertThat(reserve(rule, "49.4 psi").status()).isEqualTo(Status.NOT_MET);
    }

    private static Trial reserve(String rule, String after) {
        return Trial.of(
                rule,
                "'readings': {'reservoir-reserve': {'before': '100 psi', 'after': '"
                        + after
                        + "'}}");
    }

    private static String timed(String time, String to) {
        return "'readings': {'build-up-from-warning': {'time': '"
                + time
                + "', 'to': '"
                + to
                + "'}}";
    }
}
