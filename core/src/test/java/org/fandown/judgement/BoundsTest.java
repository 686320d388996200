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

/** Limits that are worked out from other readings or the vehicle. */
class BoundsTest {
    /** Sums and conversions in double arithmetic. */
    private static final double ROUNDING = 1e-9;

    private static final String EXACT = "'instruments': 'exact', ";

    private static final String HALF_OF_CUT_OUT =
            rule(
                    "xa.low",
                    "low-air-warning",
                    "'limit': {'at-least': {'percent': 50, 'of': 'governor-cut-out'}}");

    @Test
    void share_of_another_check_is_worked_out_and_shown() {
        Trial trial =
                Trial.of(
                        HALF_OF_CUT_OUT,
                        EXACT
                                + "'readings': {'low-air-warning': '61 psi', 'governor-cut-out':"
                                + " '120 psi'}");

        assertThat(trial.status()).isEqualTo(Status.MET);
        assertThat(lower(trial)).isEqualTo(60);
        assertThat(trial.reason())
                .isEqualTo(
                        "Measured 61 psi, limit at least 50 % of the governor cut-out, here 60"
                                + " psi.");
    }

    @Test
    void share_is_taken_of_the_lowest_needle_in_the_unit_of_the_reading() {
        Trial trial =
                Trial.of(
                        HALF_OF_CUT_OUT,
                        EXACT
                                + "'readings': {'low-air-warning': '4.1 bar', 'governor-cut-out':"
                                + " ['820 kPa', '840 kPa']}");

        assertThat(lower(trial)).isEqualTo(4.1, within(ROUNDING));
        assertThat(trial.status()).isEqualTo(Status.MET);
    }

    @Test
    void doubt_of_the_other_reading_counts_by_its_share() {
        Trial trial =
                Trial.of(
                        HALF_OF_CUT_OUT,
                        "'instruments': {'gauge': '2 psi'}, 'readings': {'low-air-warning': '61.05"
                                + " psi', 'governor-cut-out': '120 psi'}");

        // 1 psi of the reading itself and half of 1 psi: root of 1.25 is 1.118.
        assertThat(trial.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(trial.reason()).contains("off by 1.12 psi").contains("here 60 psi");
    }

    @Test
    void missing_reading_leaves_the_limit_open_and_is_named() {
        Trial trial = Trial.of(HALF_OF_CUT_OUT, "'readings': {'low-air-warning': '61 psi'}");

        assertThat(trial.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(trial.reason())
                .contains("Measured 61 psi")
                .contains("needs a reading of governor-cut-out");
        assertThat(trial.only().why().advice()).contains("governor-cut-out");
    }

    @ParameterizedTest(name = "cut-out {0}, reading {1}: limit {2}, {3}")
    @CsvSource({
        "100 psi, 50 psi, 50, MET", "100 psi, 49 psi, 50, NOT_MET",
        "120 psi, 55 psi, 55, MET", "120 psi, 54 psi, 55, NOT_MET"
    })
    void least_of_several_figures_counts(
            String cutOut, String reading, double limit, Status expected) {
        Trial trial =
                Trial.of(
                        rule(
                                "xa.low",
                                "low-air-warning",
                                "'limit': {'at-least': {'least-of': [['55 psi', '379 kPa'],"
                                        + " {'percent': 50, 'of': 'governor-cut-out'}]}}"),
                        EXACT
                                + "'readings': {'low-air-warning': '"
                                + reading
                                + "', 'governor-cut-out': '"
                                + cutOut
                                + "'}");

        assertThat(lower(trial)).isEqualTo(limit);
        assertThat(trial.status()).isEqualTo(expected);
    }

    @Test
    void figure_grows_with_each_trailer_but_not_with_a_dolly() {
        String rule =
                rule(
                        "xa.loss",
                        "air-loss-applied",
                        "'limit': {'at-most': {'base': '20 kPa', 'plus': '5 kPa', 'each':"
                                + " 'trailer'}, 'per': '1 min'}");
        String loss =
                EXACT + "'readings': {'air-loss-applied': {'loss': '24 kPa', 'time': '1 min'}}";
        String doubles =
                Trucks.vehicle(
                        Trucks.tractor(),
                        Trucks.semiTrailer("B1"),
                        Trucks.dolly("D1"),
                        Trucks.semiTrailer("B2"));

        assertThat(upper(Trial.of(Packs.of(rule), Trucks.TRUCK, loss))).isEqualTo(20);
        assertThat(upper(Trial.of(Packs.of(rule), Trucks.COMBINATION, loss))).isEqualTo(25);
        assertThat(upper(Trial.of(Packs.of(rule), doubles, loss))).isEqualTo(30);
        assertThat(Trial.of(Packs.of(rule), Trucks.TRUCK, loss).status()).isEqualTo(Status.NOT_MET);
        assertThat(Trial.of(Packs.of(rule), doubles, loss).status()).isEqualTo(Status.MET);
    }

    @Test
    void share_of_the_pressure_before_is_that_of_the_same_reading() {
        String rule =
                rule(
                        "xa.reserve",
                        "reservoir-reserve",
                        "'limit': {'at-least': {'percent': 70, 'of': 'before'}}");
        Trial trial =
                Trial.of(
                        rule,
                        EXACT
                                + "'readings': {'reservoir-reserve': {'before': '100 psi', 'after':"
                                + " '69 psi'}}");

        assertThat(lower(trial)).isEqualTo(70, within(ROUNDING));
        assertThat(trial.status()).isEqualTo(Status.NOT_MET);
        assertThat(trial.reason()).contains("70 % of the pressure before, here 70 psi");
    }

    @Test
    void share_of_the_rated_stroke_is_that_of_the_wheel_s_chamber() {
        String rule =
                rule(
                        "xa.free",
                        "pushrod-free-stroke",
                        "'limit': {'at-most': {'percent': 20, 'of': 'rated-stroke'}}");
        Trial trial =
                Trial.of(
                        rule,
                        EXACT + "'wheels': {'1L': {'free': '0.44 in'}, '2L': {'free': '0.51 in'}}");

        // Full strokes 2.25 in (type 20) and 2.5 in (type 30).
        assertThat(edge(trial.finding("xa.free", "1L"))).isEqualTo(0.45, within(ROUNDING));
        assertThat(edge(trial.finding("xa.free", "2L"))).isEqualTo(0.5, within(ROUNDING));
        assertThat(trial.finding("xa.free", "1L").status()).isEqualTo(Status.MET);
        assertThat(trial.finding("xa.free", "2L").status()).isEqualTo(Status.NOT_MET);
    }

    @Test
    void time_by_reservoir_volume_grows_with_the_volume_over_twelve_times_the_chambers() {
        // Chambers of the truck below: 2 x 54 + 2 x 89 = 286 in3, twelve times 3432 in3.
        String truck =
                Trucks.vehicle(
                        Trucks.unit(
                                "truck",
                                "U3",
                                "'reservoirs': [{'role': 'supply', 'volume': '1144 in3'}, {'role':"
                                        + " 'primary', 'volume': '1144 in3'}, {'role': 'secondary',"
                                        + " 'volume': '2288 in3'}, {'role': 'purge', 'volume':"
                                        + " '300 in3'}]",
                                Trucks.STEER,
                                Trucks.DRIVE));
        String rule =
                rule(
                        "xa.build-up",
                        "build-up",
                        "'window': {'from': '85 psi', 'to': '100 psi'}, 'limit': {'at-most':"
                                + " {'seconds-at-minimum': '25 s', 'by': 'reservoir-ratio'}}");
        String reading =
                EXACT
                        + "'readings': {'build-up': {'from': '85 psi', 'to': '100 psi', 'time': '33"
                        + " s'}}";

        Trial known = Trial.of(Packs.of(rule), truck, reading);
        assertThat(upper(known)).isEqualTo(25.0 * 4576 / 3432, within(ROUNDING));
        assertThat(known.status()).isEqualTo(Status.MET);

        Trial unknown = Trial.of(rule, reading);
        assertThat(unknown.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(unknown.reason()).contains("the volume of each reservoir and chamber");
    }

    @Test
    void distance_by_speed_follows_the_formula() {
        String rule =
                rule(
                        "xa.stop",
                        "stopping-distance",
                        "'limit': {'at-most': {'lag': 0.15, 'square-over': 130}}");

        // 0.15 x 60 + 60 x 60 / 130 = 36.692 m.
        Trial met = Trial.of(rule, EXACT + stop("36.6 m", "60 km/h"));
        assertThat(upper(met)).isEqualTo(36.69230769230769, within(ROUNDING));
        assertThat(met.status()).isEqualTo(Status.MET);
        assertThat(Trial.of(rule, EXACT + stop("36.7 m", "60 km/h")).status())
                .isEqualTo(Status.NOT_MET);
        // 20 mph = 32.18688 km/h: 4.828 m + 7.969 m = 12.797 m = 41.985 ft.
        assertThat(upper(Trial.of(rule, EXACT + stop("40 ft", "20 mph"))))
                .isEqualTo(41.985, within(1e-3));
        Trial unknown =
                Trial.of(rule, EXACT + "'readings': {'stopping-distance': {'value': '36 m'}}");
        assertThat(unknown.reason()).contains("needs the speed");
    }

    private static String stop(String distance, String speed) {
        return "'readings': {'stopping-distance': {'value': '"
                + distance
                + "', 'speed': '"
                + speed
                + "'}}";
    }

    private static double lower(Trial trial) {
        return trial.only().allowed().orElseThrow().lower().orElseThrow().value();
    }

    private static double upper(Trial trial) {
        return edge(trial.only());
    }

    private static double edge(Finding finding) {
        return finding.allowed().orElseThrow().upper().orElseThrow().value();
    }
}
