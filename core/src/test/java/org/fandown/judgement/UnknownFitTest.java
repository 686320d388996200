package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.fandown.check.Check;
import org.fandown.document.Json;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.InspectionReader;
import org.fandown.evidence.VehicleSource;
import org.fandown.rulebook.PackReader;
import org.fandown.rulebook.Rulebook;
import org.junit.jupiter.api.Test;

/** Both rules hold from a build date, and the vehicle file gives none. */
class UnknownFitTest {
    private static final String PACK =
            """
            {"place": "XA", "name": "Example",
             "checked-on": "2026-11-25", "about": "For a test.",
             "sources": {"S": {"work": "Example code",
               "edition": "2026", "section": "1"}},
             "gaps": %s,
             "rules": [
               {"id": "xa.governor-cut-in", "check": "governor-cut-in",
                "title": "Asked",
                "applies": {"built": {"from": "1975-03-01"}},
                "limit": {"at-least": "100 psi"},
                "source": "S", "provenance": "published"},
               {"id": "xa.abs-fitted", "check": "abs-fitted",
                "title": "If observed",
                "applies": {"built": {"from": "1997-03-01"}},
                "limit": {"is": true}, "evidence": "if-observed",
                "source": "S", "provenance": "published"}]}
            """;
    private static final Rulebook RULEBOOK = rulebook();

    @Test
    void rule_that_asks_for_a_reading_is_undetermined_even_without_one() {
        assertThat(statuses("{}")).containsExactly("xa.governor-cut-in UNDETERMINED");
    }

    @Test
    void rule_that_asks_for_nothing_is_undetermined_only_where_something_was_noted() {
        assertThat(statuses("{\"abs-fitted\": false}"))
                .containsExactly("xa.governor-cut-in UNDETERMINED", "xa.abs-fitted UNDETERMINED");
    }

    private static List<String> statuses(String readings) {
        String document =
                """
                {"place": "XA", "moment": "2026-11-25T08:00:00Z", "readings": %s,
                 "vehicle": {"name": "Truck", "use": "property", "units": [
                   {"kind": "truck", "id": "T1", "axles": [
                     {"position": "steer", "brake": "drum", "chamber": "clamp 20",
                      "spring-brake": false},
                     {"position": "drive", "brake": "drum", "chamber": "clamp 30",
                      "spring-brake": true}]}]}}
                """
                        .formatted(readings);
        Inspection inspection =
                new InspectionReader(VehicleSource.NONE)
                        .read(Json.read("inspection.json", document));
        return Judge.judge(RULEBOOK, inspection).findings().stream()
                .map(f -> f.ruling().rule().id() + " " + f.status())
                .toList();
    }

    private static Rulebook rulebook() {
        String text = PACK.formatted(gaps());
        return Rulebook.of(List.of(PackReader.read(Json.read("pack.json", text))));
    }

    /** Each check that is expected of every place, but for the one the pack has a rule for. */
    private static String gaps() {
        StringBuilder gaps = new StringBuilder();
        for (Check check : Check.values()) {
            if (check.expectedEverywhere() && check != Check.GOVERNOR_CUT_IN) {
                gaps.append(gaps.length() == 0 ? "[" : ", ")
                        .append("{\"check\": \"")
                        .append(check.id())
                        .append("\", \"says\": \"Not looked for.\"}");
            }
        }
        return gaps.append(']').toString();
    }
}
