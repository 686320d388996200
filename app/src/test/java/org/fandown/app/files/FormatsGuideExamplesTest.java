package org.fandown.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fandown.app.cli.FandownCommand;
import org.fandown.check.CheckKind;
import org.fandown.check.Verdict;
import org.fandown.document.Json;
import org.fandown.document.ListNode;
import org.fandown.document.MapNode;
import org.fandown.document.Names;
import org.fandown.document.Node;
import org.fandown.document.ScalarNode;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.InspectionReader;
import org.fandown.practice.Awaited;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.Scenario;
import org.fandown.practice.ScenarioReader;
import org.fandown.practice.Script;
import org.fandown.practice.ScriptReader;
import org.fandown.practice.ScriptStep;
import org.fandown.practice.Signal;
import org.fandown.practice.Verb;
import org.fandown.referee.Item;
import org.fandown.referee.Sheet;
import org.fandown.referee.SheetReader;
import org.fandown.trace.Channel;
import org.fandown.trace.MarkWord;
import org.fandown.trace.MarksReader;
import org.fandown.trace.Recognised;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the guide to file formats shows is what the program reads and writes. */
class FormatsGuideExamplesTest {
    private static final Path GUIDE = Path.of("..", "docs", "formats.md");
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final Pattern CODE = Pattern.compile("`([^`]+)`");

    private String guide = "";

    @BeforeEach
    void read_the_guide() throws IOException {
        guide = Files.readString(GUIDE);
    }

    @Test
    void every_form_of_a_reading_loads_as_it_is_printed() {
        String inspection =
                "place: CA-ON%nmoment: 2026-11-23T06:40:00Z%nvehicle: straight-truck.yaml%n"
                                .formatted()
                        + "readings:\n"
                        + block("yaml readings").indent(2);
        Inspection read =
                new InspectionReader(
                                name ->
                                        DocumentFiles.read(
                                                EXAMPLES.resolve("vehicles").resolve(name)))
                        .read(DocumentText.yaml("formats.md", inspection));

        assertThat(read.readings()).hasSize(12);
        Set<CheckKind> kinds = EnumSet.noneOf(CheckKind.class);
        read.readings().keySet().forEach(check -> kinds.add(check.kind()));
        assertThat(kinds)
                .containsExactlyInAnyOrder(
                        CheckKind.VALUE,
                        CheckKind.BUILD_UP,
                        CheckKind.AIR_LOSS,
                        CheckKind.RESERVE,
                        CheckKind.YES_NO);
    }

    @Test
    void every_spelling_of_a_unit_is_understood_as_the_table_says() {
        Set<Dimension> shown = EnumSet.noneOf(Dimension.class);
        for (String row : section("Spellings that are understood").lines().toList()) {
            String[] cells = row.split("\\|", -1);
            if (cells.length == 4 && cells[2].contains("`")) {
                Dimension dimension = dimension(cells[1].strip());
                shown.add(dimension);
                Matcher spelling = CODE.matcher(cells[2]);
                while (spelling.find()) {
                    assertThat(Quantity.parse("2 " + spelling.group(1)).dimension())
                            .as(spelling.group(1))
                            .isEqualTo(dimension);
                }
            }
        }
        assertThat(shown).hasSize(12);
    }

    @Test
    void the_json_of_judge_is_printed_as_it_is_written() {
        assertHolds(
                Json.read("formats.md", block("json judge")),
                output(
                        "judge",
                        EXAMPLES.resolve("inspections/ontario-stroke-over.yaml").toString(),
                        "--json"));
    }

    @Test
    void the_json_of_rules_is_printed_as_it_is_written() {
        assertHolds(
                Json.read("formats.md", block("json rules")),
                output(
                        "rules",
                        "--place",
                        "CA-ON",
                        "--vehicle",
                        EXAMPLES.resolve("vehicles/tractor-box-trailer.yaml").toString(),
                        "--on",
                        "2026-11-24",
                        "--json"));
    }

    @Test
    void the_json_of_drive_is_printed_as_it_is_written() {
        assertHolds(
                Json.read("formats.md", block("json drive")),
                output(
                        "drive",
                        EXAMPLES.resolve("scenarios/roll-away.yaml").toString(),
                        "--script",
                        EXAMPLES.resolve("scripts/walk-away.yaml").toString(),
                        "--json"));
    }

    @Test
    void the_json_of_trace_is_printed_as_it_is_written() {
        assertHolds(
                Json.read("formats.md", block("json trace")),
                output("trace", EXAMPLES.resolve("traces/cold-start.csv").toString(), "--json"));
    }

    @Test
    void every_column_kind_and_channel_of_a_log_is_named() {
        String columns = section("## Logs for `trace`");
        for (String name :
                List.of("parking knob in", "trailer knob in", "low-air lamp", "foot brake")) {
            assertThat(columns).contains("`" + name + "`");
        }
        String json = section("## JSON of `trace`");
        for (Recognised.Kind kind : Recognised.Kind.values()) {
            assertThat(json).contains("`" + Names.kebab(kind) + "`");
        }
        for (Channel channel : Channel.values()) {
            assertThat(json).contains("`" + Names.kebab(channel) + "`");
        }
    }

    @Test
    void the_marks_load_as_they_are_printed_and_every_word_is_named() {
        assertThat(MarksReader.read(DocumentText.yaml("formats.md", block("yaml marks"))).marks())
                .hasSize(3);
        String marks = section("## Marks for `trace`");
        for (MarkWord word : MarkWord.values()) {
            assertThat(marks).contains("`" + word.id() + "`");
        }
    }

    @Test
    void the_scenario_and_the_script_load_as_they_are_printed() {
        Scenario scenario =
                new ScenarioReader(
                                name ->
                                        DocumentFiles.read(
                                                EXAMPLES.resolve("scenarios").resolve(name)))
                        .read(DocumentText.yaml("formats.md", block("yaml scenario")));
        Script script =
                new ScriptReader(scenario.vehicle())
                        .read(DocumentText.yaml("formats.md", block("yaml script")));

        assertThat(scenario.faults()).hasSize(3);
        assertThat(scenario.parts()).hasSize(2);
        assertThat(scenario.seed()).isEqualTo(7);
        assertThat(script.steps()).hasSize(8);
    }

    @Test
    void the_statements_load_as_they_are_printed_and_every_word_is_named() {
        Vehicle vehicle =
                VehicleReader.read(
                        DocumentFiles.read(EXAMPLES.resolve("vehicles/tractor-box-trailer.yaml")));
        String steps = "steps:\n" + block("yaml statements").indent(2);
        Script script = new ScriptReader(vehicle).read(DocumentText.yaml("formats.md", steps));

        assertThat(script.steps().stream().filter(step -> step instanceof ScriptStep.State))
                .hasSize(3);
        for (Verdict verdict : Verdict.values()) {
            assertThat(section("## Script\n")).contains("`" + Names.kebab(verdict) + "`");
        }
    }

    @Test
    void the_marking_sheet_is_ours_to_the_last_figure_and_every_item_is_described() {
        Sheet read = SheetReader.read(DocumentText.yaml("formats.md", block("yaml sheet")));

        assertThat(read).isEqualTo(Sheet.OURS);
        for (Item item : Item.values()) {
            assertThat(section("## Marking sheet")).contains("| `" + item.id() + "` |");
        }
    }

    @Test
    void the_json_of_marks_is_printed_as_it_is_written() {
        assertHolds(
                Json.read("formats.md", block("json marks")),
                output(
                        "drive",
                        EXAMPLES.resolve("scenarios/morning-check.yaml").toString(),
                        "--script",
                        EXAMPLES.resolve("scripts/air-loss-stated.yaml").toString(),
                        "--mark",
                        "--on",
                        "2026-11-24",
                        "--json"));
    }

    @Test
    void every_verb_with_its_words_and_every_sign_is_described() {
        String steps = section("## Script\n");
        for (Verb verb : Verb.values()) {
            String row =
                    steps.lines()
                            .filter(line -> line.startsWith("| `"))
                            .filter(
                                    line ->
                                            line.split("\\|", -1)[1].contains(
                                                    "`" + verb.id() + "`"))
                            .findFirst()
                            .orElseThrow(() -> new AssertionError(verb.id()));
            verb.words().forEach(word -> assertThat(row).contains("`" + word + "`"));
        }
        for (Awaited sign : Awaited.values()) {
            assertThat(steps).contains("`" + sign.id() + "`");
        }
    }

    @Test
    void every_signal_of_a_trace_is_named() {
        Scenario scenario =
                new ScenarioReader(
                                name ->
                                        DocumentFiles.read(
                                                EXAMPLES.resolve("scenarios").resolve(name)))
                        .read(DocumentText.yaml("formats.md", block("yaml scenario")));
        String columns = section("## Trace of `drive`").replaceAll("\\s+", " ");
        for (Signal signal : Signal.of(PracticeTruck.of(scenario))) {
            boolean pressure = signal.unit().equals("psi") && !signal.name().contains("needle");
            boolean stroke = signal.name().startsWith("stroke");
            if (!pressure && !stroke) {
                assertThat(columns).contains("`" + signal.head() + "`");
            }
        }
    }

    /** Every key and value of the shorter document stands in the longer one. */
    private static void assertHolds(Node shown, Node whole) {
        assertThat(holds(shown, whole)).as(Json.writeCompact(shown)).isTrue();
    }

    private static boolean holds(Node shown, Node whole) {
        if (shown instanceof MapNode map) {
            return whole instanceof MapNode other
                    && map.keys().stream()
                            .allMatch(
                                    key ->
                                            other.get(key).isPresent()
                                                    && holds(
                                                            map.get(key).orElseThrow(),
                                                            other.get(key).orElseThrow()));
        }
        if (shown instanceof ListNode list) {
            return whole instanceof ListNode other
                    && list.items().stream()
                            .allMatch(item -> other.items().stream().anyMatch(o -> holds(item, o)));
        }
        return shown instanceof ScalarNode scalar
                && whole instanceof ScalarNode other
                && scalar.kind() == other.kind()
                && scalar.text().equals(other.text());
    }

    private static Node output(String... args) {
        StringWriter out = new StringWriter();
        FandownCommand.run(new PrintWriter(out, true), new PrintWriter(out, true), args);
        return Json.read("output.json", out.toString());
    }

    private static Dimension dimension(String words) {
        return switch (words) {
            case "speed of rotation" -> Dimension.ROTATION;
            case "share" -> Dimension.RATIO;
            default ->
                    Dimension.valueOf(words.replace(' ', '_').toUpperCase(java.util.Locale.ROOT));
        };
    }

    private String section(String opening) {
        int begin = guide.indexOf(opening);
        assertThat(begin).as(opening).isNotNegative();
        return guide.substring(begin, guide.indexOf("\n## ", begin));
    }

    private String block(String name) {
        String opening = "```" + name + "\n";
        assertThat(List.of(guide.split(opening, -1))).as(opening).hasSize(2);
        int begin = guide.indexOf(opening) + opening.length();
        return guide.substring(begin, guide.indexOf("```", begin));
    }
}
