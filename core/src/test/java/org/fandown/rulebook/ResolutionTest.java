package org.fandown.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.fandown.yard.Packs.book;
import static org.fandown.yard.Packs.child;
import static org.fandown.yard.Packs.pack;
import static org.fandown.yard.Packs.rule;

import java.time.LocalDate;
import java.util.List;
import org.fandown.check.Check;
import org.fandown.check.PlaceCode;
import org.fandown.rulebook.SetAside.Reason;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;
import org.fandown.yard.Trucks;
import org.junit.jupiter.api.Test;

class ResolutionTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final Vehicle TRUCK = Trucks.read(Trucks.TRUCK);

    private static final String CUT_OUT_OF_XA =
            rule("xa.governor-cut-out", "governor-cut-out", "'limit': {'at-most': '135 psi'}");

    private static final String CUT_OUT_OF_ON =
            rule("xa-on.governor-cut-out", "governor-cut-out", "'limit': {'at-most': '145 psi'}");

    @Test
    void child_adds_to_its_parent_and_stands_before_it() {
        RulesInForce rules =
                inForce("XA-ON", pack("XA", CUT_OUT_OF_XA), child("XA-ON", "XA", CUT_OUT_OF_ON));

        assertThat(ids(rules)).containsExactly("xa-on.governor-cut-out", "xa.governor-cut-out");
        assertThat(rules.setAside()).isEmpty();
    }

    @Test
    void lineage_goes_from_the_place_to_its_last_ancestor_and_to_nobody_else() {
        RulesInForce rules =
                inForce(
                        "XA-ON-YARD7",
                        pack("XA", CUT_OUT_OF_XA),
                        child("XA-ON", "XA"),
                        child("XA-ON-YARD7", "XA-ON"),
                        child("XA-QC", "XA", other("xa-qc.governor-cut-out")),
                        pack("XB", other("xb.governor-cut-out")));

        assertThat(rules.lineage().stream().map(p -> p.place().code()))
                .containsExactly("XA-ON-YARD7", "XA-ON", "XA");
        assertThat(rules.place()).isEqualTo(new PlaceCode("XA-ON-YARD7"));
        assertThat(ids(rules)).containsExactly("xa.governor-cut-out");
    }

    @Test
    void parent_s_place_knows_nothing_of_its_children() {
        assertThat(
                        ids(
                                inForce(
                                        "XA",
                                        pack("XA", CUT_OUT_OF_XA),
                                        child("XA-ON", "XA", CUT_OUT_OF_ON))))
                .containsExactly("xa.governor-cut-out");
    }

    @Test
    void place_without_a_pack_is_refused_with_the_places_known() {
        Rulebook book = book(pack("XA"), pack("XB"));

        assertThatIllegalArgumentException()
                .isThrownBy(() -> book.inForce(new PlaceCode("XC"), TRUCK, DAY))
                .withMessageContaining("XC")
                .withMessageContaining("XA, XB");
    }

    @Test
    void rulings_stand_in_the_order_of_the_vocabulary() {
        RulesInForce rules =
                inForce(
                        "XA",
                        pack(
                                "XA",
                                rule("xa.tug", "coupling-tug", "'limit': {'is': 'yes'}"),
                                rule(
                                        "xa.low",
                                        "low-air-warning",
                                        "'limit': {'at-least': '60 psi'}"),
                                CUT_OUT_OF_XA));

        assertThat(ids(rules)).containsExactly("xa.governor-cut-out", "xa.low", "xa.tug");
        assertThat(rules.of(Check.LOW_AIR_WARNING)).hasSize(1);
        assertThat(rules.of(Check.GOVERNOR_CUT_IN)).isEmpty();
        assertThat(rules.byId("xa.tug")).isPresent();
        assertThat(rules.byId("xa.gone")).isEmpty();
    }

    // Overrides

    @Test
    void overriding_rule_sets_the_parent_s_aside_and_names_itself() {
        RulesInForce rules =
                inForce(
                        "XA-ON",
                        pack("XA", CUT_OUT_OF_XA),
                        child("XA-ON", "XA", overriding("xa-on.cut-out", "")));

        assertThat(ids(rules)).containsExactly("xa-on.cut-out");
        assertThat(rules.rulings().get(0).rule().kinship().why()).isEqualTo("Its own text.");
        SetAside aside = rules.setAside().get(0);
        assertThat(aside.ruling().rule().id()).isEqualTo("xa.governor-cut-out");
        assertThat(aside.reason()).isEqualTo(Reason.OVERRIDDEN);
        assertThat(aside.by()).isEqualTo("xa-on.cut-out");
        assertThat(aside.settled()).isTrue();
    }

    @Test
    void rule_that_does_not_apply_to_the_vehicle_overrides_nothing() {
        RulesInForce rules =
                inForce(
                        "XA-ON",
                        pack("XA", CUT_OUT_OF_XA),
                        child(
                                "XA-ON",
                                "XA",
                                overriding("xa-on.cut-out", "'applies': {'kinds': ['bus']},")));

        assertThat(ids(rules)).containsExactly("xa.governor-cut-out");
        assertThat(rules.setAside()).isEmpty();
    }

    @Test
    void rule_that_may_apply_overrides_all_the_same_and_stays_open() {
        RulesInForce rules =
                inForce(
                        "XA-ON",
                        pack("XA", CUT_OUT_OF_XA),
                        child(
                                "XA-ON",
                                "XA",
                                overriding(
                                        "xa-on.cut-out", "'applies': {'seats': {'over': 10}},")));

        assertThat(ids(rules)).containsExactly("xa-on.cut-out");
        assertThat(rules.rulings().get(0).fit().answer()).isEqualTo(Fit.Answer.UNKNOWN);
    }

    @Test
    void nearest_overriding_rule_is_named() {
        RulesInForce rules =
                inForce(
                        "XA-ON-YARD7",
                        pack("XA", CUT_OUT_OF_XA),
                        child("XA-ON", "XA", overriding("xa-on.cut-out", "")),
                        child("XA-ON-YARD7", "XA-ON", overriding("xa-on-yard7.cut-out", "")));

        assertThat(ids(rules)).containsExactly("xa-on-yard7.cut-out", "xa-on.cut-out");
        assertThat(rules.setAside().get(0).by()).isEqualTo("xa-on-yard7.cut-out");
    }

    // Conflicts

    @Test
    void settled_conflict_leaves_the_other_rule_alone() {
        RulesInForce rules = inForce("XA", pack("XA", CUT_OUT_OF_XA, rival("yes")));

        assertThat(ids(rules)).containsExactly("xa.governor-cut-out");
        SetAside aside = rules.setAside().get(0);
        assertThat(aside.ruling().rule().id()).isEqualTo("xa.rival");
        assertThat(aside.reason()).isEqualTo(Reason.CONFLICT);
        assertThat(aside.by()).isEqualTo("xa.governor-cut-out");
        assertThat(aside.settled()).isTrue();
    }

    @Test
    void unsettled_conflict_is_marked_so() {
        RulesInForce rules = inForce("XA", pack("XA", CUT_OUT_OF_XA, rival("no")));

        assertThat(rules.setAside().get(0).settled()).isFalse();
    }

    @Test
    void rule_that_yields_to_one_the_place_replaces_is_replaced_with_it() {
        RulesInForce rules =
                inForce(
                        "XA-ON",
                        pack("XA", CUT_OUT_OF_XA, rival("no")),
                        child("XA-ON", "XA", overriding("xa-on.cut-out", "")));

        assertThat(ids(rules)).containsExactly("xa-on.cut-out");
        assertThat(rules.setAside())
                .extracting(aside -> aside.ruling().rule().id())
                .containsExactly("xa.governor-cut-out", "xa.rival");
        assertThat(rules.setAside())
                .allSatisfy(
                        aside -> {
                            assertThat(aside.reason()).isEqualTo(Reason.OVERRIDDEN);
                            assertThat(aside.by()).isEqualTo("xa-on.cut-out");
                            assertThat(aside.settled()).isTrue();
                        });
    }

    @Test
    void rule_in_conflict_is_applied_where_the_other_does_not_apply() {
        String forBuses =
                rule(
                        "xa.governor-cut-out",
                        "governor-cut-out",
                        "'applies': {'kinds': ['bus']}, 'limit': {'at-most': '135 psi'}");

        assertThat(ids(inForce("XA", pack("XA", forBuses, rival("yes")))))
                .containsExactly("xa.rival");
    }

    // Remembered limits

    @Test
    void published_text_of_the_place_sets_a_remembered_limit_aside() {
        RulesInForce rules = inForce("XA", pack("XA", CUT_OUT_OF_XA, remembered("xa.heard", "")));

        assertThat(ids(rules)).containsExactly("xa.governor-cut-out");
        assertThat(rules.setAside().get(0).reason()).isEqualTo(Reason.PUBLISHED_TEXT_KNOWN);
        assertThat(rules.setAside().get(0).by()).isEqualTo("xa.governor-cut-out");
    }

    @Test
    void published_text_of_a_child_sets_the_parent_s_remembered_limit_aside() {
        RulesInForce rules =
                inForce(
                        "XA-ON",
                        pack("XA", remembered("xa.heard", "")),
                        child("XA-ON", "XA", CUT_OUT_OF_ON));

        assertThat(ids(rules)).containsExactly("xa-on.governor-cut-out");
    }

    @Test
    void published_text_of_the_parent_leaves_the_child_s_remembered_limit_standing() {
        RulesInForce rules =
                inForce(
                        "XA-ON",
                        pack("XA", CUT_OUT_OF_XA),
                        child("XA-ON", "XA", remembered("xa-on.heard", "")));

        assertThat(ids(rules)).containsExactly("xa-on.heard", "xa.governor-cut-out");
    }

    @Test
    void remembered_limit_that_overrides_the_published_one_is_not_lost_with_it() {
        RulesInForce rules =
                inForce(
                        "XA-ON",
                        pack("XA", CUT_OUT_OF_XA),
                        child(
                                "XA-ON",
                                "XA",
                                remembered(
                                        "xa-on.heard",
                                        "'overrides': ['xa.governor-cut-out'], 'why': 'Newer.',")));

        assertThat(ids(rules)).containsExactly("xa-on.heard");
    }

    @Test
    void text_that_is_overridden_itself_sets_no_remembered_limit_aside() {
        RulesInForce rules =
                inForce(
                        "XA-ON-YARD7",
                        pack("XA", remembered("xa.heard", "")),
                        child("XA-ON", "XA", CUT_OUT_OF_ON),
                        child(
                                "XA-ON-YARD7",
                                "XA-ON",
                                remembered(
                                        "xa-on-yard7.heard",
                                        "'overrides': ['xa-on.governor-cut-out'], 'why':"
                                                + " 'Newer.',")));

        assertThat(ids(rules)).containsExactly("xa-on-yard7.heard", "xa.heard");
    }

    @Test
    void custom_of_the_trade_is_no_text_and_sets_nothing_aside() {
        String custom =
                rule(
                        "xa.custom",
                        "governor-cut-out",
                        "'provenance': 'common-practice', 'limit': {'at-most': '135 psi'}");

        assertThat(ids(inForce("XA", pack("XA", custom, remembered("xa.heard", "")))))
                .containsExactly("xa.custom", "xa.heard");
    }

    @Test
    void text_on_another_check_or_another_vehicle_sets_nothing_aside() {
        String cutIn = rule("xa.cut-in", "governor-cut-in", "'limit': {'at-least': '85 psi'}");
        String forBuses =
                rule(
                        "xa.bus",
                        "governor-cut-out",
                        "'applies': {'kinds': ['bus']}, 'limit': {'at-most': '135 psi'}");

        assertThat(ids(inForce("XA", pack("XA", cutIn, forBuses, remembered("xa.heard", "")))))
                .containsExactlyInAnyOrder("xa.cut-in", "xa.heard");
    }

    // Dates

    @Test
    void dated_values_change_on_their_day_and_end_on_the_day_before_until() {
        Rulebook book = book(pack("XA", dated()));

        assertThat(limitOn(book, LocalDate.of(1999, 12, 31))).isEqualTo("none");
        assertThat(limitOn(book, LocalDate.of(2000, 1, 1))).isEqualTo("at most 130 psi");
        assertThat(limitOn(book, LocalDate.of(2012, 9, 4))).isEqualTo("at most 130 psi");
        assertThat(limitOn(book, LocalDate.of(2012, 9, 5))).isEqualTo("at most 135 psi");
        assertThat(limitOn(book, LocalDate.of(2024, 2, 29))).isEqualTo("at most 135 psi");
    }

    @Test
    void no_older_value_comes_back_when_the_last_one_has_ended() {
        Rulebook book = book(pack("XA", dated()));

        assertThat(limitOn(book, LocalDate.of(2024, 3, 1))).isEqualTo("none");
        assertThat(limitOn(book, DAY)).isEqualTo("none");
    }

    @Test
    void value_in_force_always_has_no_first_day() {
        String rule =
                rule(
                        "xa.always",
                        "governor-cut-out",
                        "'values': [{'from': 'always', 'limit': {'at-most': '130 psi'},"
                                + " 'source': 'S'}, {'from': '2012-09-05', 'limit':"
                                + " {'at-most': '135 psi'}, 'source': 'T'}]");
        Rulebook book = book(pack("XA", rule));

        assertThat(limitOn(book, LocalDate.of(1900, 1, 1))).isEqualTo("at most 130 psi");
        assertThat(limitOn(book, DAY)).isEqualTo("at most 135 psi");
        assertThat(
                        book.inForce(new PlaceCode("XA"), TRUCK, DAY)
                                .rulings()
                                .get(0)
                                .value()
                                .source()
                                .work())
                .isEqualTo("Yard circular");
    }

    // Facts missing and wheels

    @Test
    void rule_on_a_fact_the_vehicle_file_leaves_out_is_in_force_with_the_fact_named() {
        RulesInForce rules =
                inForce(
                        "XA",
                        pack(
                                "XA",
                                rule(
                                        "xa.seats",
                                        "governor-cut-out",
                                        "'applies': {'seats': {'over': 10}},"
                                                + " 'limit': {'at-most': '135 psi'}")));

        Ruling ruling = rules.rulings().get(0);
        assertThat(ruling.fit()).isEqualTo(Fit.unknown("the number of seats"));
    }

    @Test
    void rule_made_at_wheels_lists_its_wheels_and_is_left_out_where_there_are_none() {
        String steer =
                rule(
                        "xa.steer",
                        "pushrod-free-stroke",
                        "'applies': {'axle': 'steer'}, 'limit': {'at-most': '3/4 in'}");
        String wedge = rule("xa.wedge", "wedge-lining-movement", "'limit': {'at-most': '1/16 in'}");
        RulesInForce rules = inForce("XA", pack("XA", steer, wedge));

        assertThat(ids(rules)).containsExactly("xa.steer");
        assertThat(rules.rulings().get(0).wheels())
                .containsExactly(WheelId.parse("1L"), WheelId.parse("1R"));
    }

    private static String other(String id) {
        return rule(id, "governor-cut-out", "'limit': {'at-most': '150 psi'}");
    }

    private static String overriding(String id, String keys) {
        return rule(
                id,
                "governor-cut-out",
                keys
                        + "'limit': {'at-most': '145 psi'}, 'overrides': ['xa.governor-cut-out'],"
                        + " 'why': 'Its own text.'");
    }

    private static String rival(String settled) {
        return rule(
                "xa.rival",
                "governor-cut-out",
                "'limit': {'at-most': '125 psi'}, 'conflict': {'with': 'xa.governor-cut-out',"
                        + " 'applied': 'no', 'settled': '"
                        + settled
                        + "', 'why': 'Older.'}");
    }

    private static String remembered(String id, String keys) {
        return rule(
                id,
                "governor-cut-out",
                keys
                        + "'limit': {'at-most': '120 psi'}, 'standing': 'unconfirmed',"
                        + " 'provenance': 'from-memory'");
    }

    private static String dated() {
        return rule(
                "xa.dated",
                "governor-cut-out",
                "'values': [{'from': '2000-01-01', 'limit': {'at-most': '130 psi'}, 'source':"
                        + " 'S'}, {'from': '2012-09-05', 'until': '2024-03-01', 'limit':"
                        + " {'at-most': '135 psi'}, 'source': 'T'}]");
    }

    private static String limitOn(Rulebook book, LocalDate day) {
        List<Ruling> rulings = book.inForce(new PlaceCode("XA"), TRUCK, day).rulings();
        return rulings.isEmpty() ? "none" : rulings.get(0).limit().toString();
    }

    private static RulesInForce inForce(String place, Pack... packs) {
        return book(packs).inForce(new PlaceCode(place), TRUCK, DAY);
    }

    private static List<String> ids(RulesInForce rules) {
        return rules.rulings().stream().map(r -> r.rule().id()).toList();
    }
}
