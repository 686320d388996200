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

class FileJudgeTest {
    /** Quotients of whole numbers in double arithmetic. */
    private static final double ROUNDING = 1e-9;

    private static final String CHAMBERS =
            rule(
                    "xa.match",
                    "chamber-match",
                    "'limit': {'same': 'chamber'}, 'words': 'Both chambers of an axle are of one"
                            + " size.'");

    private static final String ARMS =
            rule("xa.match", "adjuster-arm-match", "'limit': {'same': 'adjuster-arm'}");

    @Test
    void each_axle_with_like_chambers_is_met_at_its_left_wheel() {
        Trial trial = Trial.of(CHAMBERS, "");

        assertThat(trial.findings("xa.match")).hasSize(2);
        assertThat(trial.finding("xa.match", "1L").status()).isEqualTo(Status.MET);
        assertThat(trial.finding("xa.match", "2L").why().reason())
                .isEqualTo("Axle 2: chamber left clamp 30, right clamp 30.");
    }

    @ParameterizedTest(name = "{0} beside {1} is {2}")
    @CsvSource({
        "clamp 30, clamp 24,      NOT_MET",
        "clamp 30, clamp 30 long, MET",
        "clamp 30, rotochamber 30,NOT_MET",
        "bolt C,   bolt C,        MET"
    })
    void ends_of_an_axle_are_compared_by_kind_and_size(String left, String right, Status expected) {
        Finding finding =
                drive(
                        CHAMBERS,
                        end("'chamber': '" + left + "'"),
                        end("'chamber': '" + right + "'"));

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason())
                .startsWith("Axle 2: chamber left " + left + ", right " + right + ".");
        assertThat(finding.why().reason().contains("Rule: Both chambers"))
                .isEqualTo(expected == Status.NOT_MET);
    }

    @ParameterizedTest(name = "{0} beside {1} is {2}")
    @CsvSource({
        "5.5 in, 5.5 in,   MET",
        "5.5 in, 139.7 mm, MET",
        "5.5 in, 6 in,     NOT_MET",
        "5.5 in, 140 mm,   NOT_MET"
    })
    void arms_are_compared_by_length(String left, String right, Status expected) {
        Finding finding =
                drive(
                        ARMS,
                        end("'chamber': 'clamp 30', 'arm': '" + left + "'"),
                        end("'chamber': 'clamp 30', 'arm': '" + right + "'"));

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains("slack-adjuster length left 139.7 mm, right");
    }

    @Test
    void arm_the_file_leaves_out_is_not_checked_where_the_place_asks_and_silent_elsewhere() {
        String ends = end("'chamber': 'clamp 30'");
        Finding finding = drive(ARMS, ends, ends);

        assertThat(finding.status()).isEqualTo(Status.NOT_CHECKED);
        assertThat(finding.why().reason())
                .isEqualTo(
                        "The vehicle file does not give the slack-adjuster length at both ends of"
                                + " axle 2.");
        assertThat(finding.why().advice()).isEqualTo("Add it to the vehicle file.");

        String observed =
                rule(
                        "xa.match",
                        "adjuster-arm-match",
                        "'limit': {'same': 'adjuster-arm'}, 'evidence': 'if-observed'");
        assertThat(Trial.of(Packs.of(observed), truck(ends, ends), "").findings("xa.match"))
                .singleElement()
                .satisfies(f -> assertThat(f.wheel().orElseThrow()).hasToString("1L"));
    }

    @Test
    void axle_the_rule_may_not_mean_stays_open() {
        String built =
                rule(
                        "xa.match",
                        "chamber-match",
                        "'applies': {'built': {'from': '1994-10-20'}}, 'limit': {'same':"
                                + " 'chamber'}");
        String ends = end("'chamber': 'clamp 30'");

        assertThat(
                        Trial.of(Packs.of(built), truck(ends, ends), "")
                                .finding("xa.match", "2L")
                                .why()
                                .reason())
                .contains("when unit U3 was built");
    }

    // Reservoirs

    private static final String TWELVE_TIMES =
            rule("xa.reservoirs", "reservoir-volume", "'limit': {'at-least': '1200 %'}");

    @ParameterizedTest(name = "{0} in3 is {1} %: {2}")
    @CsvSource({"1144, 1200, MET", "1143, 1199.650349650, NOT_MET", "1430, 1300, MET"})
    void reservoirs_are_compared_with_the_service_chambers(
            double primary, double percent, Status expected) {
        // Chambers: 2 x 54 + 2 x 89 = 286 in3. Parking and purge reservoirs do not count.
        String truck =
                reservoirs(
                        "{'role': 'supply', 'volume': '1144 in3'}, {'role': 'primary', 'volume': '"
                                + primary
                                + " in3'}, {'role': 'secondary', 'volume': '1144 in3'}, {'role':"
                                + " 'parking', 'volume': '500 in3'}, {'role': 'purge', 'volume':"
                                + " '500 in3'}");
        Finding finding = Trial.of(Packs.of(TWELVE_TIMES), truck, "").only();

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.measured().orElseThrow().value()).isEqualTo(percent, within(1e-8));
        assertThat(finding.measured().orElseThrow().uncertainty()).isZero();
    }

    @Test
    void litres_and_cubic_inches_are_one_volume() {
        String truck =
                reservoirs(
                        "{'role': 'primary', 'volume': '28.120201824 L'}, {'role': 'secondary',"
                                + " 'volume': '1716 in3'}");

        assertThat(
                        Trial.of(Packs.of(TWELVE_TIMES), truck, "")
                                .only()
                                .measured()
                                .orElseThrow()
                                .value())
                .isEqualTo(1200, within(1e-6));
    }

    @Test
    void unknown_volume_is_not_checked_and_names_the_unit() {
        Finding none = Trial.of(TWELVE_TIMES, "").only();
        Finding part =
                Trial.of(
                                Packs.of(TWELVE_TIMES),
                                reservoirs(
                                        "{'role': 'primary', 'volume': '1144 in3'}, {'role':"
                                                + " 'secondary'}"),
                                "")
                        .only();

        assertThat(none.status()).isEqualTo(Status.NOT_CHECKED);
        assertThat(none.why().reason()).contains("of unit U3");
        assertThat(part.status()).isEqualTo(Status.NOT_CHECKED);
    }

    @Test
    void trailers_are_judged_one_by_one() {
        String rule =
                rule("xa.reservoirs", "trailer-reservoir-volume", "'limit': {'at-least': '800 %'}");
        String reservoir = "'reservoirs': [{'role': 'trailer', 'volume': '%s in3'}]";
        String doubles =
                Trucks.vehicle(
                        Trucks.tractor(),
                        Trucks.unit(
                                "trailer", "B1", reservoir.formatted("1424"), Trucks.TRAILER_AXLE),
                        Trucks.dolly("D1"),
                        Trucks.unit(
                                "trailer", "B2", reservoir.formatted("1400"), Trucks.TRAILER_AXLE));

        assertThat(
                        Trial.of(Packs.of(rule), doubles, "").findings("xa.reservoirs").stream()
                                .map(Finding::status))
                .containsExactly(Status.MET, Status.NOT_MET);
        assertThat(
                        Trial.of(Packs.of(rule), doubles, "")
                                .findings("xa.reservoirs")
                                .get(0)
                                .measured()
                                .orElseThrow()
                                .value())
                .isEqualTo(800, within(ROUNDING));
    }

    private static Finding drive(String rule, String left, String right) {
        return Trial.of(Packs.of(rule), truck(left, right), "").finding("xa.match", "2L");
    }

    private static String end(String keys) {
        return "{" + keys + ", 'spring-brake': 'no'}";
    }

    private static String truck(String left, String right) {
        return Trucks.vehicle(
                Trucks.unit(
                        "truck",
                        "U3",
                        "",
                        Trucks.STEER,
                        "{'position': 'drive', 'brake': 'drum', 'left': "
                                + left
                                + ", 'right': "
                                + right
                                + "}"));
    }

    private static String reservoirs(String list) {
        return Trucks.vehicle(
                Trucks.unit(
                        "truck", "U3", "'reservoirs': [" + list + "]", Trucks.STEER, Trucks.DRIVE));
    }
}
