package org.fandown.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.files.LogFiles;
import org.fandown.document.Fields;
import org.fandown.document.Json;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.document.Tree;
import org.fandown.evidence.Observations;
import org.fandown.evidence.ObservationsDocument;
import org.fandown.trace.CandumpReader;
import org.fandown.trace.TraceLog;
import org.fandown.trace.TraceReadings;
import org.fandown.vehicle.VehicleDocument;
import org.fandown.vehicle.VehicleReader;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What was read from a log can be written into an inspection, which is then judged as the log
 * itself is: a log that is attached in the yard counts as much as one on the command line.
 */
class TraceInspectionTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final String MOMENT = "2026-11-23T06:40:00-05:00";

    @TempDir private Path folder;

    @ParameterizedTest
    @CsvSource({
        "cold-start, tractor-box-trailer, CA-ON",
        "cold-start, tractor-box-trailer, US",
        "cold-start, straight-truck, CA-BC",
        "needles-only, straight-truck, CA-ON",
        "needles-only, tractor-box-trailer, CA-BC"
    })
    void written_readings_of_a_log_are_judged_as_the_log(String log, String vehicle, String place)
            throws IOException {
        Path trace = EXAMPLES.resolve("traces/" + log + ".csv");
        Path rig = EXAMPLES.resolve("vehicles/" + vehicle + ".yaml");
        Path sheet = Files.writeString(folder.resolve("sheet.json"), sheet(trace, rig, place));
        Cli judged = Cli.run("judge", sheet.toString(), "--json");
        Cli traced =
                Cli.run(
                        "trace",
                        trace.toString(),
                        "--place",
                        place,
                        "--vehicle",
                        rig.toString(),
                        "--moment",
                        MOMENT,
                        "--as-printed",
                        "--json");
        assertThat(judged.err()).isEmpty();
        List<String> ofLog = findings(Fields.of(Json.read("t", traced.out())).node("judgement"));
        assertThat(ofLog).anyMatch(finding -> finding.contains("measured"));
        assertThat(findings(Json.read("j", judged.out()))).isEqualTo(ofLog);
    }

    private static List<String> findings(Node judgement) {
        List<String> all = new ArrayList<>();
        for (Node finding : Fields.of(judgement).list("findings")) {
            all.add(Json.writeCompact(finding));
        }
        return all;
    }

    private static String sheet(Path trace, Path rig, String place) {
        TraceLog log =
                new TraceLog("log", CandumpReader.Times.AS_WRITTEN, (channel, at, value) -> {});
        LogFiles.read(trace.toString(), log);
        Map<org.fandown.check.Check, org.fandown.evidence.Reading> readings =
                TraceReadings.of(log.recognised()).readings(log.instruments());
        Tree.MapBuilder map =
                Tree.map()
                        .put("place", place)
                        .put("moment", MOMENT)
                        .put("vehicle", vehicle(rig))
                        .put("conditions", "as-printed")
                        .put("simulated", log.isSimulated());
        return Json.write(ObservationsDocument.add(map, Observations.of(readings)).build());
    }

    private static MapNode vehicle(Path rig) {
        return VehicleDocument.toTree(VehicleReader.read(DocumentFiles.read(rig)));
    }
}
