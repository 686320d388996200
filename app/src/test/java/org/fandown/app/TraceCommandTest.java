package org.fandown.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.fandown.document.Json;
import org.fandown.document.ListNode;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.document.ScalarNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TraceCommandTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final String LOG = EXAMPLES.resolve("traces/cold-start.csv").toString();
    private static final String VEHICLE =
            EXAMPLES.resolve("vehicles/tractor-box-trailer.yaml").toString();

    /**
     * A reading of one sample a second: what changes by up to 1 psi a second may be off by one
     * sample and the lag of a needle.
     */
    private static final double ONE_SAMPLE = 2;

    @TempDir private Path folder;

    @Test
    void log_of_a_drive_shows_what_the_drive_did() throws IOException {
        Path csv = folder.resolve("T.csv");
        Cli drive =
                Cli.run(
                        "drive",
                        EXAMPLES.resolve("scenarios/cold-start.yaml").toString(),
                        "--script",
                        EXAMPLES.resolve("scripts/in-cab-test-logged.yaml").toString(),
                        "--out",
                        csv.toString());
        assertThat(drive.exit()).isZero();
        MapNode json = json(Cli.run("trace", csv.toString(), "--json"));

        assertKinds(json);
        // The vehicle names its cut-out, 125 psi; its low-air switch is the usual one, 66 psi.
        assertThat(value(found(json, "cut-out"))).isEqualTo(125, within(ONE_SAMPLE));
        assertThat(value(found(json, "warning"))).isEqualTo(66, within(ONE_SAMPLE));
        assertThat(text(json, "written-as")).isEqualTo("csv");
    }

    @Test
    void example_log_shows_the_tests_it_was_made_of() {
        Cli run = Cli.run("trace", LOG);

        assertThat(run.exit()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("CSV, 13:35.0 min, 817 lines")
                .contains("Channels: primary, secondary, supply", "Columns not read: ")
                .contains("The governor cut out at ", "The governor cut in at ", "95 %: ")
                .contains("Air loss, brakes released: ", "Air loss, brakes applied: ")
                .contains("The low-air warning came on at ", "31 brake applications")
                .doesNotContain("PROVEN", "\u001b");
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 100);
        assertKinds(json(Cli.run("trace", LOG, "--json")));
    }

    private static void assertKinds(MapNode json) {
        assertThat(items(json, "recognised"))
                .extracting(n -> text((MapNode) n, "kind"))
                .contains(
                        "build-up",
                        "cut-out",
                        "cut-in",
                        "loss-released",
                        "loss-applied",
                        "warning",
                        "trailer-closed",
                        "parking-closed",
                        "applications")
                .doesNotContain("loss", "supply-drained");
    }

    @Test
    void json_has_the_keys_that_are_promised() {
        MapNode json = json(Cli.run("trace", LOG, "--json"));

        assertThat(json.keys())
                .containsExactly(
                        "format",
                        "log",
                        "written-as",
                        "simulated",
                        "lines",
                        "seconds",
                        "samples",
                        "notes",
                        "recognised");
        assertThat(text(json, "format")).isEqualTo("fandown-trace/1");
        assertThat(found(json, "loss-applied").keys())
                .containsExactly(
                        "kind", "from", "to", "text", "value", "low", "high", "over", "engine");
        assertThat(found(json, "build-up").keys())
                .containsExactly("kind", "from", "to", "text", "first", "last", "engine");
        assertThat(found(json, "applications").keys()).contains("applications", "first", "last");
    }

    @Test
    void with_place_and_vehicle_the_rules_speak_and_the_exit_code_too() {
        String[] command = {
            "trace",
            LOG,
            "--place",
            "CA-ON",
            "--vehicle",
            VEHICLE,
            "--moment",
            "2026-11-25T06:40:00-05:00"
        };
        Cli text = Cli.run(command);
        MapNode json = json(Cli.run(with(command, "--json")));

        assertThat(text.exit()).isEqualTo(3);
        assertThat(text.out())
                .contains("NOT PROVEN", "CA-ON Ontario, 2026-11-25T06:40-05:00")
                .contains("Governor cut-out", "NOT CHECKED Applied push-rod stroke");
        assertThat(json.keys()).endsWith("missing", "judgement");
        MapNode judgement = (MapNode) json.get("judgement").orElseThrow();
        assertThat(text(judgement, "verdict")).isEqualTo("not-proven");
        assertThat(finding(judgement, "governor-cut-out")).isEqualTo("met");
        assertThat(finding(judgement, "low-air-warning")).isEqualTo("undetermined");
    }

    @Test
    void what_is_declared_to_be_as_printed_is_judged() {
        MapNode json =
                json(
                        Cli.run(
                                "trace",
                                LOG,
                                "--place",
                                "CA-ON",
                                "--vehicle",
                                VEHICLE,
                                "--as-printed",
                                "--json"));

        MapNode judgement = (MapNode) json.get("judgement").orElseThrow();
        assertThat(finding(judgement, "low-air-warning")).isEqualTo("met");
        // The log shows 1200 rpm; the rule asks for 600 to 900 rpm.
        assertThat(finding(judgement, "build-up")).isEqualTo("spoiled");
    }

    @Test
    void what_breaks_a_rule_ends_with_not_fit() throws IOException {
        String table = Files.readString(Path.of(LOG));
        String late = table.lines().limit(1).findFirst().orElseThrow() + "\n" + lateWarning(table);
        Path log = Files.writeString(folder.resolve("late.csv"), late);
        Cli run =
                Cli.run(
                        "trace",
                        log.toString(),
                        "--place",
                        "US",
                        "--vehicle",
                        VEHICLE,
                        "--as-printed");

        assertThat(run.out()).contains("NOT FIT TO MOVE").contains("low-air warning came on at 4");
        assertThat(run.exit()).isEqualTo(1);
    }

    /** The same drive, but the lamp stays dark above 45 psi. */
    private static String lateWarning(String table) {
        List<String> head = List.of(table.lines().findFirst().orElseThrow().split(",", -1));
        int lamp = head.indexOf("low-air lamp");
        int primary = head.indexOf("primary psi");
        StringBuilder late = new StringBuilder();
        table.lines()
                .skip(1)
                .forEach(
                        line -> {
                            String[] cells = line.split(",", -1);
                            if (Double.parseDouble(cells[primary]) > 45) {
                                cells[lamp] = "0";
                            }
                            late.append(String.join(",", cells)).append('\n');
                        });
        return late.toString();
    }

    @ParameterizedTest
    @ValueSource(strings = {"normal", "tsc1", "dos_1ms"})
    void half_a_minute_of_driving_is_said_to_hold_no_test(String name) {
        String log = EXAMPLES.resolve("recordings").resolve(name + ".log").toString();
        Cli alone = Cli.run("trace", log);
        Cli judged = Cli.run("trace", log, "--place", "US", "--vehicle", VEHICLE);

        assertThat(alone.exit()).isZero();
        assertThat(alone.out())
                .contains(
                        "candump log, 0:", "Nothing: this trace holds no test of the air system.");
        assertThat(judged.exit()).isEqualTo(3);
        assertThat(judged.out())
                .contains("Not in this trace, of what the place asks for")
                .contains("(nothing in the log tells of the warning)", "NOT PROVEN");
    }

    @Test
    void damaged_log_is_read_as_far_as_it_goes_and_the_damage_is_told() throws IOException {
        byte[] whole = Files.readAllBytes(EXAMPLES.resolve("recordings/normal.log"));
        byte[] half = java.util.Arrays.copyOf(whole, whole.length / 2 - 3);
        Path log = Files.write(folder.resolve("half.log"), half);
        Files.write(log, "\nno log\n\u0000\n".getBytes(StandardCharsets.UTF_8), appending());
        Cli run = Cli.run("trace", log.toString());

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("To know about the log", "this is not a line of a candump");
    }

    private static java.nio.file.OpenOption appending() {
        return java.nio.file.StandardOpenOption.APPEND;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "\u0000\u0001\u0002\u0003",
                "nothing of the kind\nand more\n",
                "time s,engine rpm\n0,1\n",
                "time s,primary hPa\n0,1\n",
                "time s,primary psi\nx,y\n",
                "(0.0) can0 18F00400#FFFFFF6813FFFFFF\n"
            })
    void log_that_says_nothing_is_refused(String content) throws IOException {
        Path log = Files.writeString(folder.resolve("bad.log"), content);
        Cli run = Cli.run("trace", log.toString());

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .startsWith("fandown: " + log)
                .contains("Allowed: ", "Next: ")
                .hasLineCount(1);
    }

    @Test
    void line_of_many_megabytes_is_refused_as_any_junk() throws IOException {
        Path log = Files.writeString(folder.resolve("long.log"), "z".repeat(20_000_000));
        Cli run = Cli.run("trace", log.toString());

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("line 1: the line is longer than any message");
    }

    @Test
    void absent_file_directory_and_half_a_question_are_refused() {
        assertRefused("there is no such file", folder.resolve("no.log").toString());
        assertRefused("this is a directory", folder.toString());
        assertRefused("both --place CODE and --vehicle", LOG, "--place", "US");
        assertRefused("both --place CODE and --vehicle", LOG, "--vehicle", VEHICLE);
        assertRefused("go with --place", LOG, "--as-printed");
        assertRefused("go with --place", LOG, "--report", "x.pdf");
        assertRefused("no rule pack", LOG, "--place", "XX", "--vehicle", VEHICLE);
        assertRefused(
                "is not a moment", LOG, "--place", "US", "--vehicle", VEHICLE, "--moment", "x");
    }

    private static void assertRefused(String words, String... args) {
        Cli run =
                Cli.run(Stream.concat(Stream.of("trace"), Stream.of(args)).toArray(String[]::new));

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).containsIgnoringCase(words);
    }

    @Test
    void times_since_the_line_before_are_added_up_when_asked_for() throws IOException {
        String frame = " can0 18FEAE31#FFFF6E6EFFFFFFFF\n";
        Path log =
                Files.writeString(
                        folder.resolve("delta.log"),
                        ("(1.0)" + frame).repeat(11) + "(0.5)" + frame);
        MapNode asWritten = json(Cli.run("trace", log.toString(), "--json"));
        MapNode added = json(Cli.run("trace", log.toString(), "--delta-times", "--json"));

        assertThat(text(asWritten, "seconds")).isNotEqualTo("10.5");
        assertThat(text(added, "seconds")).isEqualTo("10.5");
    }

    @Test
    void plot_shows_both_circuits_and_each_test() throws Exception {
        Path svg = folder.resolve("plot.svg");
        Cli run = Cli.run("trace", LOG, "--plot", svg.toString());
        String text =
                DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(svg.toFile())
                        .getDocumentElement()
                        .getTextContent()
                        .replaceAll("\\s+", " ");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).isEqualTo(Cli.run("trace", LOG).out());
        assertThat(text)
                .contains("primary", "secondary", "The governor cut in at", "Air loss, brakes");
    }

    @Test
    void standard_input_is_read_too() throws IOException {
        InputStream before = System.in;
        try {
            System.setIn(new ByteArrayInputStream(Files.readAllBytes(Path.of(LOG))));
            assertThat(Cli.run("trace", "-").out())
                    .isEqualTo(Cli.run("trace", LOG).out().replace("Trace " + LOG, "Trace -"));
        } finally {
            System.setIn(before);
        }
    }

    @Test
    void every_example_trace_is_in_the_list_of_examples() throws IOException {
        String readme = Files.readString(EXAMPLES.resolve("README.md"));
        try (Stream<Path> logs = Files.list(EXAMPLES.resolve("traces"))) {
            assertThat(logs.map(l -> l.getFileName().toString()))
                    .isNotEmpty()
                    .allMatch(name -> readme.contains("(traces/" + name + ")"));
        }
    }

    private static String[] with(String[] command, String more) {
        return Stream.concat(Stream.of(command), Stream.of(more)).toArray(String[]::new);
    }

    private static MapNode json(Cli run) {
        assertThat(run.err()).isEmpty();
        return (MapNode) Json.read("a.json", run.out());
    }

    private static List<? extends Node> items(MapNode map, String key) {
        return ((ListNode) map.get(key).orElseThrow()).items();
    }

    private static MapNode found(MapNode json, String kind) {
        return items(json, "recognised").stream()
                .map(n -> (MapNode) n)
                .filter(n -> text(n, "kind").equals(kind))
                .findFirst()
                .orElseThrow(() -> new AssertionError(kind));
    }

    private static String finding(MapNode judgement, String check) {
        return items(judgement, "findings").stream()
                .map(n -> (MapNode) n)
                .filter(n -> text(n, "check").equals(check))
                .map(n -> text(n, "status"))
                .findFirst()
                .orElseThrow(() -> new AssertionError(check));
    }

    private static double value(MapNode found) {
        return Double.parseDouble(text((MapNode) found.get("value").orElseThrow(), "value"));
    }

    private static String text(MapNode map, String key) {
        return ((ScalarNode) map.get(key).orElseThrow()).text();
    }
}
