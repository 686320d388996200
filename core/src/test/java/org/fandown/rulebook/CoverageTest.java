package org.fandown.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fandown.yard.Packs.book;
import static org.fandown.yard.Packs.child;
import static org.fandown.yard.Packs.pack;
import static org.fandown.yard.Packs.rule;

import java.time.LocalDate;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.PlaceCode;
import org.fandown.rulebook.RulesInForce.Coverage;
import org.fandown.yard.Packs;
import org.fandown.yard.Trucks;
import org.junit.jupiter.api.Test;

class CoverageTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @Test
    void check_the_place_itself_has_a_rule_for_is_no_gap() {
        assertThat(gap(Check.GOVERNOR_CUT_OUT, Trucks.TRUCK, pack("XA", cutOut("xa", ""))))
                .isEmpty();
    }

    @Test
    void check_that_only_the_parent_has_a_rule_for_names_the_parent_and_says_what_was_looked_for() {
        assertThat(
                        gap(
                                Check.GOVERNOR_CUT_OUT,
                                Trucks.TRUCK,
                                child("XA-ON", "XA"),
                                pack("XA", cutOut("xa", ""))))
                .contains(
                        new Coverage(
                                Check.GOVERNOR_CUT_OUT,
                                Optional.of(new PlaceCode("XA")),
                                Packs.GAP));
    }

    @Test
    void check_nobody_has_a_rule_for_is_said_aloud() {
        assertThat(gap(Check.GOVERNOR_CUT_OUT, Trucks.TRUCK, child("XA-ON", "XA"), pack("XA")))
                .contains(new Coverage(Check.GOVERNOR_CUT_OUT, Optional.empty(), Packs.GAP));
    }

    @Test
    void rule_that_decides_nothing_covers_nothing() {
        assertThat(
                        gap(
                                Check.GOVERNOR_CUT_OUT,
                                Trucks.TRUCK,
                                pack("XA", cutOut("xa", "'standing': 'advisory', "))))
                .isPresent();
    }

    @Test
    void duty_covers_its_check() {
        String duty =
                rule(
                        "xa.report-retention",
                        "report-retention",
                        "'limit': {'duty': 'Keep the report.', 'keep': '6 months'}");

        assertThat(gap(Check.REPORT_RETENTION, Trucks.TRUCK, pack("XA", duty))).isEmpty();
    }

    @Test
    void rule_for_other_vehicles_covers_nothing() {
        assertThat(
                        gap(
                                Check.GOVERNOR_CUT_OUT,
                                Trucks.TRUCK,
                                pack("XA", cutOut("xa", "'applies': {'kinds': ['bus']}, "))))
                .isPresent();
    }

    @Test
    void rule_that_is_overridden_covers_nothing_but_the_one_that_overrides_does() {
        String overriding = "'overrides': ['xa.governor-cut-out'], 'why': 'Its own text.', ";

        assertThat(
                        gap(
                                Check.GOVERNOR_CUT_OUT,
                                Trucks.TRUCK,
                                child("XA-ON", "XA", cutOut("xa-on", overriding)),
                                pack("XA", cutOut("xa", ""))))
                .isEmpty();
    }

    @Test
    void checks_that_do_not_concern_the_vehicle_are_not_missed() {
        assertThat(gap(Check.TRAILER_SUPPLY_CLOSING, Trucks.TRUCK, pack("XA"))).isEmpty();
        assertThat(gap(Check.TRAILER_SUPPLY_CLOSING, Trucks.COMBINATION, pack("XA"))).isPresent();

        String discs =
                Trucks.vehicle(
                        Trucks.unit(
                                "truck",
                                "U9",
                                "",
                                "{'position': 'steer', 'brake': 'disc', 'chamber': 'clamp 20',"
                                        + " 'spring-brake': 'no'}",
                                "{'position': 'drive', 'brake': 'disc', 'chamber': 'clamp 24',"
                                        + " 'spring-brake': 'yes'}"));
        assertThat(gap(Check.PUSHROD_APPLIED_STROKE, discs, pack("XA"))).isEmpty();
        assertThat(gap(Check.PUSHROD_APPLIED_STROKE, Trucks.TRUCK, pack("XA"))).isPresent();
    }

    @Test
    void checks_not_expected_of_every_place_are_never_a_gap() {
        assertThat(gap(Check.COUPLING_TUG, Trucks.COMBINATION, pack("XA"))).isEmpty();
    }

    private static String cutOut(String place, String keys) {
        return rule(
                place + ".governor-cut-out",
                "governor-cut-out",
                keys + "'limit': {'at-most': '135 psi'}");
    }

    /** What the rules of the first pack's place say of the check. */
    private static Optional<Coverage> gap(Check check, String vehicle, Pack... packs) {
        return book(packs).inForce(packs[0].place(), Trucks.read(vehicle), DAY).gaps().stream()
                .filter(g -> g.check() == check)
                .findFirst();
    }
}
