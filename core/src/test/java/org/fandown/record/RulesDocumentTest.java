package org.fandown.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fandown.yard.Packs.rule;

import java.time.LocalDate;
import org.fandown.check.PlaceCode;
import org.fandown.document.Json;
import org.fandown.document.ListNode;
import org.fandown.document.MapNode;
import org.fandown.yard.Packs;
import org.fandown.yard.Trucks;
import org.junit.jupiter.api.Test;

class RulesDocumentTest {
    private static final String BUILD_UP =
            rule(
                    "xa.build-up",
                    "build-up",
                    "'title': 'Build-up', 'conditions': {'engine-speed': {'range': ['600 rpm', '900"
                            + " rpm']}, 'engine': 'running'}, 'window': {'from': ['85 psi', '587"
                            + " kPa'], 'to': ['100 psi', '690 kPa']}, 'values': [{'from':"
                            + " '2012-09-05', 'limit': {'at-most': '2 min'}, 'source': {'key': 'S',"
                            + " 'section': '4.2'}}], 'words': ' Fast idle. ', 'note': 'Rounded.',"
                            + " 'approximate': 'yes', 'severity': 'minor', 'verified': {'on':"
                            + " '2026-10-01'}");

    private static final String SEATS =
            rule(
                    "xa.seats",
                    "emergency-control",
                    "'applies': {'seats': {'over': 10}}, 'limit': {'is': 'yes'}, 'evidence':"
                            + " 'if-observed'");

    @Test
    void keys_of_the_whole_are_stable() {
        assertThat(document().keys())
                .containsExactly(
                        "format",
                        "place",
                        "place-name",
                        "vehicle",
                        "day",
                        "rules",
                        "set-aside",
                        "coverage");
        assertThat(Json.writeCompact(document()))
                .startsWith(
                        "{\"format\":\"fandown-rules/1\",\"place\":\"XA\",\"place-name\":\"Yardland"
                                + " XA\",\"vehicle\":\"Yard vehicle\",\"day\":\"2026-03-02\",");
    }

    @Test
    void order_and_method_are_told_as_lists_of_checks() {
        String order =
                rule(
                        "xa.test-order",
                        "test-order",
                        "'limit': {'duty': 'In turn.', 'binding-order': ['build-up',"
                                + " ['check-valve', 'gauge-works']], 'printed-order': ['build-up',"
                                + " 'check-valve']}");
        String method =
                rule(
                        "xa.test-method",
                        "test-method",
                        "'limit': {'duty': 'So.', 'concerns': ['build-up']}");

        String written =
                Json.writeCompact(
                        RulesDocument.of(
                                Packs.book(Packs.pack("XA", order, method))
                                        .inForce(
                                                new PlaceCode("XA"),
                                                Trucks.read(Trucks.TRUCK),
                                                LocalDate.of(2026, 3, 2))));

        assertThat(written)
                .contains(
                        "\"binding-order\":[[\"build-up\"],[\"check-valve\",\"gauge-works\"]],"
                                + "\"printed-order\":[[\"build-up\"],[\"check-valve\"]]")
                .contains("\"concerns\":[\"build-up\"]");
    }

    @Test
    void rule_is_told_with_window_conditions_weight_and_source() {
        assertThat(Json.writeCompact(rules().items().get(0)))
                .isEqualTo(
                        "{\"check\":\"build-up\",\"rule\":\"xa.build-up\",\"place\":\"XA\","
                                + "\"title\":\"Build-up\",\"limit\":{\"text\":\"at most 2 min\","
                                + "\"most\":{\"value\":2,\"unit\":\"min\",\"passes\":true}},"
                                + "\"window\":\"from 85 psi (587 kPa) to 100 psi (690 kPa)\","
                                + "\"conditions\":[\"engine running\",\"engine speed 600 rpm to 900"
                                + " rpm\"],\"standing\":\"required\",\"evidence\":\"asked\","
                                + "\"severity\":\"minor\",\"approximate\":true,"
                                + "\"in-force-from\":\"2012-09-05\",\"source\":\"Yard handbook,"
                                + " 2020, 4.2\",\"provenance\":\"published\","
                                + "\"last-checked\":\"2026-10-01\",\"words\":\"Fast idle.\","
                                + "\"note\":\"Rounded.\"}");
    }

    @Test
    void rule_that_may_apply_tells_on_what_it_depends() {
        assertThat(Json.writeCompact(rules().items().get(1)))
                .contains("\"applies-if\":\"the number of seats\"");
    }

    private static ListNode rules() {
        return (ListNode) document().get("rules").orElseThrow();
    }

    private static MapNode document() {
        return RulesDocument.of(
                Packs.of(BUILD_UP, SEATS)
                        .inForce(
                                new PlaceCode("XA"),
                                Trucks.read(Trucks.TRUCK),
                                LocalDate.of(2026, 3, 2)));
    }
}
