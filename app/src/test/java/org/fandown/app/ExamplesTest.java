package org.fandown.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.fandown.app.Example.Measured;
import org.fandown.document.Json;
import org.fandown.document.ListNode;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.document.ScalarNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every example gives what its author expects of it, as text and as JSON. */
class ExamplesTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final Path INSPECTIONS = EXAMPLES.resolve("inspections");
    private static final Set<String> STATUSES =
            Set.of("met", "not-met", "undetermined", "spoiled", "not-checked", "not-applicable");

    /** JSON prints six decimals; the clock's part of an uncertainty is below 0.02 everywhere. */
    private static final double CLOCK_AND_PRINT = 0.02;

    private static final double PRINTED = 1e-6;

    static List<Example> examples() {
        return ExampleTable.ALL;
    }

    static Stream<Path> vehicles() throws IOException {
        return files("vehicles").stream();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void the_text_begins_with_the_verdict_and_says_why(Example example) {
        Cli run = Cli.run("judge", path(example));

        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isEqualTo(example.exit());
        assertThat(run.out())
                .startsWith(example.verdict().replace('-', ' ').toUpperCase(java.util.Locale.ROOT));
        assertThat(flowing(run.out())).contains(example.words());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void the_json_holds_the_verdict_and_every_decisive_finding(Example example) {
        Cli run = Cli.run("judge", path(example), "--json");

        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isEqualTo(example.exit());
        MapNode judgement = (MapNode) Json.read("judgement.json", run.out());
        assertThat(text(judgement, "verdict")).isEqualTo(example.verdict());
        assertThat(items(judgement, "findings").stream().filter(ExamplesTest::isOpen))
                .map(f -> of(f, "rule", "wheel", "status"))
                .containsExactlyInAnyOrderElementsOf(example.open());
        assertThat(items(judgement, "defects").stream())
                .map(d -> of(d, "component", "wheel", "severity", "rule"))
                .containsExactlyInAnyOrderElementsOf(example.defects());
        example.met().forEach(measured -> assertMet(judgement, measured));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void every_finding_has_the_keys_that_are_promised(Example example) {
        MapNode judgement =
                (MapNode) Json.read("a.json", Cli.run("judge", path(example), "--json").out());

        assertThat(items(judgement, "findings")).isNotEmpty();
        for (MapNode finding : items(judgement, "findings")) {
            assertThat(finding.keys())
                    .contains("check", "rule", "status", "limit", "source", "provenance", "reason");
            assertThat(text(finding, "status")).isIn(STATUSES);
            assertThat(finding.get("measured").isPresent())
                    .isEqualTo(finding.get("uncertainty").isPresent());
        }
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void the_rules_can_be_listed_for_every_vehicle(Path vehicle) {
        Cli run =
                Cli.run(
                        "rules",
                        "--place",
                        "CA-ON",
                        "--on",
                        "2026-11-24",
                        "--vehicle",
                        vehicle.toString());

        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("Air loss");
    }

    @Test
    void the_table_the_folder_and_the_list_in_the_readme_hold_the_same_examples()
            throws IOException {
        List<String> names = files("inspections").stream().map(ExamplesTest::name).toList();

        assertThat(ExampleTable.ALL)
                .extracting(Example::file)
                .containsExactlyInAnyOrderElementsOf(names);
        String readme = Files.readString(EXAMPLES.resolve("README.md"));
        names.forEach(name -> assertThat(readme).contains("(inspections/" + name + ".yaml)"));
        vehicles().forEach(v -> assertThat(readme).contains("(vehicles/" + name(v) + ".yaml)"));
    }

    @Test
    void every_example_begins_by_saying_what_it_shows() throws IOException {
        for (Path file : files("inspections")) {
            assertThat(Files.readString(file)).startsWith("# ");
        }
    }

    private static void assertMet(MapNode judgement, Measured expected) {
        List<MapNode> found =
                items(judgement, "findings").stream()
                        .filter(f -> of(f, "rule", "wheel").equals(expected.finding()))
                        .toList();
        assertThat(found).as(expected.finding()).hasSize(1);
        assertThat(text(found.get(0), "status")).as(expected.finding()).isEqualTo("met");
        MapNode measured = (MapNode) found.get(0).get("measured").orElseThrow();
        MapNode uncertainty = (MapNode) found.get(0).get("uncertainty").orElseThrow();
        assertThat(text(measured, "unit")).isEqualTo(expected.unit());
        assertThat(Double.parseDouble(text(measured, "value")))
                .isCloseTo(expected.value(), within(PRINTED));
        assertThat(text(uncertainty, "unit")).isEqualTo(expected.unit());
        assertThat(Double.parseDouble(text(uncertainty, "value")))
                .as(expected.finding())
                .isCloseTo(expected.uncertainty(), within(CLOCK_AND_PRINT));
    }

    private static boolean isOpen(MapNode finding) {
        boolean counts = Set.of("required", "unconfirmed").contains(text(finding, "standing"));
        return counts && !Set.of("met", "not-applicable").contains(text(finding, "status"));
    }

    /** The values of those keys that are there, with spaces between. */
    private static String of(MapNode map, String... keys) {
        return Stream.of(keys)
                .filter(key -> map.get(key).isPresent())
                .map(key -> text(map, key))
                .reduce((a, b) -> a + " " + b)
                .orElse("");
    }

    private static String text(MapNode map, String key) {
        return ((ScalarNode) map.get(key).orElseThrow()).text();
    }

    private static List<MapNode> items(MapNode map, String key) {
        List<Node> items = ((ListNode) map.get(key).orElseThrow()).items();
        return items.stream().map(MapNode.class::cast).toList();
    }

    /** The text without its line breaks, which depend on the width. */
    private static String flowing(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private static String path(Example example) {
        return INSPECTIONS.resolve(example.file() + ".yaml").toString();
    }

    private static String name(Path file) {
        return file.getFileName().toString().replace(".yaml", "");
    }

    private static List<Path> files(String folder) throws IOException {
        try (Stream<Path> files = Files.list(EXAMPLES.resolve(folder))) {
            return files.sorted().toList();
        }
    }
}
