package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fandown.yard.Packs.rule;

import java.util.Optional;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.WheelId;
import org.fandown.yard.Packs;
import org.fandown.yard.Trial;
import org.fandown.yard.Trucks;
import org.junit.jupiter.api.Test;

class StrokeLimitsTest {
    private static final String TABLE =
            rule(
                    "xa.stroke",
                    "pushrod-applied-stroke",
                    "'limit': {'stroke-table': {'clamp': {'20': ['1 3/4 in', '45 mm'], '30': ['2"
                            + " in', '51 mm']}}}");

    @Test
    void limit_is_in_the_unit_of_the_stroke_at_the_wheel() {
        StrokeLimits limits =
                limits("'wheels': {'1L': {'applied': '40 mm'}, '2L': {'applied': '1 in'}}", TABLE);

        assertThat(at(limits, "1L")).contains(Quantity.of(45, Unit.MM));
        assertThat(at(limits, "2L")).contains(Quantity.of(2, Unit.INCH));
    }

    @Test
    void wheel_without_a_stroke_takes_the_unit_of_the_others_or_of_the_rule() {
        assertThat(at(limits("'wheels': {'1L': {'applied': '40 mm'}}", TABLE), "2R"))
                .contains(Quantity.of(51, Unit.MM));
        assertThat(at(limits("", TABLE), "2R")).contains(Quantity.of(2, Unit.INCH));
    }

    @Test
    void strictest_of_the_rules_that_decide_counts() {
        String stricter =
                rule(
                        "xa.flat",
                        "pushrod-applied-stroke",
                        "'limit': {'at-most': '1 1/2 in'}, 'evidence': 'if-observed'");
        String advice =
                rule(
                        "xa.advice",
                        "pushrod-applied-stroke",
                        "'limit': {'at-most': '1 in'}, 'standing': 'advisory'");

        assertThat(at(limits("", TABLE, stricter, advice), "2R"))
                .contains(Quantity.of(1.5, Unit.INCH));
        assertThat(at(limits("", advice), "2R")).contains(Quantity.of(1, Unit.INCH));
    }

    @Test
    void makers_limit_noted_at_the_wheel_goes_before_the_table() {
        assertThat(
                        at(
                                limits(
                                        "'wheels': {'2L': {'applied': '1 in', 'makers-limit': '1"
                                                + " 3/4 in'}}",
                                        TABLE),
                                "2L"))
                .contains(Quantity.of(1.75, Unit.INCH));
    }

    @Test
    void place_without_a_rule_gives_no_limit() {
        assertThat(at(limits("", rule("xa.tug", "coupling-tug", "'limit': {'is': 'yes'}")), "2L"))
                .isEmpty();
    }

    private static Optional<Quantity> at(StrokeLimits limits, String wheel) {
        return limits.at(WheelId.parse(wheel));
    }

    private static StrokeLimits limits(String evidence, String... rules) {
        return StrokeLimits.of(Trial.of(Packs.of(rules), Trucks.TRUCK, evidence).judgement());
    }
}
