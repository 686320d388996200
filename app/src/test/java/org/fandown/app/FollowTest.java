package org.fandown.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.fandown.document.Json;
import org.fandown.document.MapNode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Logs that are followed while they grow, by the program as a process of its own. */
@Timeout(value = 120, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class FollowTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final Path LOG = EXAMPLES.resolve("traces/cold-start.csv");
    private static final String[] JUDGED = {
        "--place",
        "CA-ON",
        "--vehicle",
        EXAMPLES.resolve("vehicles/tractor-box-trailer.yaml").toString(),
        "--as-printed"
    };

    @TempDir private Path folder;
    private final List<Process> started = new ArrayList<>();

    @AfterEach
    void end_what_was_started() {
        started.forEach(Process::destroyForcibly);
    }

    /** A run of the program, and what it has said so far. */
    private static final class Run {
        private final Process process;
        private final BufferedReader out;
        private final List<String> lines = new ArrayList<>();

        Run(Process process) {
            this.process = process;
            out = process.inputReader(StandardCharsets.UTF_8);
        }

        /** Reads on until a line holds the words. */
        String until(String words) throws IOException {
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                lines.add(line);
                if (line.contains(words)) {
                    return line;
                }
            }
            throw new AssertionError("'" + words + "' was not said:\n" + String.join("\n", lines));
        }

        int end() throws IOException, InterruptedException {
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                lines.add(line);
            }
            assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
            return process.exitValue();
        }

        OutputStream in() {
            return process.getOutputStream();
        }
    }

    private Run start(String log, String... more) throws IOException {
        List<String> command =
                new ArrayList<>(
                        List.of(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-Xmx64m",
                                "-XX:TieredStopAtLevel=1",
                                "-cp",
                                System.getProperty("java.class.path"),
                                "org.fandown.app.Main",
                                "trace",
                                log,
                                "--follow"));
        command.addAll(List.of(more));
        Process process =
                new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        started.add(process);
        return new Run(process);
    }

    private static String rows(int from, int to) throws IOException {
        try (Stream<String> lines = Files.lines(LOG)) {
            return lines.skip(from).limit(to - from).reduce("", (a, b) -> a + b + "\n");
        }
    }

    private static void add(Path file, String text) throws IOException {
        Files.writeString(file, text, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    private static String[] with(String... more) {
        return Stream.concat(Stream.of(JUDGED), Stream.of(more)).toArray(String[]::new);
    }

    @Test
    void growing_file_is_told_while_it_grows() throws Exception {
        Path log = folder.resolve("growing.csv");
        add(log, rows(0, 10));
        Run run = start(log.toString(), with("--quiet-for", "4 s"));

        assertThat(run.until("Still missing")).contains("Governor cut-out", "Air loss, brakes");
        run.until("Pressure comes");
        add(log, rows(10, 250));
        assertThat(run.until("The governor cut out at 124.0 psi"))
                .contains("95 %: ", "from 2:59.3 to 3:05.3", "Meets the rule: ");
        assertThat(run.until("Still missing")).doesNotContain("Governor cut-out");
        add(log, rows(250, 640));
        assertThat(run.until("held for 20 s")).contains("hold for 40 s more");
        assertThat(run.until("you may stop")).contains("held for 60 s");
        add(log, rows(640, 900));
        run.until("Nothing is missing of what the place asks for");

        assertThat(run.end()).isEqualTo(3);
        assertThat(run.lines)
                .contains("The log no longer grows.", "SIMULATED: NOT PROVEN")
                .anyMatch(line -> line.contains("That was certain after 20 s"));
    }

    @Test
    void pipe_is_told_live_and_ends_with_its_input() throws Exception {
        Run run = start("-");
        run.in().write(rows(0, 250).getBytes(StandardCharsets.UTF_8));
        run.in().flush();
        run.until("The governor cut out at");
        run.in().close();

        assertThat(run.end()).isZero();
        assertThat(run.lines).contains("Standard input has ended.", "Trace -");
    }

    @Test
    void signal_ends_with_the_summary_and_the_exit_code_of_the_verdict() throws Exception {
        Path log = folder.resolve("log.csv");
        add(log, rows(0, 250));
        Run run = start(log.toString(), JUDGED);
        run.until("The governor cut out at");
        run.process.toHandle().destroy();

        assertThat(run.end()).isEqualTo(3);
        assertThat(run.lines).contains("Ended by request.", "SIMULATED: NOT PROVEN");
    }

    @Test
    void json_is_one_object_a_line_and_the_last_is_the_whole() throws Exception {
        Path log = folder.resolve("log.csv");
        add(log, rows(0, 900));
        Run run = start(log.toString(), with("--json", "--quiet-for", "0.3 s"));
        assertThat(run.end()).isEqualTo(3);

        List<MapNode> events =
                run.lines.stream().map(line -> (MapNode) Json.read("line", line)).toList();
        assertThat(events).allMatch(e -> e.get("event").isPresent());
        assertThat(run.lines.get(0)).contains("\"event\":\"begin\"");
        assertThat(run.lines)
                .anyMatch(line -> line.contains("\"event\":\"loss-test\",\"at\":587"))
                .anyMatch(line -> line.contains("\"event\":\"recognised\""))
                .anyMatch(line -> line.contains("\"event\":\"missing\""));
        MapNode last = events.get(events.size() - 1);
        assertThat(((MapNode) last.get("trace").orElseThrow()).keys())
                .contains("recognised", "loss-tests", "missing", "judgement");
    }

    @Test
    void file_that_is_cut_or_replaced_is_read_on_from_its_new_beginning() throws Exception {
        String frame = " can0 18FEAE31#FFFF6E6EFFFFFFFF\n";
        Path log = folder.resolve("can.log");
        add(log, ("(100.0)" + frame).repeat(50) + "(100.0) can0 18FE");
        Run run = start(log.toString(), "--quiet-for", "3 s");
        run.until("Pressure comes");
        Files.writeString(log, "(101.0)" + frame);
        run.until("The file was cut; going on from its new beginning.");
        Path next = folder.resolve("next.log");
        Files.writeString(next, ("(102.0)" + frame).repeat(3));
        Files.move(next, log, StandardCopyOption.REPLACE_EXISTING);
        run.until("A new file has taken the place of the log");
        Files.delete(log);
        run.until("The file is gone");

        assertThat(run.end()).isZero();
        assertThat(run.lines).anyMatch(line -> line.contains("55 lines"));
    }

    @Test
    void options_that_do_not_fit_are_refused() {
        assertRefused("--quiet-for goes with --follow", "--quiet-for", "3 s");
        assertRefused("--quiet-for", "--follow", "--quiet-for", "3 psi");
        assertRefused("out of range", "--follow", "--quiet-for", "0 s");
        Cli absent = Cli.run("trace", folder.resolve("no.log").toString(), "--follow");
        assertThat(absent.exit()).isEqualTo(2);
        assertThat(absent.err()).contains("There is no such file", "Next: ");
    }

    private static void assertRefused(String words, String... options) {
        Cli run =
                Cli.run(
                        Stream.concat(Stream.of("trace", LOG.toString()), Stream.of(options))
                                .toArray(String[]::new));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).containsIgnoringCase(words);
    }

    @Test
    void word_typed_while_a_log_grows_is_a_mark() throws Exception {
        String table = Files.readString(EXAMPLES.resolve("traces/needles-only.csv"));
        int at = table.indexOf("\n715") + 1;
        Path log = folder.resolve("log.csv");
        add(log, table.substring(0, at));
        Run run = start(log.toString(), "--marks", "-", "--quiet-for", "4 s");
        assertThat(run.until("Type a word")).contains("low-air-warning", "foot-on");
        run.until("Pressure comes");
        run.in().write("lamp\nLow-air warning\n".getBytes(StandardCharsets.UTF_8));
        run.in().flush();
        run.until("There is no mark 'lamp'. Allowed: low-air-warning");
        run.until("11:54.0: Mark low-air-warning.");
        add(log, table.substring(at));

        assertThat(run.until("low-air warning came on")).contains("from 11:52.5 to 11:54.0");
        assertThat(run.end()).isZero();
    }

    @Test
    void example_without_switches_is_judged_by_its_marks() {
        String[] command = {
            "trace", EXAMPLES.resolve("traces/needles-only.csv").toString(),
            "--marks", EXAMPLES.resolve("marks/needles-only.yaml").toString()
        };
        Cli run =
                Cli.run(
                        Stream.concat(Stream.of(command), Stream.of(JUDGED))
                                .toArray(String[]::new));

        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("Marked by a person", "11:53.8  low-air-warning")
                .contains("The low-air warning came on at 66.0 psi")
                .contains("Air loss, brakes applied: ", "Air loss, brakes released: ")
                .doesNotContain("is not known", "Not in this trace");
    }

    @Test
    void marks_that_cannot_be_are_refused() throws IOException {
        Path marks = folder.resolve("marks.yaml");
        Files.writeString(marks, "marks:\n  - { at: 3 s, mark: lamp }\n");
        assertRefused("low-air-warning, parking-knob-out", "--marks", marks.toString());
        assertRefused("--marks - takes words typed", "--marks", "-");
        assertRefused("there is no such file", "--marks", folder.resolve("no.yaml").toString());
    }

    @Test
    void vehicle_number_shows_only_where_it_was_asked_for() throws IOException {
        String vin = "1M8GDM9AXKP042788";
        Path log = folder.resolve("vin.log");
        add(
                log,
                """
                (0.0) can0 18FEAE31#FFFF6E6EFFFFFFFF
                (0.1) can0 1CECFF00#20120003FFECFE00
                (0.2) can0 1CEBFF00#01314D3847444D39
                (0.3) can0 1CEBFF00#0241584B50303432
                (0.4) can0 1CEBFF00#033738382AFFFFFF
                """);
        String name = log.toString();
        Path plot = folder.resolve("plot.svg");
        Cli plain = Cli.run("trace", name, "--plot", plot.toString());
        String shown =
                plain.out()
                        + plain.err()
                        + Files.readString(plot)
                        + Cli.run("trace", name, "--json").out()
                        + Cli.run("trace", name, "--follow", "--quiet-for", "0.3 s").out();

        assertThat(shown).doesNotContain(vin).doesNotContain("1M8GDM9");
        assertThat(Cli.run("trace", name, "--vin").out())
                .contains("VIN: " + vin + " from address 0; its check digit is right");
        assertThat(Cli.run("trace", name, "--vin", "--json").out())
                .contains("\"vin\": \"" + vin + "\"", "\"check-digit\": true");
        assertThat(Cli.run("trace", LOG.toString(), "--vin").out())
                .contains("No vehicle identification number came.");
    }
}
