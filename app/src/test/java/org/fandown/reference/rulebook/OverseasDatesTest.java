package org.fandown.reference.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Map;
import org.fandown.app.files.RulePacks;
import org.fandown.check.PlaceCode;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.rulebook.RulesInForce;
import org.fandown.vehicle.VehicleReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rules that begin on a day, and rules for vehicles that count from a day on. */
class OverseasDatesTest {

    @Source(
            work = "Vehicle inspection requirements manual (New Zealand): heavy vehicles",
            edition = "text of 2026-11-25",
            where = "8-1, item 7",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"2020-02-26, false, '8-1, item 7'", "2020-02-27, true, '8-1, item 7'"})
    void parking_brake_form_is_asked_for_from_its_first_day_on(
            LocalDate day, boolean inForce, String where) {
        assertThat(
                        rules("NZ", "truck", "2015-06", day)
                                .byId("nz.maintenance-programme.parking-brake-form")
                                .isPresent())
                .isEqualTo(inForce);
    }

    @Source(
            work =
                    "Vehicle inspection requirements manual (New Zealand); Directive 2014/45/EU, Annex"
                            + " I",
            edition = "text of 2026-11-25; the directive from memory",
            where = "as the column where names it",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "the build date stands in for the day of first registration")
    @ParameterizedTest(name = "{0} for a {1} of {2}: {3}")
    @CsvSource({
        "nz.build-up-after-applications.passenger, bus, 1978-02-09, false, '5-2, item 2'",
        "nz.build-up-after-applications.passenger, bus, 1978-02-10, true, '5-2, item 2'",
        "nz.parking-brake-wheel-share, truck, 1990-10-31, false, '8-1, item 5'",
        "nz.parking-brake-wheel-share, truck, 1990-11-01, true, '8-1, item 5'",
        "nz.component-condition.single-line, tractor-trailer, 2007-02-28, false, 'trailers 12'",
        "nz.component-condition.single-line, tractor-trailer, 2007-03-01, true, 'trailers 12'",
        "eu.braking-force.new, truck, 2012-01-01, false, 'Annex I, 1.2.2: after 1 January 2012'",
        "eu.braking-force.new, truck, 2012-01-02, true, 'Annex I, 1.2.2: after 1 January 2012'",
        "eu.braking-force.old-goods, truck, 2012-01-01, true, 'Annex I, 1.2.2: earlier'",
        "eu.braking-force.old-goods, truck, 2012-01-02, false, 'Annex I, 1.2.2: earlier'",
        "eu.braking-force.old-passenger, bus, 2012-01-01, true, 'Annex I, 1.2.2: earlier'",
        "eu.braking-force.old-passenger, bus, 2012-01-02, false, 'Annex I, 1.2.2: earlier'"
    })
    void rule_counts_for_vehicles_from_its_first_day_on(
            String rule, String vehicle, String built, boolean applies, String where) {
        String place = rule.substring(0, 2).toUpperCase(java.util.Locale.ROOT);
        RulesInForce rules = rules(place, vehicle, built, LocalDate.parse("2026-11-25"));

        assertThat(rules.byId(rule).isPresent()).isEqualTo(applies);
    }

    private static RulesInForce rules(String place, String vehicle, String built, LocalDate day) {
        PlaceCode code = new PlaceCode(place);
        return RulePacks.builtIn()
                .rulebookFor(code)
                .orElseThrow()
                .inForce(
                        code,
                        VehicleReader.read(
                                TestVehicle.named(vehicle).filledIn(Map.of("built", built))),
                        day);
    }
}
