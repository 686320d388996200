package org.fandown.app.referee;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.fandown.app.files.DocumentText;
import org.fandown.document.Fields;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.practice.Run;
import org.fandown.practice.RunReader;
import org.fandown.practice.RunWriter;
import org.fandown.practice.Scenario;
import org.fandown.referee.ItemMarks;
import org.fandown.referee.Marks;
import org.fandown.referee.MarksDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each mistake costs what a person of the trade takes off for it, and nothing else. */
class BadRunsTest {
    private static final Path RUNS = Path.of("src", "test", "resources", "runs", "bad-runs.yaml");

    private record BadRun(
            String name,
            String place,
            String scenario,
            String script,
            Map<String, Integer> deducted,
            boolean critical,
            String reason) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<BadRun> runs() throws IOException {
        Fields file = Fields.of(DocumentText.yaml("bad-runs.yaml", Files.readString(RUNS)));
        List<BadRun> runs = new ArrayList<>();
        for (Node item : file.list("runs")) {
            runs.add(read(Fields.of(item)));
        }
        return runs.stream();
    }

    private static BadRun read(Fields fields) throws IOException {
        String name = fields.text("run");
        String place = fields.optionalText("place").orElse("CA-BC");
        String usual = place.startsWith("US") ? "full-inspection-us.yaml" : "full-inspection.yaml";
        Path file =
                Marked.EXAMPLES
                        .resolve("scripts")
                        .resolve(fields.optionalText("script").orElse(usual));
        String script = fields.has("steps") ? fields.text("steps") : Files.readString(file);
        for (Node change : fields.optionalList("change")) {
            Fields each = Fields.of(change);
            assertThat(script).as(name).contains(each.text("from"));
            script = script.replace(each.text("from"), each.optionalText("to").orElse(""));
        }
        Map<String, Integer> deducted = new TreeMap<>();
        Fields items = fields.fields("deducted");
        for (String key : items.keys()) {
            deducted.put(key, items.integer(key, 1, 100));
        }
        String scenario =
                "title: "
                        + name
                        + "\nvehicle: "
                        + fields.optionalText("vehicle").orElse("straight-truck")
                        + ".yaml\n"
                        + fields.optionalText("scenario").orElse("");
        return new BadRun(
                name,
                place,
                scenario,
                script,
                deducted,
                fields.truth("critical"),
                fields.text("reason"));
    }

    @ParameterizedTest
    @MethodSource("runs")
    void a_mistake_costs_what_it_should_and_nothing_else(BadRun bad) {
        Scenario scenario = Marked.scenario(DocumentText.yaml("scenario.yaml", bad.scenario()));
        Run run = Marked.run(scenario, DocumentText.yaml("script.yaml", bad.script()));

        Marks marks = Marked.mark(run, bad.place());

        Map<String, Integer> deducted = new TreeMap<>();
        for (ItemMarks item : marks.items()) {
            if (item.deducted() > 0) {
                deducted.put(item.item().id(), item.deducted());
            }
        }
        assertThat(deducted).as(bad.reason() + "\n" + Marked.text(marks)).isEqualTo(bad.deducted());
        assertThat(marks.critical()).isEqualTo(bad.critical());
        assertThat(marks.passed()).isEqualTo(!bad.critical() && marks.kept() >= marks.needed());
        assertThat(markedWhenStored(run, bad.place())).isEqualTo(bytes(marks));
    }

    /** Storing a run, reading it and marking it again gives the same bytes. */
    private static String markedWhenStored(Run run, String place) {
        Run stored = RunReader.read(Json.read("run.json", Json.write(RunWriter.write(run))));
        return bytes(Marked.mark(stored, place));
    }

    private static String bytes(Marks marks) {
        return Json.write(MarksDocument.of(marks));
    }

    @Test
    void there_are_thirty_of_them() throws IOException {
        assertThat(runs().map(BadRun::name).distinct()).hasSizeGreaterThanOrEqualTo(30);
    }
}
