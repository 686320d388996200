package org.fandown.app.referee;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import org.fandown.app.files.DocumentText;
import org.fandown.document.Json;
import org.fandown.practice.Run;
import org.fandown.practice.RunReader;
import org.fandown.practice.RunWriter;
import org.fandown.referee.Marks;
import org.fandown.referee.MarksDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A careful run loses nothing, on a sound truck and on one whose faults are found. */
class GoodRunsTest {
    private static final String FLAT = "parts: { tires: flat }";

    @ParameterizedTest
    @CsvSource({"CA-BC, full-inspection", "US, full-inspection-us"})
    void a_careful_run_keeps_every_point(String place, String script) throws IOException {
        Marks marks = Marked.mark(run("", script(script)), place);

        assertThat(marks.kept()).as(Marked.text(marks)).isEqualTo(marks.of());
        assertThat(marks.passed()).isTrue();
    }

    @Test
    void a_fault_that_is_found_and_called_costs_nothing() throws IOException {
        String script =
                script("full-inspection")
                        .replace("tires: ok", "tires: { condition: flat, severity: major }")
                        .replace(
                                "verdict: fit-to-move",
                                "verdict: not-fit-to-move, defects: [ tires ]");

        Marks marks = Marked.mark(run(FLAT, script), "CA-BC");

        assertThat(marks.kept()).as(Marked.text(marks)).isEqualTo(marks.of());
    }

    @Test
    void a_leak_that_is_read_and_called_costs_nothing() throws IOException {
        String script =
                script("full-inspection")
                        .replace("start: 91 psi, end: 91 psi", "start: 84 psi, end: 80 psi")
                        .replace(
                                "verdict: fit-to-move",
                                "verdict: not-proven, defects: [ air-loss-applied ]");
        String leak = "faults: [{ fault: service-diaphragm-leak, at: 2L, size: 0.5 mm }]";

        Marks marks = Marked.mark(run(leak, script), "CA-BC");

        assertThat(marks.kept()).as(Marked.text(marks)).isEqualTo(marks.of());
    }

    @Test
    void the_same_run_is_marked_the_same_to_the_last_byte_also_when_it_was_stored()
            throws IOException {
        Run run = run(FLAT, script("full-inspection"));
        Run stored = RunReader.read(Json.read("run.json", Json.write(RunWriter.write(run))));

        String first = Json.write(MarksDocument.of(Marked.mark(run, "CA-BC")));

        assertThat(Json.write(MarksDocument.of(Marked.mark(run, "CA-BC")))).isEqualTo(first);
        assertThat(Json.write(MarksDocument.of(Marked.mark(stored, "CA-BC")))).isEqualTo(first);
        assertThat(first).contains("\"replayed\": true");
    }

    private static String script(String name) throws IOException {
        return Files.readString(Marked.EXAMPLES.resolve("scripts").resolve(name + ".yaml"));
    }

    private static Run run(String scenario, String script) {
        String text = "title: T\nvehicle: straight-truck.yaml\n" + scenario;
        return Marked.run(
                Marked.scenario(DocumentText.yaml("scenario.yaml", text)),
                DocumentText.yaml("script.yaml", script));
    }
}
