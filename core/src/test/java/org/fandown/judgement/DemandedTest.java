package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fandown.yard.Packs.rule;

import org.fandown.yard.Packs;
import org.fandown.yard.Trial;
import org.fandown.yard.Trucks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DemandedTest {
    private static final String ENGINE_OFF =
            rule(
                    "xa.low",
                    "low-air-warning",
                    "'conditions': {'engine': 'off', 'key': 'on'}, 'limit': {'at-least': '60 psi'},"
                            + " 'words': 'Fan the brakes with the engine off.'");

    @Test
    void reading_under_the_demanded_conditions_is_judged() {
        Trial trial =
                Trial.of(
                        ENGINE_OFF,
                        "'readings': {'low-air-warning': {'gauge': '70 psi', 'engine': 'off',"
                                + " 'key': 'on'}}");

        assertThat(trial.status()).isEqualTo(Status.MET);
    }

    @Test
    void reading_under_other_conditions_is_spoiled_in_the_rule_s_own_words() {
        Trial trial =
                Trial.of(
                        ENGINE_OFF,
                        "'readings': {'low-air-warning': {'gauge': '70 psi', 'engine': 'idle',"
                                + " 'key': 'on'}}");

        assertThat(trial.status()).isEqualTo(Status.SPOILED);
        assertThat(trial.reason())
                .contains("Noted: engine idle")
                .contains("Needed: engine off")
                .contains("Rule: Fan the brakes with the engine off.");
        assertThat(trial.only().why().advice()).contains("again with engine off");
        assertThat(trial.only().measured()).isEmpty();
    }

    @Test
    void reading_that_fails_is_spoiled_all_the_same_under_other_conditions() {
        Trial trial =
                Trial.of(
                        ENGINE_OFF,
                        "'readings': {'low-air-warning': {'gauge': '20 psi', 'engine': 'running',"
                                + " 'key': 'on'}}");

        assertThat(trial.status()).isEqualTo(Status.SPOILED);
        assertThat(trial.defects()).isEmpty();
    }

    @Test
    void condition_not_noted_leaves_the_reading_open() {
        Trial trial =
                Trial.of(
                        ENGINE_OFF,
                        "'readings': {'low-air-warning': {'gauge': '70 psi', 'engine': 'off'}}");

        assertThat(trial.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(trial.reason()).startsWith("Not noted: key on. ");
        assertThat(trial.only().why().advice()).contains("conditions: as-printed");
    }

    @Test
    void declaration_stands_for_what_is_not_noted_but_not_against_what_is() {
        Trial silent =
                Trial.of(
                        ENGINE_OFF,
                        "'conditions': 'as-printed', 'readings': {'low-air-warning': '70 psi'}");
        Trial contradicted =
                Trial.of(
                        ENGINE_OFF,
                        "'conditions': 'as-printed', 'readings': {'low-air-warning':"
                                + " {'gauge': '70 psi', 'engine': 'running'}}");

        assertThat(silent.status()).isEqualTo(Status.MET);
        assertThat(contradicted.status()).isEqualTo(Status.SPOILED);
    }

    @Test
    void circumstances_of_the_inspection_count_unless_the_reading_says_otherwise() {
        String general = "'circumstances': {'engine': 'off', 'key': 'on'}, ";

        assertThat(
                        Trial.of(ENGINE_OFF, general + "'readings': {'low-air-warning': '70 psi'}")
                                .status())
                .isEqualTo(Status.MET);
        assertThat(
                        Trial.of(
                                        ENGINE_OFF,
                                        general
                                                + "'readings': {'low-air-warning': {'gauge':"
                                                + " '70 psi', 'key': 'off'}}")
                                .status())
                .isEqualTo(Status.SPOILED);
    }

    @ParameterizedTest
    @CsvSource({
        "running, idle, MET", "running, fast-idle, MET", "running, running, MET",
        "running, off, SPOILED", "idle, running, SPOILED", "idle, fast-idle, SPOILED",
        "off, idle, SPOILED"
    })
    void idling_engine_is_a_running_one_but_not_the_other_way_round(
            String demanded, String noted, Status expected) {
        String rule =
                rule(
                        "xa.cut-out",
                        "governor-cut-out",
                        "'conditions': {'engine': '"
                                + demanded
                                + "'}, 'limit': {'at-most': '135 psi'}");

        assertThat(
                        Trial.of(
                                        rule,
                                        "'readings': {'governor-cut-out': {'gauge': '120 psi',"
                                                + " 'engine': '"
                                                + noted
                                                + "'}}")
                                .status())
                .isEqualTo(expected);
    }

    @Test
    void any_of_several_states_will_do() {
        String rule =
                rule(
                        "xa.tug",
                        "coupling-tug",
                        "'conditions': {'gear': ['low', 'highest-starting']}, 'limit': {'is': 'yes'}");

        assertThat(
                        Trial.of(
                                        rule,
                                        "'readings': {'coupling-tug': {'answer': 'yes', 'gear':"
                                                + " 'low'}}")
                                .status())
                .isEqualTo(Status.MET);
        Trial neutral =
                Trial.of(
                        rule, "'readings': {'coupling-tug': {'answer': 'yes', 'gear': 'neutral'}}");
        assertThat(neutral.status()).isEqualTo(Status.SPOILED);
        assertThat(neutral.reason()).contains("gear low or highest starting");
    }

    @ParameterizedTest
    @CsvSource({"599 rpm, SPOILED", "600 rpm, MET", "900 rpm, MET", "901 rpm, SPOILED"})
    void quantity_has_to_lie_within_its_limit(String speed, Status expected) {
        String rule =
                rule(
                        "xa.build-up",
                        "build-up",
                        "'conditions': {'engine-speed': {'range': ['600 rpm', '900 rpm']}},"
                                + " 'window': {'from': '85 psi', 'to': '100 psi'},"
                                + " 'limit': {'at-most': '2 min'}");
        Trial trial =
                Trial.of(
                        rule,
                        "'readings': {'build-up': {'from': '85 psi', 'to': '100 psi', 'time':"
                                + " '60 s', 'engine-speed': '"
                                + speed
                                + "'}}");

        assertThat(trial.status()).isEqualTo(expected);
    }

    @Test
    void time_held_and_pressure_at_the_start_follow_from_the_reading() {
        String rule =
                rule(
                        "xa.loss",
                        "air-loss-applied",
                        "'conditions': {'held-for': {'at-least': '1 min'}, 'start-pressure':"
                                + " {'at-least': ['100 psi', '690 kPa']}},"
                                + " 'limit': {'at-most': '3 psi', 'per': '1 min'}");

        assertThat(loss(rule, "110 psi", "60 s").status()).isEqualTo(Status.MET);
        assertThat(loss(rule, "110 psi", "59 s").reason()).contains("time held 59 s");
        assertThat(loss(rule, "99 psi", "60 s").reason())
                .contains("Noted: pressure at the start 99 psi")
                .contains("at least 100 psi (690 kPa)");
    }

    @Test
    void limit_that_needs_another_reading_leaves_the_condition_open_without_it() {
        String rule =
                rule(
                        "xa.loss",
                        "air-loss-applied",
                        "'conditions': {'start-pressure': {'at-least': {'percent': 100, 'of':"
                                + " 'governor-cut-in'}}},"
                                + " 'limit': {'at-most': '3 psi', 'per': '1 min'}");

        Trial without = loss(rule, "110 psi", "60 s");
        assertThat(without.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(without.reason()).contains("Not noted: a reading of governor-cut-in");
        assertThat(
                        Trial.of(
                                        rule,
                                        "'conditions': 'as-printed', 'readings':"
                                                + " {'air-loss-applied': {'start': '110 psi',"
                                                + " 'end': '109 psi', 'time': '60 s'}}")
                                .status())
                .isEqualTo(Status.MET);
        assertThat(
                        Trial.of(
                                        Packs.of(rule),
                                        Trucks.TRUCK,
                                        "'readings': {'governor-cut-in': '112 psi',"
                                                + " 'air-loss-applied': {'start': '110 psi', 'end':"
                                                + " '109 psi', 'time': '60 s'}}")
                                .status())
                .isEqualTo(Status.SPOILED);
    }

    @Test
    void number_of_applications_has_to_be_the_rule_s() {
        String rule =
                rule(
                        "xa.reserve",
                        "reservoir-reserve",
                        "'applications': 5, 'limit': {'at-least': '60 psi'}");
        String reading =
                "'readings': {'reservoir-reserve': {'before': '100 psi', 'after': '70 psi',"
                        + " 'applications': %d}}";

        assertThat(Trial.of(rule, reading.formatted(5)).status()).isEqualTo(Status.MET);
        assertThat(Trial.of(rule, reading.formatted(4)).reason())
                .contains("number of applications 4");
    }

    private static Trial loss(String rule, String start, String time) {
        return Trial.of(
                rule,
                "'readings': {'air-loss-applied': {'start': '"
                        + start
                        + "', 'end': '"
                        + start.replace("110", "109").replace("99", "98")
                        + "', 'time': '"
                        + time
                        + "'}}");
    }
}
