package org.fandown.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every example scenario shows what it was written to show, and every example script runs. */
class DriveExamplesTest {
    private static final Path EXAMPLES = Path.of("..", "examples");

    /** Each scenario, a script done with it, and words that have to be told, or not (after !). */
    private static final String TABLE =
            """
            cold-start       | in-cab-test          | the dryer purges; low-air lamp on; \
            trailer supply knob out; parking knob out; !DANGER; !in vain; !not possible
            cold-start       | in-cab-test-logged   | the compressor pumps again; low-air lamp on; \
            trailer supply knob out; parking knob out; !DANGER; !in vain; !not possible
            cold-start       | strokes-with-helper  | push rod of 1L; free stroke of 2R; !DANGER
            cold-start       | tug-test             | gear: low; !DANGER; !vehicle moves
            cold-start       | breakaway            | trailer supply knob out; the hose whips
            hidden-leak      | in-cab-test          | the dryer purges; low-air lamp on
            hidden-leak      | check-valves         | air comes out; !DANGER
            governor-high    | in-cab-test          | the dryer purges (primary 144 psi
            crossed-lines    | in-cab-test          | trailer supply knob in
            cold-start       | air-loss-stated      | begin: air-loss-applied; record: governor-cut-out; \
            conclude: not proven; !DANGER; !in vain
            morning-check    | full-inspection      | record: build-up; conclude: fit to move; no defect; \
            !DANGER; !in vain; !not possible
            morning-check    | full-inspection-us   | record: parking-valve-closing; no defect; !DANGER; \
            !in vain; !not possible
            roll-away        | walk-away            | DANGER: the vehicle rolls away with nobody
            bus-warning-low  | in-cab-test-single   | the dryer purges; !low-air lamp on (primary 6
            winter-drain     | check-valves         | drain of supply: air comes out
            """;

    @ParameterizedTest(name = "{0} with {1}")
    @CsvSource(delimiter = '|', textBlock = TABLE)
    void the_run_tells_what_the_example_shows(String scenario, String script, String words) {
        Cli run =
                Cli.run("drive", file("scenarios", scenario), "--script", file("scripts", script));

        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
        String told = run.out().replaceAll("\\s+", " ");
        for (String word : words.split("; ?", -1)) {
            if (word.startsWith("!")) {
                assertThat(told).doesNotContain(word.substring(1));
            } else {
                assertThat(told).contains(word);
            }
        }
    }

    @Test
    void the_table_the_folders_and_the_list_in_the_readme_hold_the_same_examples()
            throws IOException {
        String readme = Files.readString(EXAMPLES.resolve("README.md"));
        for (String folder : List.of("scenarios", "scripts")) {
            for (String name : names(folder)) {
                assertThat(TABLE).containsPattern("(^|\\W)" + name + " +\\|");
                assertThat(readme).contains("(" + folder + "/" + name + ".yaml)");
            }
        }
    }

    @Test
    void every_example_begins_by_saying_what_it_shows() throws IOException {
        for (String folder : List.of("scenarios", "scripts")) {
            for (String name : names(folder)) {
                assertThat(Files.readString(Path.of(file(folder, name)))).startsWith("# ");
            }
        }
    }

    private static List<String> names(String folder) throws IOException {
        try (Stream<Path> files = Files.list(EXAMPLES.resolve(folder))) {
            return files.map(f -> f.getFileName().toString().replace(".yaml", ""))
                    .sorted()
                    .toList();
        }
    }

    private static String file(String folder, String name) {
        return EXAMPLES.resolve(folder).resolve(name + ".yaml").toString();
    }
}
