package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fandown.yard.Packs.rule;

import org.fandown.yard.Trial;
import org.junit.jupiter.api.Test;

class PartsJudgeTest {
    private static final String WALK =
            rule(
                    "xa.walk-round",
                    "walk-round",
                    "'limit': {'look-at': ['service-brakes', 'tires', 'horn']}, 'words': 'Walk"
                            + " round the vehicle.'");

    private static final String LEAK =
            rule(
                    "xa.leak",
                    "component-condition",
                    "'limit': {'absent': 'audible-air-leak', 'on': 'air-system'}, 'words': 'No air"
                            + " may be heard to leak.'");

    @Test
    void walk_round_is_met_when_each_part_was_looked_at_in_order_or_not() {
        Trial trial =
                Trial.of(
                        WALK,
                        "'parts': {'service-brakes': 'ok', 'tires': {'condition': 'worn-out'},"
                                + " 'horn': 'ok'}");

        assertThat(trial.status()).isEqualTo(Status.MET);
        assertThat(trial.reason()).isEqualTo("Each part on the list was looked at.");
    }

    @Test
    void declaration_that_all_others_are_in_order_is_a_look_at_each() {
        assertThat(Trial.of(WALK, "'parts': {'all-others': 'ok'}").status()).isEqualTo(Status.MET);
    }

    @Test
    void parts_passed_over_are_named() {
        Trial trial = Trial.of(WALK, "'parts': {'service-brakes': 'ok'}");

        assertThat(trial.status()).isEqualTo(Status.NOT_CHECKED);
        assertThat(trial.reason()).isEqualTo("Not looked at: Tires, Horn.");
    }

    @Test
    void one_part_passed_over_is_enough() {
        Trial trial = Trial.of(WALK, "'parts': {'service-brakes': 'ok', 'tires': 'ok'}");

        assertThat(trial.status()).isEqualTo(Status.NOT_CHECKED);
        assertThat(trial.reason()).isEqualTo("Not looked at: Horn.");
    }

    @Test
    void walk_round_not_made_at_all_is_not_checked_in_the_rule_s_own_words() {
        Trial trial = Trial.of(WALK, "'parts': {'glass': 'ok'}");

        assertThat(trial.status()).isEqualTo(Status.NOT_CHECKED);
        assertThat(trial.reason()).startsWith("Nothing was noted.").contains("Walk round");
    }

    @Test
    void condition_found_is_not_met_with_its_note() {
        Trial trial =
                Trial.of(
                        LEAK,
                        "'parts': {'air-system': {'condition': 'audible-air-leak', 'note': 'at the"
                                + " left glad hand'}}");

        assertThat(trial.status()).isEqualTo(Status.NOT_MET);
        assertThat(trial.reason())
                .isEqualTo(
                        "Air system: audible air leak (at the left glad hand). Rule: No air may be"
                                + " heard to leak.");
        assertThat(trial.defects().get(0).component()).isEqualTo("air-system");
    }

    @Test
    void condition_found_among_others_is_found() {
        assertThat(
                        Trial.of(
                                        LEAK,
                                        "'parts': {'air-system': [{'condition': 'oil-in-reservoir',"
                                                + " 'severity': 'minor'}, {'condition':"
                                                + " 'audible-air-leak'}]}")
                                .status())
                .isEqualTo(Status.NOT_MET);
    }

    @Test
    void part_in_order_or_with_another_condition_is_clear() {
        assertThat(Trial.of(LEAK, "'parts': {'air-system': 'ok'}").reason())
                .isEqualTo("Air system looked at: no audible air leak.");
        assertThat(
                        Trial.of(
                                        LEAK,
                                        "'parts': {'air-system': {'condition': 'oil-in-reservoir',"
                                                + " 'severity': 'minor'}}")
                                .status())
                .isEqualTo(Status.MET);
        assertThat(Trial.of(LEAK, "'parts': {'all-others': 'ok'}").status()).isEqualTo(Status.MET);
    }

    @Test
    void condition_on_another_part_is_another_matter() {
        Trial trial =
                Trial.of(
                        LEAK,
                        "'parts': {'air-lines': {'condition': 'audible-air-leak'}, 'air-system':"
                                + " 'ok'}");

        assertThat(trial.status()).isEqualTo(Status.MET);
        assertThat(trial.defects())
                .singleElement()
                .satisfies(d -> assertThat(d.component()).isEqualTo("air-lines"));
    }

    @Test
    void part_nobody_looked_at_is_not_checked() {
        assertThat(Trial.of(LEAK, "").status()).isEqualTo(Status.NOT_CHECKED);
    }
}
