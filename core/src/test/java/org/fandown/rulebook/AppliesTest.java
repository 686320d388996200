package org.fandown.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.fandown.yard.Packs.pack;
import static org.fandown.yard.Packs.rule;
import static org.fandown.yard.Trucks.unit;
import static org.fandown.yard.Trucks.vehicle;

import java.time.LocalDate;
import java.util.List;
import org.fandown.check.PlaceCode;
import org.fandown.document.DocumentException;
import org.fandown.vehicle.WheelId;
import org.fandown.yard.Packs;
import org.fandown.yard.Trucks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AppliesTest {
    private static final String YES = "yes";
    private static final String NO = "no";

    private static final String DOUBLES =
            vehicle(
                    Trucks.tractor(),
                    Trucks.semiTrailer("B1"),
                    Trucks.dolly("D1"),
                    Trucks.semiTrailer("B2"));

    private static final String SILENT =
            vehicle(
                    unit(
                            "truck",
                            "U5",
                            "",
                            "{'position': 'steer', 'brake': 'drum', 'chamber': 'clamp 20',"
                                    + " 'spring-brake': 'no'}",
                            "{'position': 'drive', 'brake': 'drum', 'chamber': 'clamp 30',"
                                    + " 'spring-brake': 'no'}"));

    private static final String MIXED =
            vehicle(
                    unit(
                            "bus",
                            "C2",
                            "'seats': 48",
                            "{'position': 'steer', 'brake': 'disc', 'chamber': 'clamp 20',"
                                    + " 'spring-brake': 'no', 'lining': 'pads'}",
                            "{'position': 'drive', 'brake': 'drum', 'chamber': 'clamp 30 long',"
                                    + " 'spring-brake': 'yes', 'adjuster': 'manual', 'lining':"
                                    + " 'strip'}",
                            "{'position': 'tag', 'brake': 'wedge', 'chamber': 'clamp 12',"
                                    + " 'spring-brake': 'no', 'lining': 'two-pad'}"));

    private static final String HYDRAULIC =
            vehicle(
                    unit(
                            "truck",
                            "H1",
                            "'brakes': 'air-over-hydraulic'",
                            "{'position': 'steer', 'brake': 'disc'}",
                            "{'position': 'drive', 'brake': 'drum'}"));

    @ParameterizedTest
    @CsvSource({
        "1, yes, no, no",
        "2, no, yes, no",
        "3, no, no, yes",
        "2+, no, yes, yes",
        "3+, no, no, yes"
    })
    void units_counts_vehicles_with_air_brakes_without_dollies(
            String units, String one, String two, String three) {
        String applies = "'units': '" + units + "'";

        assertThat(fit(applies, Trucks.TRUCK)).isEqualTo(one);
        assertThat(fit(applies, Trucks.COMBINATION)).isEqualTo(two);
        assertThat(fit(applies, DOUBLES)).isEqualTo(three);
    }

    @Test
    void trailer_without_air_brakes_is_not_counted() {
        String electric =
                vehicle(
                        Trucks.unit("truck", "U3", "", Trucks.STEER, Trucks.DRIVE),
                        unit("trailer", "E1", "'brakes': 'none'", "{'brake': 'drum'}"));

        assertThat(fit("'units': '1'", electric)).isEqualTo(YES);
        assertThat(fit("'has': 'trailer'", electric)).isEqualTo(YES);
        assertThat(fit("'has': 'air-braked-trailer'", electric)).isEqualTo(NO);
    }

    @Test
    void kinds_names_the_powered_unit() {
        assertThat(fit("'kinds': ['truck', 'bus']", Trucks.TRUCK)).isEqualTo(YES);
        assertThat(fit("'kinds': ['truck', 'bus']", MIXED)).isEqualTo(YES);
        assertThat(fit("'kinds': ['truck', 'bus']", Trucks.COMBINATION)).isEqualTo(NO);
    }

    @ParameterizedTest
    @CsvSource({
        "trailer,              no,  yes, yes, no,  no",
        "air-braked-trailer,   no,  yes, yes, no,  no",
        "dolly,                no,  no,  yes, no,  no",
        "spring-brakes,        yes, yes, yes, yes, no",
        "trailer-spring-brakes,no,  yes, yes, no,  no",
        "automatic-adjusters,  yes, yes, yes, no,  no",
        "manual-adjusters,     no,  no,  no,  yes, no",
        "odometer,             yes, yes, yes, yes, yes",
        "drum,                 yes, yes, yes, yes, yes",
        "disc,                 no,  no,  no,  yes, yes",
        "wedge,                no,  no,  no,  yes, no",
        "air-over-hydraulic,   no,  no,  no,  no,  yes",
        "exposed-push-rods,    yes, yes, yes, yes, no"
    })
    void has_and_lacks_are_opposites(
            String part,
            String truck,
            String combination,
            String doubles,
            String mixed,
            String hydraulic) {
        String has = "'has': ['" + part + "']";
        String lacks = "'lacks': ['" + part + "']";
        List<String> vehicles =
                List.of(Trucks.TRUCK, Trucks.COMBINATION, DOUBLES, MIXED, HYDRAULIC);
        List<String> expected = List.of(truck, combination, doubles, mixed, hydraulic);

        for (int i = 0; i < vehicles.size(); i++) {
            assertThat(fit(has, vehicles.get(i))).as(has + " " + i).isEqualTo(expected.get(i));
            assertThat(fit(lacks, vehicles.get(i)))
                    .as(lacks + " " + i)
                    .isEqualTo(expected.get(i).equals(YES) ? NO : YES);
        }
    }

    @Test
    void abs_counts_on_any_unit_and_is_unknown_where_a_unit_does_not_say() {
        String unsaid = vehicle(Trucks.tractor(), unit("trailer", "B1", "", Trucks.TRAILER_AXLE));
        String without = vehicle(unit("truck", "U3", "'abs': false", Trucks.STEER, Trucks.DRIVE));

        assertThat(fit("'has': 'abs'", unsaid)).isEqualTo(YES);
        assertThat(fit("'has': 'abs'", without)).isEqualTo(NO);
        assertThat(fit("'lacks': 'abs'", without)).isEqualTo(YES);
        assertThat(fit("'has': 'abs'", SILENT)).isEqualTo("whether it has ABS");
        assertThat(fit("'lacks': 'abs'", SILENT)).isEqualTo("whether it has ABS");
    }

    @Test
    void adjusters_are_unknown_where_a_drum_brake_does_not_say() {
        assertThat(fit("'has': 'manual-adjusters'", SILENT))
                .isEqualTo("whether it has manual slack adjusters");
        assertThat(fit("'lacks': 'automatic-adjusters'", SILENT))
                .isEqualTo("whether it has automatic slack adjusters");
    }

    @Test
    void supply_reservoir_is_unknown_only_where_the_file_says_nothing_of_the_supply() {
        String dryer =
                vehicle(
                        unit(
                                "truck",
                                "U3",
                                "'supply': 'integrated-dryer-unit'",
                                Trucks.STEER,
                                Trucks.DRIVE));
        String listed =
                vehicle(
                        unit(
                                "truck",
                                "U3",
                                "'reservoirs': [{'role': 'supply'}, {'role': 'primary'}]",
                                Trucks.STEER,
                                Trucks.DRIVE));

        assertThat(fit("'has': 'supply-reservoir'", Trucks.TRUCK)).isEqualTo(YES);
        assertThat(fit("'has': 'supply-reservoir'", listed)).isEqualTo(YES);
        assertThat(fit("'has': 'supply-reservoir'", dryer)).isEqualTo(NO);
        assertThat(fit("'lacks': 'supply-reservoir'", dryer)).isEqualTo(YES);
        assertThat(fit("'has': 'supply-reservoir'", SILENT))
                .isEqualTo("whether it has a supply reservoir");
    }

    @Test
    void feature_nobody_knows_is_refused() {
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> fit("'has': 'sails'", Trucks.TRUCK))
                .withMessageContaining("sails")
                .withMessageContaining("exposed-push-rods");
    }

    @Test
    void use_and_brakes_name_what_the_powered_unit_is() {
        assertThat(fit("'use': 'property'", Trucks.TRUCK)).isEqualTo(YES);
        assertThat(fit("'use': 'passenger'", Trucks.TRUCK)).isEqualTo(NO);
        assertThat(fit("'brakes': 'air'", Trucks.TRUCK)).isEqualTo(YES);
        assertThat(fit("'brakes': 'air'", HYDRAULIC)).isEqualTo(NO);
        assertThat(fit("'brakes': 'air-over-hydraulic'", HYDRAULIC)).isEqualTo(YES);
    }

    @Test
    void standard_is_the_one_the_powered_unit_names() {
        String adr =
                vehicle(unit("truck", "U3", "'standard': ['adr-35']", Trucks.STEER, Trucks.DRIVE));

        assertThat(fit("'standard': 'adr-35'", adr)).isEqualTo(YES);
        assertThat(fit("'not-standard': 'adr-35'", adr)).isEqualTo(NO);
        assertThat(fit("'standard': 'un-r13'", adr)).isEqualTo(NO);
        assertThat(fit("'standard': 'adr-35'", Trucks.TRUCK)).isEqualTo(NO);
        assertThat(fit("'not-standard': 'adr-35'", Trucks.TRUCK)).isEqualTo(YES);
    }

    @ParameterizedTest
    @CsvSource({
        "'''from'': ''2018-05-14''', yes",
        "'''from'': ''2018-05-15''', no",
        "'''before'': ''2018-05-14''', no",
        "'''before'': ''2018-05-15''', yes",
        "'''from'': ''2018-01-01'', ''before'': ''2019-01-01''', yes",
        "'''from'': ''2019-01-01'', ''before'': ''2020-01-01''', no"
    })
    void build_date_counts_from_its_first_day_to_the_day_before_its_last(
            String dates, String expected) {
        assertThat(fit("'built': {" + dates + "}", Trucks.TRUCK)).isEqualTo(expected);
        assertThat(fit("'built': {" + dates + "}", SILENT)).isEqualTo("when unit U5 was built");
    }

    @Test
    void month_of_building_is_enough_unless_the_date_falls_inside_it() {
        String may = vehicle(unit("truck", "U3", "'built': '2018-05'", Trucks.STEER, Trucks.DRIVE));

        assertThat(fit("'built': {'from': '2018-05-01'}", may)).isEqualTo(YES);
        assertThat(fit("'built': {'from': '2018-06-01'}", may)).isEqualTo(NO);
        assertThat(fit("'built': {'before': '2018-06-01'}", may)).isEqualTo(YES);
        assertThat(fit("'built': {'before': '2018-05-01'}", may)).isEqualTo(NO);
        assertThat(fit("'built': {'from': '2018-05-15'}", may))
                .isEqualTo("on which day of 2018-05 unit U3 was built");
        assertThat(fit("'built': {'before': '2018-05-15'}", may))
                .isEqualTo("on which day of 2018-05 unit U3 was built");
    }

    @Test
    void build_dates_of_trailers_have_to_hold_for_every_trailer() {
        String old = unit("trailer", "B0", "'built': '1994-06-01'", Trucks.TRAILER_AXLE);
        String unsaid = unit("trailer", "B9", "", Trucks.TRAILER_AXLE);
        String applies = "'built': {'from': '2015-03-20', 'of': 'trailer'}";

        assertThat(fit(applies, Trucks.TRUCK)).isEqualTo(NO);
        assertThat(fit(applies, Trucks.COMBINATION)).isEqualTo(YES);
        assertThat(fit(applies, vehicle(Trucks.tractor(), Trucks.semiTrailer("B1"), old)))
                .isEqualTo(NO);
        assertThat(fit(applies, vehicle(Trucks.tractor(), Trucks.semiTrailer("B1"), unsaid)))
                .isEqualTo("when unit B9 was built");
        assertThat(fit(applies, vehicle(Trucks.tractor(), unsaid, old))).isEqualTo(NO);
    }

    @ParameterizedTest
    @CsvSource({
        "over, 14999 kg, yes", "over, 15000 kg, no",
        "at-least, 15000 kg, yes", "at-least, 15001 kg, no",
        "at-most, 15000 kg, yes", "at-most, 14999 kg, no",
        "under, 15001 kg, yes", "under, 15000 kg, no",
        "over, 33069 lb, yes", "over, 33070 lb, no"
    })
    void mass_is_that_of_the_truck_alone(String edge, String mass, String expected) {
        String applies = "'mass': {'" + edge + "': '" + mass + "'}";

        assertThat(fit(applies, Trucks.TRUCK)).isEqualTo(expected);
        assertThat(fit(applies, SILENT)).isEqualTo("the gross mass of unit U5");
    }

    @Test
    void mass_of_a_combination_is_the_sum_and_the_registered_mass_goes_first() {
        String registered =
                vehicle(
                        unit(
                                "truck",
                                "U3",
                                "'gross-mass': '15000 kg', 'registered-mass': '11000 kg'",
                                Trucks.STEER,
                                Trucks.DRIVE));

        assertThat(fit("'mass': {'at-least': '25800 kg'}", Trucks.COMBINATION)).isEqualTo(YES);
        assertThat(fit("'mass': {'over': '25800 kg'}", Trucks.COMBINATION)).isEqualTo(NO);
        assertThat(fit("'mass': {'at-most': '11000 kg'}", registered)).isEqualTo(YES);
    }

    @Test
    void seats_are_those_of_the_powered_unit() {
        assertThat(fit("'seats': {'over': 47}", MIXED)).isEqualTo(YES);
        assertThat(fit("'seats': {'over': 48}", MIXED)).isEqualTo(NO);
        assertThat(fit("'seats': {'under': 48}", MIXED)).isEqualTo(NO);
        assertThat(fit("'seats': {'over': 10}", Trucks.TRUCK)).isEqualTo("the number of seats");
    }

    @Test
    void all_keys_have_to_hold_and_a_no_goes_before_an_unknown() {
        assertThat(fit("'kinds': ['truck'], 'units': '1'", Trucks.TRUCK)).isEqualTo(YES);
        assertThat(fit("'kinds': ['truck'], 'units': '2'", Trucks.TRUCK)).isEqualTo(NO);
        assertThat(fit("'seats': {'over': 10}, 'kinds': ['bus']", Trucks.TRUCK)).isEqualTo(NO);
        assertThat(fit("'kinds': ['bus'], 'seats': {'over': 10}", Trucks.TRUCK)).isEqualTo(NO);
        assertThat(fit("'seats': {'over': 10}, 'kinds': ['truck']", Trucks.TRUCK))
                .isEqualTo("the number of seats");
    }

    @Test
    void unknown_goes_before_a_yes_in_either_order() {
        assertThat(fit("'has': 'abs', 'use': 'property'", SILENT)).isEqualTo("whether it has ABS");
        assertThat(fit("'kinds': ['truck'], 'has': 'abs'", SILENT)).isEqualTo("whether it has ABS");
    }

    // One wheel

    @Test
    void axle_tells_steering_axles_from_the_others() {
        assertThat(wheels("lining-thickness", "'axle': 'steer'", MIXED))
                .containsExactly("1L", "1R");
        assertThat(wheels("lining-thickness", "'axle': 'not-steer'", MIXED))
                .containsExactly("2L", "2R", "3L", "3R");
    }

    @Test
    void brake_and_chamber_and_lining_pick_wheels() {
        assertThat(wheels("lining-thickness", "'brake': 'drum'", MIXED))
                .containsExactly("2L", "2R");
        assertThat(wheels("lining-thickness", "'brake': 'disc'", MIXED))
                .containsExactly("1L", "1R");
        assertThat(wheels("lining-thickness", "'brake': 'wedge'", MIXED))
                .containsExactly("3L", "3R");
        assertThat(wheels("lining-thickness", "'lining': 'strip'", MIXED))
                .containsExactly("2L", "2R");
        assertThat(wheels("pushrod-free-stroke", "'chamber': 'clamp 30'", MIXED)).isEmpty();
        assertThat(wheels("pushrod-free-stroke", "'chamber': 'clamp 30 long'", MIXED))
                .containsExactly("2L", "2R");
        assertThat(wheels("pushrod-free-stroke", "'chamber': 'clamp 30'", Trucks.TRUCK))
                .containsExactly("2L", "2R");
    }

    @Test
    void wheel_whose_lining_the_file_leaves_out_counts_as_meant() {
        assertThat(wheels("lining-thickness", "'lining': 'strip'", Trucks.TRUCK))
                .containsExactly("1L", "1R", "2L", "2R");
        Ruling ruling = rulings("lining-thickness", "'lining': 'strip'", Trucks.TRUCK).get(0);
        assertThat(ruling.rule().applies().wheelFit(Trucks.read(Trucks.TRUCK), WheelId.parse("2R")))
                .isEqualTo(Fit.unknown("the form of the lining at 2R"));
    }

    @Test
    void build_date_at_a_wheel_is_that_of_the_unit_with_the_wheel() {
        assertThat(
                        wheels(
                                "pushrod-free-stroke",
                                "'built': {'from': '2018-01-01'}",
                                Trucks.COMBINATION))
                .containsExactly("1L", "1R", "2L", "2R");
        assertThat(
                        wheels(
                                "pushrod-free-stroke",
                                "'built': {'before': '2018-01-01'}",
                                Trucks.COMBINATION))
                .containsExactly("3L", "3R");
    }

    @Test
    void check_made_at_wheels_skips_brakes_it_cannot_be_made_at() {
        assertThat(wheels("pushrod-applied-stroke", "", MIXED)).containsExactly("2L", "2R");
        assertThat(wheels("stroke-indicator-hidden", "", MIXED)).containsExactly("2L", "2R");
        assertThat(wheels("wedge-lining-movement", "", MIXED)).containsExactly("3L", "3R");
        assertThat(wheels("cam-angle", "", MIXED)).containsExactly("2L", "2R");
        assertThat(wheels("lining-thickness", "", MIXED)).hasSize(6);
        assertThat(wheels("lining-thickness", "", HYDRAULIC)).hasSize(4);
        assertThat(wheels("pushrod-applied-stroke", "", HYDRAULIC)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"'axle': 'steer'", "'brake': 'drum'", "'lining': 'strip'"})
    void criterion_of_one_wheel_is_refused_for_a_check_of_the_whole(String applies) {
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> fit(applies, Trucks.TRUCK))
                .withMessageContaining("about one wheel, but the check is not");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "'units': '4'",
                "'units': 'one'",
                "'kinds': ['boat']",
                "'mass': {'over': '4 m'}",
                "'mass': {'over': '4500 kg', 'at-least': '4500 kg'}",
                "'seats': {'over': -1}",
                "'built': {'from': '2018-02-30'}",
                "'colour': 'red'"
            })
    void criteria_that_make_no_sense_are_refused(String applies) {
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> fit(applies, Trucks.TRUCK))
                .withMessageContaining("XA.json");
    }

    /** Yes, no, or the fact that is missing. */
    private static String fit(String applies, String vehicle) {
        List<Ruling> rulings = rulings("governor-cut-out", applies, vehicle);
        if (rulings.isEmpty()) {
            return NO;
        }
        Fit fit = rulings.get(0).fit();
        return fit.answer() == Fit.Answer.YES ? YES : fit.missing();
    }

    private static List<String> wheels(String check, String applies, String vehicle) {
        List<Ruling> rulings = rulings(check, applies, vehicle);
        return rulings.isEmpty()
                ? List.of()
                : rulings.get(0).wheels().stream().map(WheelId::toString).toList();
    }

    private static List<Ruling> rulings(String check, String applies, String vehicle) {
        String limit =
                switch (check) {
                    case "governor-cut-out" -> "{'at-most': '135 psi'}";
                    case "cam-angle" -> "{'at-most': '120 deg'}";
                    case "stroke-indicator-hidden" -> "{'is': 'yes'}";
                    default -> "{'at-most': '1 in'}";
                };
        String rule = rule("xa.r", check, "'applies': {" + applies + "}, 'limit': " + limit);
        return Packs.book(pack("XA", rule))
                .inForce(new PlaceCode("XA"), Trucks.read(vehicle), LocalDate.of(2026, 3, 2))
                .rulings();
    }
}
