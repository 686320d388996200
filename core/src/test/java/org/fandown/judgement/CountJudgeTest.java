package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fandown.yard.Packs.rule;

import java.util.Optional;
import org.fandown.rulebook.Rulebook;
import org.fandown.units.Unit;
import org.fandown.yard.Packs;
import org.fandown.yard.Trial;
import org.fandown.yard.Trucks;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class CountJudgeTest {
    /** Percentages of whole numbers in double arithmetic. */
    private static final double ROUNDING = 1e-9;

    private static final String EXACT = "'instruments': 'exact', ";

    private static final String STROKES =
            rule(
                    "xa.stroke",
                    "pushrod-applied-stroke",
                    "'limit': {'stroke-table': {'clamp': {'20': '1 3/4 in', '30': '2 in'}}},"
                            + " 'severity': 'minor'");

    private static final String WELL_OVER =
            rule(
                    "xa.count",
                    "brakes-over-limit",
                    "'limit': {'brakes-over': {'share': '20 %', 'over-by': ['6.4 mm', '1/4 in']}},"
                            + " 'words': 'Too many brakes are badly adjusted.'");

    private static final String DEFECTIVE =
            rule("xa.count", "brakes-over-limit", "'limit': {'brakes-over': {'share': '20 %'}}");

    @Test
    void brakes_over_by_the_margin_are_counted_and_the_share_compared() {
        // Limits 1 3/4 in and 2 in: over by 1/4 in at 2 in and 2 1/4 in.
        Finding one = count(WELL_OVER, "1 in", "1 in", "2 in", "2 1/4 in");

        assertThat(one.status()).isEqualTo(Status.NOT_MET);
        assertThat(one.measured()).contains(new Measurement(25, Unit.PERCENT, 0));
        assertThat(one.why().reason())
                .isEqualTo(
                        "1 of 4 brakes beyond the limit; the rule asks for fewer than 20 % of the"
                                + " brakes over their stroke limit by 6.4 mm (1/4 in) or more. Rule:"
                                + " Too many brakes are badly adjusted.");
        assertThat(count(WELL_OVER, "1 in", "1 in", "2 in", "2 3/16 in").status())
                .isEqualTo(Status.MET);
    }

    @Test
    void margin_is_taken_as_printed_for_the_unit_of_the_stroke() {
        // 2 in = 50.8 mm; 50.8 mm and 6.4 mm make 57.2 mm, though 2 1/4 in is 57.15 mm.
        assertThat(count(WELL_OVER, "25 mm", "25 mm", "25 mm", "57.2 mm").status())
                .isEqualTo(Status.NOT_MET);
        assertThat(count(WELL_OVER, "25 mm", "25 mm", "25 mm", "57.16 mm").status())
                .isEqualTo(Status.MET);
    }

    @Test
    void any_stroke_over_its_limit_counts_where_no_margin_is_printed() {
        assertThat(count(DEFECTIVE, "1 in", "1 in", "1 in", "2 in").status()).isEqualTo(Status.MET);
        assertThat(count(DEFECTIVE, "1 in", "1 in", "1 in", "2 1/16 in").status())
                .isEqualTo(Status.NOT_MET);
    }

    @Test
    void defect_noted_at_a_wheel_makes_its_brake_defective() {
        Finding finding =
                Trial.of(
                                Packs.of(STROKES, DEFECTIVE),
                                Trucks.TRUCK,
                                EXACT
                                        + "'wheels': {'1L': {'applied': '1 in'}, '1R': {'applied':"
                                        + " '1 in'}, '2L': {'applied': '1 in', 'defects':"
                                        + " ['lining-cracked']}, '2R': {'applied': '1 in'}}")
                        .finding("xa.count");

        assertThat(finding.status()).isEqualTo(Status.NOT_MET);
        assertThat(finding.measured().orElseThrow().value()).isEqualTo(25, within(ROUNDING));
    }

    @Test
    void defect_noted_at_a_wheel_is_no_stroke_over_the_margin() {
        Finding finding =
                Trial.of(
                                Packs.of(STROKES, WELL_OVER),
                                Trucks.TRUCK,
                                EXACT
                                        + "'wheels': {'1L': {'applied': '1 in'}, '1R': {'applied':"
                                        + " '1 in'}, '2L': {'applied': '1 in', 'defects':"
                                        + " ['lining-cracked']}, '2R': {'applied': '1 in'}}")
                        .finding("xa.count");

        assertThat(finding.status()).isEqualTo(Status.MET);
    }

    @Test
    void share_itself_is_already_too_much() {
        String fiveAxles =
                Trucks.vehicle(
                        Trucks.unit(
                                "truck",
                                "U3",
                                "",
                                Trucks.STEER,
                                Trucks.STEER,
                                Trucks.DRIVE,
                                Trucks.DRIVE,
                                Trucks.DRIVE));
        StringBuilder wheels = new StringBuilder();
        for (int axle = 1; axle <= 5; axle++) {
            wheels.append(
                    "'%dL': {'applied': '%s'}, ".formatted(axle, axle < 5 ? "1 in" : "2 1/4 in"));
            wheels.append(
                    "'%dR': {'applied': '%s'}, ".formatted(axle, axle < 5 ? "1 in" : "2 1/4 in"));
        }
        Finding finding =
                Trial.of(
                                Packs.of(STROKES, DEFECTIVE),
                                fiveAxles,
                                EXACT
                                        + "'wheels': {"
                                        + wheels.substring(0, wheels.length() - 2)
                                        + "}")
                        .finding("xa.count");

        assertThat(finding.measured()).contains(new Measurement(20, Unit.PERCENT, 0));
        assertThat(finding.status()).isEqualTo(Status.NOT_MET);
    }

    @Test
    void unmeasured_brakes_make_the_share_an_interval() {
        Finding open = count(DEFECTIVE, "1 in", "1 in", "1 in", null);

        assertThat(open.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(open.measured()).contains(new Measurement(12.5, Unit.PERCENT, 12.5));
        assertThat(open.why().reason()).startsWith("0 of 4 brakes beyond the limit, 1 not known");
        assertThat(open.why().advice()).startsWith("Measure the remaining brakes");
    }

    @Test
    void enough_bad_brakes_decide_whatever_the_unmeasured_ones_are_like() {
        Finding bad = count(DEFECTIVE, "2 in", null, null, null);

        assertThat(bad.status()).isEqualTo(Status.NOT_MET);
        assertThat(bad.measured()).contains(new Measurement(62.5, Unit.PERCENT, 37.5));
    }

    @Test
    void stroke_too_close_to_call_leaves_its_brake_unknown() {
        Finding open = counted(Packs.of(STROKES, DEFECTIVE), "", "1 in", "1 in", "1 in", "2 in");

        assertThat(open.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(open.why().reason()).contains("1 not known");
    }

    @Test
    void stroke_measured_under_the_wrong_conditions_tells_nothing() {
        String atPressure =
                rule(
                        "xa.stroke",
                        "pushrod-applied-stroke",
                        "'conditions': {'reservoir-pressure': {'range': ['90 psi', '100 psi']}},"
                                + " 'limit': {'stroke-table': {'clamp': {'20': '1 3/4 in', '30': '2"
                                + " in'}}}");
        Finding low =
                counted(
                        Packs.of(atPressure, DEFECTIVE),
                        EXACT + "'circumstances': {'reservoir-pressure': '60 psi'}, ",
                        "1 in",
                        "1 in",
                        "1 in",
                        "1 in");
        Finding right =
                counted(
                        Packs.of(atPressure, DEFECTIVE),
                        EXACT + "'circumstances': {'reservoir-pressure': '95 psi'}, ",
                        "1 in",
                        "1 in",
                        "1 in",
                        "1 in");

        assertThat(low.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(low.why().reason()).contains("0 of 4").contains("4 not known");
        assertThat(right.status()).isEqualTo(Status.MET);
    }

    @Test
    void nothing_measured_is_not_checked() {
        assertThat(count(WELL_OVER, null, null, null, null).status()).isEqualTo(Status.NOT_CHECKED);
    }

    @Test
    void without_a_table_only_the_makers_limit_tells() {
        Finding finding =
                Trial.of(
                                WELL_OVER,
                                EXACT
                                        + "'wheels': {'1L': {'applied': '2 in', 'makers-limit': '1"
                                        + " 3/4 in'}, '1R': {'applied': '1 in'}}")
                        .only();

        assertThat(finding.why().reason()).startsWith("1 of 4 brakes").contains("3 not known");
        assertThat(finding.status()).isEqualTo(Status.NOT_MET);
    }

    @Test
    void brakes_the_rule_may_not_mean_leave_the_share_open() {
        String built =
                rule(
                        "xa.count",
                        "brakes-over-limit",
                        "'applies': {'built': {'from': '1994-10-20'}}, 'limit': {'brakes-over':"
                                + " {'share': '20 %'}}");
        String undated =
                Trucks.vehicle(
                        Trucks.tractor(), Trucks.unit("trailer", "B1", "", Trucks.TRAILER_AXLE));
        Finding finding =
                Trial.of(
                                Packs.of(STROKES, built),
                                undated,
                                EXACT + "'wheels': {'3L': {'applied': '2 1/4 in'}}")
                        .finding("xa.count");

        assertThat(finding.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(finding.why().reason()).contains("when unit B1 was built");
    }

    /** Strokes at 1L, 1R, 2L and 2R; null for none. */
    private static Finding count(String rule, @Nullable String... strokes) {
        return counted(Packs.of(STROKES, rule), EXACT, strokes);
    }

    private static Finding counted(Rulebook book, String evidence, @Nullable String... strokes) {
        String[] wheels = {"1L", "1R", "2L", "2R"};
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < wheels.length; i++) {
            String wheel = wheels[i];
            Optional.ofNullable(strokes[i])
                    .ifPresent(
                            stroke ->
                                    text.append(text.length() == 0 ? "" : ", ")
                                            .append(
                                                    "'"
                                                            + wheel
                                                            + "': {'applied': '"
                                                            + stroke
                                                            + "'}"));
        }
        return Trial.of(book, Trucks.TRUCK, evidence + "'wheels': {" + text + "}")
                .finding("xa.count");
    }
}
