package org.fandown.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fandown.yard.Packs.rule;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fandown.braking.BrakingEstimate;
import org.fandown.check.PlaceCode;
import org.fandown.record.BrakingSummary.Line;
import org.fandown.rulebook.RulesInForce;
import org.fandown.yard.Packs;
import org.fandown.yard.Trial;
import org.fandown.yard.Trucks;
import org.junit.jupiter.api.Test;

class BrakingSummaryTest {
    private static final String FORCE = "braking force beside fully adjusted brakes";
    private static final String STOP = "stop from 20 mph";
    private static final String DECELERATION = "deceleration";
    private static final String DIFFERENCE = "greatest left-right difference";

    @Test
    void states_go_from_cold_to_hot_and_assumptions_are_listed() {
        BrakingSummary summary = summary("1 in", "1 in", "1 1/2 in", "1 1/2 in");

        assertThat(summary.lines().stream().map(Line::drums).distinct()).first().isEqualTo("cold");
        assertThat(summary.lines().stream().map(Line::drums).distinct().count()).isGreaterThan(1);
        assertThat(summary.assumptions()).isNotEmpty().doesNotContain("");
    }

    @Test
    void equal_strokes_differ_nowhere() {
        assertThat(line(summary("1 in", "1 in", "1 1/2 in", "1 1/2 in"), "cold", DIFFERENCE))
                .isEmpty();
    }

    @Test
    void greatest_difference_names_its_axle() {
        Line line =
                line(summary("1 in", "1 in", "1 1/2 in", "2 1/4 in"), "cold", DIFFERENCE)
                        .orElseThrow();

        assertThat(line.remark()).isEqualTo("axle 2");
        assertThat(line.value()).endsWith(" %");
    }

    @Test
    void stroke_used_up_is_named_with_its_wheel() {
        Line line =
                line(summary("1 in", "1 in", "1 1/2 in", "2 1/2 in"), "cold", FORCE).orElseThrow();

        assertThat(line.remark()).isEqualTo("stroke used up at 2R");
    }

    @Test
    void unmeasured_brakes_make_ranges() {
        BrakingSummary known = summary("1 in", "1 in", "1 1/2 in", "1 1/2 in");
        BrakingSummary partly = summary("1 in", "1 in", "1 1/2 in");

        assertThat(line(known, "cold", FORCE).orElseThrow().value()).doesNotContain(" to ");
        assertThat(line(partly, "cold", FORCE).orElseThrow().value()).contains(" to ");
    }

    @Test
    void vehicle_of_unknown_mass_has_no_stop_and_the_reason_is_told() {
        String massless =
                Trucks.vehicle(Trucks.unit("truck", "U3", "", Trucks.STEER, Trucks.DRIVE));
        BrakingSummary summary =
                BrakingSummary.of(estimate(massless, "1 in", "1 in"), Optional.empty());
        Line stop = line(summary, "cold", STOP).orElseThrow();

        assertThat(stop.value()).isEqualTo("not known");
        assertThat(stop.remark()).isNotEmpty();
        assertThat(line(summary, "cold", DECELERATION)).isEmpty();
    }

    @Test
    void stop_and_deceleration_stand_beside_the_limits_of_the_place_given() {
        RulesInForce yardsticks =
                Packs.of(
                                rule(
                                        "xa.stop",
                                        "stopping-distance",
                                        "'limit': {'at-most': '40 ft'}, 'evidence': 'if-observed'"),
                                rule(
                                        "xa.slow",
                                        "deceleration",
                                        "'limit': {'at-least': '14 ft/s2'}, 'standing':"
                                                + " 'advisory'"))
                        .inForce(
                                new PlaceCode("XA"),
                                Trucks.read(Trucks.TRUCK),
                                LocalDate.of(2026, 3, 2));
        BrakingSummary summary =
                BrakingSummary.of(
                        estimate(Trucks.TRUCK, "1 in", "1 in", "1 1/2 in", "1 1/2 in"),
                        Optional.of(yardsticks));

        assertThat(line(summary, "cold", STOP).orElseThrow().remark())
                .isEqualTo("limit at most 40 ft, Yard handbook 1");
        assertThat(line(summary, "cold", DECELERATION).orElseThrow().remark()).isEmpty();
    }

    private static BrakingSummary summary(String... strokes) {
        return BrakingSummary.of(estimate(Trucks.TRUCK, strokes), Optional.empty());
    }

    /** Strokes at 1L, 1R, 2L, 2R as far as they are given. */
    private static BrakingEstimate estimate(String vehicle, String... strokes) {
        List<String> wheels = List.of("1L", "1R", "2L", "2R");
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < strokes.length; i++) {
            text.append(i == 0 ? "" : ", ").append("'").append(wheels.get(i));
            text.append("': {'applied': '").append(strokes[i]).append("'}");
        }
        return MeasuredStrokes.estimate(Trial.inspection("XA", vehicle, "'wheels': {" + text + "}"))
                .orElseThrow();
    }

    private static Optional<Line> line(BrakingSummary summary, String drums, String what) {
        return summary.lines().stream()
                .filter(line -> line.drums().equals(drums) && line.what().equals(what))
                .findFirst();
    }
}
