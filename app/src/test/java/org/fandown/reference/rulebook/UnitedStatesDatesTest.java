package org.fandown.reference.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Map;
import org.fandown.app.files.RulePacks;
import org.fandown.check.PlaceCode;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Rulebook;
import org.fandown.rulebook.RulesInForce;
import org.fandown.rulebook.StrokeTable;
import org.fandown.vehicle.VehicleReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitedStatesDatesTest {
    private static final PlaceCode US = new PlaceCode("US");
    private static final Rulebook RULEBOOK = RulePacks.builtIn().rulebookFor(US).orElseThrow();
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final String STROKES = "us.pushrod-applied-stroke.law";

    @Source(
            work = "49 CFR 393.47, brake actuators, slack adjusters, linings and drums",
            edition = "77 FR 46633 (6 August 2012) and 86 FR 57076 (14 October 2021)",
            where = "(e)(1), clamp type 36",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "the day on which the change of 2021 took effect was not read: its publication")
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "2012-09-05, '2 1/4 in (57.2 mm)', first day of the 2012 text",
        "2021-10-13, '2 1/4 in (57.2 mm)', last day of the 2012 text",
        "2021-10-14, '2 1/2 in (63.5 mm)', first day of the 2021 text",
        "2026-11-25, '2 1/2 in (63.5 mm)', day on which the text was read"
    })
    void limit_of_clamp_type_36_is_that_of_the_text_in_force(
            LocalDate day, String limit, String where) {
        Limit.Strokes strokes =
                (Limit.Strokes) rules("truck", Map.of(), day).byId(STROKES).orElseThrow().limit();

        assertThat(strokes.table().limit(StrokeTable.Family.CLAMP, "36").orElseThrow())
                .hasToString(limit);
    }

    @Source(
            work = "77 FR 46633, brake adjustment limits, final rule",
            edition = "6 August 2012",
            where = "effective date 5 September 2012",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void day_before_the_first_known_text_has_no_stroke_limit() {
        LocalDate before = LocalDate.of(2012, 9, 4);

        assertThat(rules("truck", Map.of(), before).byId(STROKES)).isEmpty();
    }

    @Source(
            work = "49 CFR parts 393 and 571.121: dates of manufacture",
            edition = "electronic code, stored copy; 2005 text; 2013 and 2022 texts",
            where = "column where of each row",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "the dates of 393.55 (ABS) as the agency's Safety Planner and the standard say")
    @ParameterizedTest(name = "{0}: not {3}, but {4}")
    @CsvSource({
        "us.governor-cut-in.truck, truck, built, 1975-02-28, 1975-03-01, 393.40(b)(2)",
        "us.governor-cut-in.bus, bus, built, 1975-02-28, 1975-03-01, 393.40(b)(2)",
        "us.low-air-warning.fmvss-121, truck, built, 1975-02-28, 1975-03-01, 393.51(c)",
        "us.low-air-warning.before-1975, truck, built, 1975-03-01, 1975-02-28, 393.51(c)(2)",
        "us.parking-brake-hold.law, truck, built, 1975-02-28, 1975-03-01, 393.41(b)",
        "us.parking-brake-hold.law-trailer, tractor-trailer, trailer-built,"
                + " 1974-12-31, 1975-01-01, 393.41(b)",
        "us.brakes-on-all-wheels.truck, truck, built, 1980-07-24, 1980-07-25, 393.42(b)",
        "us.brakes-on-all-wheels.truck-before-1980, truck, built,"
                + " 1980-07-25, 1980-07-24, 393.42(b)",
        "us.service-control.law, truck, built, 1953-06-30, 1953-07-01, 393.49(a)",
        "us.automatic-adjusters-fitted.power-unit, truck, built,"
                + " 1994-10-19, 1994-10-20, 393.53(b)",
        "us.automatic-adjusters-fitted.trailer, tractor-trailer, trailer-built,"
                + " 1994-10-19, 1994-10-20, 393.53(b)",
        "us.adjustment-indicator-fitted.power-unit, truck, built,"
                + " 1994-10-19, 1994-10-20, 393.53(c)",
        "us.adjustment-indicator-fitted.trailer, tractor-trailer, trailer-built,"
                + " 1994-10-19, 1994-10-20, 393.53(c)",
        "us.abs-fitted.tractor, tractor, built, 1997-02-28, 1997-03-01, 393.55 and S5.1.6",
        "us.abs-fitted.single-unit, truck, built, 1998-02-28, 1998-03-01, 393.55 and S5.1.6",
        "us.abs-fitted.single-unit, bus, built, 1998-02-28, 1998-03-01, 393.55 and S5.1.6",
        "us.abs-fitted.trailer, tractor-trailer, trailer-built,"
                + " 1998-02-28, 1998-03-01, 393.55 and S5.2.3",
        "us.abs-lamp.tractor, tractor, built, 1997-02-28, 1997-03-01, S5.1.6",
        "us.abs-lamp.single-unit, truck, built, 1998-02-28, 1998-03-01, S5.1.6",
        "us.trailer-abs-lamp.in-cab, tractor-trailer, built, 2001-02-28, 2001-03-01, S5.1.6",
        "us.stopping-distance.fmvss-121-older-tractor-loaded, tractor-trailer, built,"
                + " 2013-08-01, 2013-07-31, Table IIa"
    })
    void rule_holds_from_the_date_of_manufacture_that_the_text_names(
            String rule, String vehicle, String key, String not, String but, String where) {
        assertThat(rules(vehicle, Map.of(key, not), TODAY).byId(rule)).isEmpty();
        assertThat(rules(vehicle, Map.of(key, but), TODAY).byId(rule)).isPresent();
    }

    private static RulesInForce rules(String vehicle, Map<String, String> with, LocalDate day) {
        return RULEBOOK.inForce(
                US, VehicleReader.read(TestVehicle.named(vehicle).filledIn(with)), day);
    }
}
