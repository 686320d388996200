package org.fandown.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fandown.app.cli.ExitCode;
import org.fandown.referee.Marks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MarkCommandTest {
    private static final String SCENARIO = example("scenarios/morning-check.yaml");
    private static final String SCRIPT = example("scripts/full-inspection.yaml");
    private static final String PART = example("scripts/air-loss-stated.yaml");
    private static final String DAY = "2026-11-24";

    @TempDir private Path folder;

    private static String example(String name) {
        return Path.of("..", "examples").resolve(name).toString();
    }

    @Test
    void a_good_run_is_passed_and_told_so_with_the_care_that_is_due() {
        Cli run = Cli.run("drive", SCENARIO, "--script", SCRIPT, "--mark", "--on", DAY);

        assertThat(run.exit()).isEqualTo(ExitCode.DONE);
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("PASSED: ", "Nothing to do better", "not those of any authority")
                .contains(Marks.CARE);
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void a_run_that_leaves_checks_out_is_not_passed() {
        Cli run = Cli.run("drive", SCENARIO, "--script", PART, "--mark", "--on", DAY);

        assertThat(run.exit()).isEqualTo(ExitCode.NOT_PASSED);
        assertThat(run.out()).contains("NOT PASSED: ", "What to do better", "Instead: ");
    }

    @Test
    void a_stored_run_is_marked_to_the_same_bytes() throws IOException {
        String file = folder.resolve("run.json").toString();
        Cli made =
                Cli.run(
                        "drive",
                        SCENARIO,
                        "--script",
                        PART,
                        "--run",
                        file,
                        "--mark",
                        "--on",
                        DAY,
                        "--json");

        Cli again = Cli.run("drive", "--replay", file, "--mark", "--on", DAY, "--json");

        assertThat(again.out()).isEqualTo(made.out());
        assertThat(again.exit()).isEqualTo(made.exit());
        assertThat(again.err()).isEmpty();
    }

    @Test
    void a_stored_run_that_was_changed_is_marked_and_told() throws IOException {
        Path file = folder.resolve("run.json");
        Cli.run("drive", SCENARIO, "--script", PART, "--run", file.toString());
        String text = Files.readString(file);
        Files.writeString(file, text.replace("\"throttle\": \"50 %\"", "\"throttle\": \"40 %\""));

        Cli run = Cli.run("drive", "--replay", file.toString(), "--mark", "--on", DAY);

        assertThat(run.err()).contains("does not replay to the same bits");
        assertThat(run.out()).contains("points");
    }

    @Test
    void a_sheet_of_ones_own_counts() throws IOException {
        Path sheet = folder.resolve("sheet.yaml");
        Files.writeString(
                sheet, "title: Yard\npass: 100 %\nitems: { made: { weight: 8, each: 1 } }\n");

        Cli run =
                Cli.run(
                        "drive",
                        SCENARIO,
                        "--script",
                        PART,
                        "--mark",
                        "--on",
                        DAY,
                        "--sheet",
                        sheet.toString());

        assertThat(run.out()).contains("Yard", "NOT PASSED: 0 of 8 points, 8 needed");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "items: { maid: { weight: 1 } } | not something a run is marked by | 'made'",
                "items: { made: { weight: -1 } } | out of range | 0 to 1000",
                "items: { time: { weight: 1, allow: { share: 90 % } } } | nobody can be marked | 100",
                "items: { made: { weight: 1, allow: { time: 1 s } } } | not known here | time",
                "items: {} | nothing counts | at least one",
            })
    void a_sheet_that_cannot_be_is_refused(String items, String problem, String allowed)
            throws IOException {
        Path sheet = folder.resolve("sheet.yaml");
        Files.writeString(sheet, "title: Yard\npass: 80 %\n" + items + "\n");

        Cli run =
                Cli.run("drive", SCENARIO, "--script", PART, "--mark", "--sheet", sheet.toString());

        assertThat(run.exit()).isEqualTo(ExitCode.REFUSED);
        assertThat(run.err()).containsIgnoringCase(problem).contains(allowed, "sheet.yaml");
        assertThat(run.out()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--sheet x.yaml | go with --mark",
                "--mark --replay x.json | leave SCENARIO",
                "--mark --out - | both write to standard output",
                "--mark --place ZZ | no rule pack for ZZ",
                "--mark --on tomorrow | not a date",
            })
    void options_that_make_no_sense_are_refused(String options, String problem) {
        String[] words = ("drive " + SCENARIO + " --script " + PART + " " + options).split(" ", -1);

        Cli run = Cli.run(words);

        assertThat(run.exit()).isEqualTo(ExitCode.REFUSED);
        assertThat(run.err()).contains(problem);
    }

    @Test
    void a_scenario_without_a_place_needs_one() {
        Cli run = Cli.run("drive", example("scenarios/roll-away.yaml"), "--script", PART, "--mark");

        assertThat(run.exit()).isEqualTo(ExitCode.REFUSED);
        assertThat(run.err()).contains("names no place to mark by", "--place CODE");
    }
}
