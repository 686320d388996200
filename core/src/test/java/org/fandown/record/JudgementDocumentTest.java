package org.fandown.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fandown.yard.Packs.rule;

import java.util.List;
import java.util.Optional;
import org.fandown.document.Json;
import org.fandown.document.ListNode;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.document.ScalarNode;
import org.fandown.yard.Packs;
import org.fandown.yard.Trial;
import org.fandown.yard.Trucks;
import org.junit.jupiter.api.Test;

class JudgementDocumentTest {
    private static final String CUT_OUT =
            rule(
                    "xa.cut-out",
                    "governor-cut-out",
                    "'title': 'Cut-out', 'limit': {'range': [['105 psi', '724 kPa'], ['135 psi',"
                            + " '931 kPa']]}");

    private static final String STROKES =
            rule(
                    "xa.stroke",
                    "pushrod-applied-stroke",
                    "'limit': {'stroke-table': {'clamp': {'20': '1 3/4 in', '30': '2 in'}}},"
                            + " 'evidence': 'if-observed', 'out-of-service': 'yes'");

    private static final String KEPT =
            rule(
                    "xa.kept",
                    "report-retention",
                    "'limit': {'duty': 'Keep the report.', 'keep': '6 months'}");

    private static final String RIVAL =
            rule(
                    "xa.rival",
                    "governor-cut-out",
                    "'limit': {'at-most': '130 psi'}, 'conflict': {'with': 'xa.cut-out',"
                            + " 'applied': 'no', 'settled': 'yes', 'why': 'Older.'}");

    private static final String EVIDENCE =
            "'report': {'plate': 'XX 0000', 'signed': true}, 'readings': {'governor-cut-out': '120"
                    + " psi'}, 'wheels': {'2L': {'applied': '2 1/4 in'}}, 'parts': {'glass':"
                    + " {'condition': 'cracked'}}";

    @Test
    void keys_of_the_whole_are_stable() {
        assertThat(document(EVIDENCE).keys())
                .containsExactly(
                        "format",
                        "verdict",
                        "because",
                        "simulated",
                        "place",
                        "place-name",
                        "moment",
                        "vehicle",
                        "report",
                        "findings",
                        "defects",
                        "coverage",
                        "set-aside",
                        "dates");
        assertThat(text(document(EVIDENCE), "format")).isEqualTo("fandown-judgement/1");
        assertThat(text(document(EVIDENCE), "verdict")).isEqualTo("not-fit-to-move");
        assertThat(text(document(EVIDENCE), "place")).isEqualTo("XA");
        assertThat(text(map(document(EVIDENCE), "report"), "signed")).isEqualTo("yes");
    }

    @Test
    void finding_with_a_value_has_value_doubt_and_both_edges_in_its_unit() {
        MapNode finding = items(document(EVIDENCE), "findings").get(0);

        assertThat(finding.keys())
                .containsExactly(
                        "check",
                        "rule",
                        "title",
                        "status",
                        "measured",
                        "uncertainty",
                        "limit",
                        "standing",
                        "evidence",
                        "severity",
                        "source",
                        "provenance",
                        "last-checked",
                        "reason");
        assertThat(Json.writeCompact(map(finding, "measured")))
                .isEqualTo("{\"value\":120,\"unit\":\"psi\"}");
        assertThat(Json.writeCompact(map(finding, "uncertainty")))
                .isEqualTo("{\"value\":0.5,\"unit\":\"psi\"}");
        assertThat(Json.writeCompact(map(finding, "limit")))
                .isEqualTo(
                        "{\"text\":\"105 psi (724 kPa) to 135 psi (931 kPa)\","
                                + "\"least\":{\"value\":105,\"unit\":\"psi\",\"passes\":true},"
                                + "\"most\":{\"value\":135,\"unit\":\"psi\",\"passes\":true}}");
        assertThat(text(finding, "source")).contains("Yard handbook").contains("2020");
        assertThat(text(finding, "last-checked")).isEqualTo("2026-11-25");
        assertThat(text(finding, "provenance")).isEqualTo("published");
    }

    @Test
    void finding_at_a_wheel_names_it_and_what_puts_out_of_service() {
        MapNode finding = items(document(EVIDENCE), "findings").get(1);

        assertThat(finding.keys()).contains("wheel", "out-of-service");
        assertThat(text(finding, "wheel")).isEqualTo("2L");
        assertThat(text(finding, "status")).isEqualTo("not-met");
        assertThat(Json.writeCompact(map(finding, "limit")))
                .contains("\"most\":{\"value\":2,\"unit\":\"in\",\"passes\":true}");
    }

    @Test
    void finding_without_a_value_has_the_limit_as_printed_and_advice() {
        MapNode finding = items(document(""), "findings").get(0);

        assertThat(text(finding, "status")).isEqualTo("not-checked");
        assertThat(finding.keys()).doesNotContain("measured", "uncertainty").contains("advice");
        assertThat(Json.writeCompact(map(finding, "limit"))).contains("\"value\":105");
    }

    @Test
    void defects_tell_component_severity_and_rule_or_that_nobody_said() {
        List<MapNode> defects = items(document(EVIDENCE), "defects");

        assertThat(defects.get(0).keys())
                .containsExactly(
                        "component", "wheel", "severity", "rule", "out-of-service", "text");
        assertThat(text(defects.get(0), "severity")).isEqualTo("major");
        assertThat(defects.get(1).keys()).containsExactly("component", "severity", "text");
        assertThat(text(defects.get(1), "component")).isEqualTo("glass");
        assertThat(text(defects.get(1), "severity")).isEqualTo("not-stated");
    }

    @Test
    void dates_and_rules_set_aside_stand_beside() {
        MapNode document = document(EVIDENCE);

        assertThat(Json.writeCompact(items(document, "dates").get(0)))
                .isEqualTo(
                        "{\"sense\":\"keep\",\"until\":\"2026-09-02T07:30-05:00\",\"rule\":"
                                + "\"xa.kept\",\"provenance\":\"published\"}");
        assertThat(items(document, "set-aside").get(0).keys())
                .containsExactly(
                        "rule",
                        "limit",
                        "source",
                        "provenance",
                        "because",
                        "applied-instead",
                        "settled");
        assertThat(text(items(document, "set-aside").get(0), "because")).isEqualTo("conflict");
        assertThat(items(document, "coverage"))
                .extracting(gap -> text(gap, "check"))
                .contains("governor-cut-in")
                .doesNotContain("governor-cut-out", "report-retention");
    }

    @Test
    void braking_estimate_is_there_if_strokes_were_measured() {
        Trial trial = trial(EVIDENCE);
        MapNode document =
                JudgementDocument.of(
                        trial.judgement(),
                        MeasuredStrokes.estimate(trial.judgement().inspection()));

        assertThat(map(document, "braking").keys()).containsExactly("states", "assumptions");
        assertThat(MeasuredStrokes.estimate(trial("").judgement().inspection())).isEmpty();
    }

    @Test
    void same_judgement_is_written_the_same_and_can_be_read_again() {
        String once = Json.write(document(EVIDENCE));

        assertThat(Json.write(document(EVIDENCE))).isEqualTo(once);
        assertThat(Json.write(Json.read("again.json", once))).isEqualTo(once);
    }

    private static MapNode document(String evidence) {
        return JudgementDocument.of(trial(evidence).judgement(), Optional.empty());
    }

    private static Trial trial(String evidence) {
        return Trial.of(Packs.of(CUT_OUT, STROKES, KEPT, RIVAL), Trucks.TRUCK, evidence);
    }

    private static Node node(MapNode map, String key) {
        return map.get(key).orElseThrow();
    }

    private static String text(MapNode map, String key) {
        return ((ScalarNode) node(map, key)).text();
    }

    private static MapNode map(MapNode map, String key) {
        return (MapNode) node(map, key);
    }

    private static List<MapNode> items(MapNode map, String key) {
        return ((ListNode) node(map, key)).items().stream().map(MapNode.class::cast).toList();
    }
}
