package org.fandown.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.fandown.air.Fault;
import org.fandown.document.Json;
import org.fandown.document.ListNode;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.document.ScalarNode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DriveCommandTest {
    private static final Path VEHICLES = Path.of("..", "examples", "vehicles").toAbsolutePath();

    @TempDir private Path folder;
    private String scenario = "";
    private String script = "";

    @BeforeEach
    void write_files() throws IOException {
        scenario =
                write(
                        "scenario.yaml",
                        "title: A short drive\nvehicle: "
                                + VEHICLES.resolve("tractor-box-trailer.yaml")
                                + "\nstart: { pressure: 100 psi, trailer-supply: open }\n");
        script =
                write(
                        "script.yaml",
                        """
                        steps:
                          - key: on
                          - { after: 2 s, foot-brake: 50 % }
                          - { after: 1 s, foot-brake: 0 % }
                          - after: 1 s
                        """);
    }

    @Test
    void summary_tells_the_run_the_events_and_the_end() throws IOException {
        Cli run = Cli.run("drive", scenario, "--script", script);

        assertThat(run.exit()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .startsWith("A short drive")
                .contains("Tractor 7 with box trailer 31", "Driven 0:04.0 min", "no verdict")
                .contains("0:02.0  foot-brake: 50 %", "primary needle", "fingerprint")
                .doesNotContain("\u001b");
        assertThat(files()).containsExactly("scenario.yaml", "script.yaml");
    }

    @Test
    void trace_has_a_head_with_units_and_a_row_for_each_tenth_of_a_second() throws IOException {
        Path trace = folder.resolve("trace.csv");
        Cli run = Cli.run("drive", scenario, "--script", script, "--out", trace.toString());
        List<String> lines = Files.readAllLines(trace);
        String[] head = lines.get(0).split(",", -1);

        assertThat(run.exit()).isZero();
        assertThat(head)
                .startsWith("time s", "primary needle psi", "secondary needle psi")
                .contains("engine rpm", "foot brake %", "stroke 5R in", "speed km/h");
        assertThat(lines).hasSize(1 + 41).allMatch(l -> l.split(",", -1).length == head.length);
        assertThat(lines.get(1)).startsWith("0.00,9");
        assertThat(lines.get(41)).startsWith("4.00,");
        assertThat(files()).containsExactly("scenario.yaml", "script.yaml", "trace.csv");
    }

    @Test
    void time_between_rows_can_be_chosen_and_the_end_is_always_there() throws IOException {
        Cli run = Cli.run("drive", scenario, "--script", script, "--out", "-", "--every", "1.5 s");

        assertThat(run.out().lines().skip(1).map(line -> line.split(",", -1)[0]))
                .containsExactly("0.00", "1.50", "3.00", "4.00");
        assertThat(run.out()).startsWith("time s,").doesNotContain("fingerprint");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void same_drive_gives_the_same_bytes() {
        Cli one = Cli.run("drive", scenario, "--script", script, "--out", "-");
        Cli two = Cli.run("drive", scenario, "--script", script, "--out", "-");

        assertThat(one).isEqualTo(two);
    }

    @Test
    void json_has_the_keys_that_are_promised() {
        Cli run = Cli.run("drive", scenario, "--script", script, "--json");
        MapNode json = (MapNode) Json.read("a.json", run.out());

        assertThat(run.exit()).isZero();
        assertThat(json.keys())
                .containsExactly(
                        "format",
                        "simulated",
                        "scenario",
                        "vehicle",
                        "seed",
                        "seconds",
                        "fingerprint",
                        "events",
                        "readings");
        assertThat(text(json, "format")).isEqualTo("fandown-drive/1");
        assertThat(text(json, "seconds")).isEqualTo("4");
        assertThat(text(json, "fingerprint")).matches("[0-9a-f]{16}");
        ListNode events = (ListNode) json.get("events").orElseThrow();
        assertThat(((MapNode) events.items().get(0)).keys())
                .containsExactly("seconds", "kind", "text");
        MapNode readings = (MapNode) json.get("readings").orElseThrow();
        assertThat(((MapNode) readings.get("primary-needle").orElseThrow()).keys())
                .containsExactly("value", "unit");
        assertThat(text(readings, "key")).isEqualTo("true");
    }

    @Test
    void plot_is_a_picture_that_any_reader_of_xml_takes() throws Exception {
        Path plot = folder.resolve("plot.svg");
        Cli run = Cli.run("drive", scenario, "--script", script, "--plot", plot.toString());

        assertThat(run.exit()).isZero();
        assertThat(
                        DocumentBuilderFactory.newInstance()
                                .newDocumentBuilder()
                                .parse(plot.toFile())
                                .getDocumentElement()
                                .getTagName())
                .isEqualTo("svg");
        assertThat(Files.readString(plot))
                .contains("A short drive", "simulated", "foot-brake: 50 %", "kPa");
    }

    @Test
    void without_a_script_an_example_is_named() {
        Cli run = Cli.run("drive", scenario);

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains("A script is needed", "examples/scripts/in-cab-test.yaml", "Next: ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "--every;0 s;out of range;0.02 s to 1 h",
                "--every;2 h;out of range;0.02 s to 1 h",
                "--every;1;unit is missing;a time in s",
                "--vehicle;x.yaml;--list-faults;names its own vehicle",
            })
    void senseless_options_are_refused(String option, String value, String first, String second)
            throws IOException {
        Cli run = Cli.run("drive", scenario, "--script", script, option, value);

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(first, second).contains("Next: ");
    }

    @Test
    void two_results_do_not_go_to_the_same_place() {
        Cli run = Cli.run("drive", scenario, "--script", script, "--json", "--out", "-");

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("standard output");
    }

    @Test
    void trace_that_cannot_be_written_leaves_nothing_behind() throws IOException {
        String trace = folder.resolve("missing").resolve("trace.csv").toString();
        Cli run = Cli.run("drive", scenario, "--script", script, "--out", trace);

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("The trace cannot be written", "missing", "Next: ");
        assertThat(files()).containsExactly("scenario.yaml", "script.yaml");
    }

    @Test
    void bad_script_leaves_the_older_trace_as_it_was() throws IOException {
        String trace = write("trace.csv", "old");
        String bad = write("bad.yaml", "steps:\n  - key: on\n  - foot-break: 50 %\n");
        Cli run = Cli.run("drive", scenario, "--script", bad, "--out", trace);

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err())
                .startsWith("fandown: " + bad + ":3:5: steps[1].foot-break: ")
                .contains(" Allowed: ", "Did you mean 'foot-brake'?");
        assertThat(Files.readString(Path.of(trace))).isEqualTo("old");
        assertThat(files())
                .containsExactly("bad.yaml", "scenario.yaml", "script.yaml", "trace.csv");
    }

    @Test
    void scenario_that_cannot_be_is_refused_with_its_line() throws IOException {
        String bad =
                write(
                        "bad.yaml",
                        "title: T\nvehicle: "
                                + VEHICLES.resolve("straight-truck.yaml")
                                + "\nfaults:\n  - { fault: lines-crossed }\n");
        Cli run = Cli.run("drive", bad, "--script", script);

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err())
                .startsWith("fandown: " + bad + ":4:")
                .contains("faults[0].fault: This vehicle cannot have this fault")
                .contains(" Allowed: ", " Next: ")
                .hasLineCount(1);
    }

    @Test
    void vehicle_that_is_missing_is_refused_where_it_is_named() throws IOException {
        String bad = write("bad.yaml", "title: T\nvehicle: nowhere.yaml\n");
        Cli run = Cli.run("drive", bad, "--script", script);

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err())
                .startsWith("fandown: " + bad + ":2:10: vehicle: There is no such file");
    }

    @Test
    void faults_are_listed_for_people_and_for_programs() {
        Cli text = Cli.run("drive", "--list-faults");
        Cli json = Cli.run("drive", "--list-faults", "--json");
        ListNode faults =
                (ListNode) ((MapNode) Json.read("a.json", json.out())).get("faults").orElseThrow();

        assertThat(faults.items()).hasSize(Fault.values().length);
        for (Node each : faults.items()) {
            MapNode fault = (MapNode) each;
            assertThat(fault.keys()).contains("fault", "title", "group", "at", "shows");
            assertThat(text.out()).contains("  " + text(fault, "fault") + "\n");
        }
        assertThat(text.out()).contains("0.3 mm to 6 mm", Fault.values().length + " faults");
    }

    @Test
    void faults_of_one_vehicle_are_those_of_its_parts() {
        String truck = VEHICLES.resolve("straight-truck.yaml").toString();
        Cli run = Cli.run("drive", "--list-faults", "--vehicle", truck);

        assertThat(run.exit()).isZero();
        assertThat(run.out())
                .contains("  primary-leak\n", "  adjuster-out\n", "  spring-broken\n")
                .doesNotContain("  lines-crossed\n", "  trailer-knob-sticks\n");
    }

    @Test
    void help_names_an_example_that_exists() {
        Cli run = Cli.run("drive", "--help");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("SCENARIO", "--script", "--out", "--plot", "--mark");
        assertThat(run.out().replaceAll("\\s+", " ")).contains("is no verdict");
        for (String word : run.out().split("\\s+", -1)) {
            if (word.endsWith(".yaml") && word.contains("examples/")) {
                assertThat(Path.of("..").resolve(word)).exists();
            }
        }
    }

    private String write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private List<String> files() throws IOException {
        try (var all = Files.list(folder)) {
            return all.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    private static String text(MapNode map, String key) {
        return ((ScalarNode) map.get(key).orElseThrow()).text();
    }
}
