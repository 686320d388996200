package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.fandown.yard.Packs.rule;

import org.fandown.yard.Packs;
import org.fandown.yard.Trial;
import org.fandown.yard.Trucks;
import org.junit.jupiter.api.Test;

class JudgeTest {
    private static final String EXACT = "'instruments': 'exact', ";

    // About

    private static final String ABOUT =
            rule(
                    "xa.warning",
                    "low-air-warning",
                    "'limit': {'at-least': '60 psi'}, 'approximate': 'yes'");

    @Test
    void value_on_the_wrong_side_of_about_is_undetermined() {
        Trial trial = Trial.of(ABOUT, EXACT + warning("55 psi"));

        assertThat(trial.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(trial.reason())
                .startsWith("Measured 55 psi, limit at least 60 psi")
                .endsWith("The text says \"about\", so this alone does not fail.");
        assertThat(trial.only().why().advice()).contains("maker's figure");
        assertThat(trial.defects()).isEmpty();
    }

    @Test
    void value_on_the_right_side_of_about_is_met() {
        assertThat(Trial.of(ABOUT, EXACT + warning("60 psi")).status()).isEqualTo(Status.MET);
    }

    // Sources that disagree

    @Test
    void reading_on_which_unsettled_sources_disagree_is_undetermined_with_both_reasons() {
        Trial trial =
                Trial.of(
                        Packs.of(
                                warningRule("xa.applied", "60 psi", ""),
                                rival("xa.rival", "55 psi")),
                        Trucks.TRUCK,
                        EXACT + warning("57 psi"));

        assertThat(trial.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(trial.reason())
                .startsWith("Sources disagree.")
                .contains("xa.applied: Measured 57 psi, limit at least 60 psi")
                .contains("xa.rival: Measured 57 psi, limit at least 55 psi");
        assertThat(trial.only().why().advice()).startsWith("Ask the authority");
    }

    @Test
    void reading_on_which_they_agree_is_decided() {
        String applied = warningRule("xa.applied", "60 psi", "");

        assertThat(disputed(applied, "62 psi").status()).isEqualTo(Status.MET);
        assertThat(disputed(applied, "50 psi").status()).isEqualTo(Status.NOT_MET);
    }

    @Test
    void reading_too_close_to_call_by_the_other_text_is_open_too() {
        Trial trial =
                Trial.of(
                        Packs.of(
                                warningRule("xa.applied", "55 psi", ""),
                                rival("xa.rival", "60 psi")),
                        Trucks.TRUCK,
                        "'instruments': {'gauge': '4 psi'}, " + warning("61 psi"));

        assertThat(trial.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(trial.reason()).contains("xa.rival").contains("too close to the limit");
    }

    @Test
    void every_rival_is_asked() {
        Trial trial =
                Trial.of(
                        Packs.of(
                                warningRule("xa.applied", "60 psi", ""),
                                rival("xa.same", "60 psi"),
                                rival("xa.other", "70 psi")),
                        Trucks.TRUCK,
                        EXACT + warning("65 psi"));

        assertThat(trial.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(trial.reason()).contains("xa.other").doesNotContain("xa.same");
    }

    @Test
    void settled_conflict_does_not_disturb_the_rule_applied() {
        String settled =
                warningRule(
                        "xa.rival",
                        "70 psi",
                        ", 'conflict': {'with': 'xa.applied', 'applied': 'no', 'settled': 'yes',"
                                + " 'why': 'Older.'}");

        assertThat(
                        Trial.of(
                                        Packs.of(warningRule("xa.applied", "60 psi", ""), settled),
                                        Trucks.TRUCK,
                                        EXACT + warning("65 psi"))
                                .status())
                .isEqualTo(Status.MET);
    }

    @Test
    void sources_that_disagree_at_a_wheel_are_weighed_at_that_wheel() {
        String applied =
                rule("xa.applied", "pushrod-free-stroke", "'limit': {'at-most': '3/4 in'}");
        String rival =
                rule(
                        "xa.rival",
                        "pushrod-free-stroke",
                        "'limit': {'at-most': '5/8 in'}, 'conflict': {'with': 'xa.applied',"
                                + " 'applied': 'no', 'settled': 'no', 'why': 'Nobody knows.'}");
        Trial trial =
                Trial.of(
                        Packs.of(applied, rival),
                        Trucks.TRUCK,
                        EXACT + "'wheels': {'1L': {'free': '0.7 in'}, '1R': {'free': '0.5 in'}}");

        assertThat(trial.finding("xa.applied", "1L").status()).isEqualTo(Status.UNDETERMINED);
        assertThat(trial.finding("xa.applied", "1R").status()).isEqualTo(Status.MET);
        assertThat(trial.finding("xa.applied", "2L").status()).isEqualTo(Status.NOT_CHECKED);
    }

    // Which rules

    @Test
    void rules_of_place_vehicle_and_day_are_taken_from_the_inspection() {
        String dated =
                rule(
                        "xa.warning",
                        "low-air-warning",
                        "'values': [{'from': '2000-01-01', 'limit': {'at-least': '55 psi'},"
                                + " 'source': 'S'}, {'from': '2026-03-02', 'limit': {'at-least':"
                                + " '60 psi'}, 'source': 'T'}]");
        String before = EXACT + "'moment': '2026-03-01T23:59:59-05:00', " + warning("57 psi");
        String after = EXACT + "'moment': '2026-03-02T00:00:00-05:00', " + warning("57 psi");

        assertThat(Trial.of(dated, before).status()).isEqualTo(Status.MET);
        assertThat(Trial.of(dated, after).status()).isEqualTo(Status.NOT_MET);
    }

    @Test
    void inspection_of_a_place_without_a_pack_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> Trial.of(Packs.of(ABOUT), Trial.inspection("XB", Trucks.TRUCK, "")))
                .withMessageContaining("XB");
    }

    @Test
    void historic_rules_and_duties_are_not_judged() {
        String historic = warningRule("xa.old", "70 psi", ", 'standing': 'historic'");
        String duty = rule("xa.keep", "report-retention", "'limit': {'duty': 'Keep the report.'}");

        assertThat(
                        Trial.of(Packs.of(historic, duty), Trucks.TRUCK, warning("20 psi"))
                                .judgement()
                                .findings())
                .isEmpty();
    }

    @Test
    void advice_that_may_not_be_meant_is_left_out() {
        String advice =
                rule(
                        "xa.advice",
                        "low-air-warning",
                        "'applies': {'seats': {'over': 10}}, 'standing': 'advisory', 'limit':"
                                + " {'at-least': '60 psi'}");

        assertThat(Trial.of(advice, warning("50 psi")).judgement().findings()).isEmpty();
    }

    private static Trial disputed(String applied, String reading) {
        return Trial.of(
                Packs.of(applied, rival("xa.rival", "55 psi")),
                Trucks.TRUCK,
                EXACT + warning(reading));
    }

    private static String warningRule(String id, String limit, String keys) {
        return rule(id, "low-air-warning", "'limit': {'at-least': '" + limit + "'}" + keys);
    }

    private static String rival(String id, String limit) {
        return warningRule(
                id,
                limit,
                ", 'conflict': {'with': 'xa.applied', 'applied': 'no', 'settled': 'no', 'why':"
                        + " 'Nobody knows.'}");
    }

    private static String warning(String reading) {
        return "'readings': {'low-air-warning': '" + reading + "'}";
    }
}
