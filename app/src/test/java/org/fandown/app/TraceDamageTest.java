package org.fandown.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Logs that are cut, binary, in the wrong unit or full of junk: what can be used is used, with a
 * word about the rest; exit code 2 is only for what holds nothing.
 */
class TraceDamageTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final String FRAME = " can0 18FEAE31#FFFF6E6EFFFFFFFF\n";

    @TempDir private Path folder;

    private Cli trace(byte[] content) throws IOException {
        return Cli.run("trace", Files.write(folder.resolve("a.log"), content).toString());
    }

    private Cli trace(String content) throws IOException {
        return trace(content.getBytes(StandardCharsets.UTF_8));
    }

    /** Refused in one line that says the problem, and nothing on standard output. */
    private static void assertRefused(Cli run, String... words) {
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).hasLineCount(1).contains("Allowed: ", "Next: ");
        for (String each : words) {
            assertThat(run.err()).containsIgnoringCase(each);
        }
    }

    private static void assertRead(Cli run, String... words) {
        assertThat(run.exit()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out().replaceAll("\\s+", " ")).contains(words);
    }

    @ParameterizedTest
    @ValueSource(ints = {150_000, 77_777, 50_001, 20_002, 10_003, 5_000})
    void recording_cut_anywhere_is_read_as_far_as_it_goes(int length) throws IOException {
        byte[] whole = Files.readAllBytes(EXAMPLES.resolve("recordings/normal.log"));
        Cli run = trace(Arrays.copyOf(whole, length));

        assertRead(run, "candump log", "Channels: primary, secondary");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 9, 30, 300, 3_001, 40_000})
    void table_cut_in_a_row_is_read_up_to_that_row(int missing) throws IOException {
        byte[] whole = Files.readAllBytes(EXAMPLES.resolve("traces/cold-start.csv"));
        byte[] cut = Arrays.copyOf(whole, whole.length - missing - 1);
        while (cut[cut.length - 1] != ',') {
            cut = Arrays.copyOf(cut, cut.length - 1);
        }
        Cli run = trace(Arrays.copyOf(cut, cut.length - 1));

        long lines = new String(cut, StandardCharsets.UTF_8).lines().count();
        assertRead(run, "CSV", "Line " + lines + ": the table ends within this row");
    }

    @Test
    void table_cut_in_its_head_is_refused() throws IOException {
        assertRefused(trace("time s,prim"), "a.log:1: no column holds the pressure");
    }

    @Test
    void random_bytes_are_refused() throws IOException {
        byte[] bytes = new byte[300_000];
        SplittableRandom lot = new SplittableRandom(1);
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = (byte) lot.nextInt(256);
        }

        assertRefused(trace(bytes), "this is not text", "Unpack it");
    }

    @Test
    void packed_log_is_refused_with_the_way_out() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream packed = new GZIPOutputStream(bytes)) {
            packed.write(Files.readAllBytes(EXAMPLES.resolve("recordings/normal.log")));
        }

        assertRefused(trace(bytes.toByteArray()), "this is not text", "Unpack it");
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16LE", "UTF-16BE", "UTF-32"})
    void text_of_wide_letters_is_refused_with_the_way_out(String name) throws IOException {
        String table = "time s,primary psi\n0,100\n1,101\n";

        assertRefused(
                trace(table.getBytes(Charset.forName(name))),
                "not text",
                "save it as text in UTF-8");
    }

    @Test
    void bytes_that_are_no_text_amid_good_lines_are_passed_over() throws IOException {
        Cli run = trace("(0.0)" + FRAME + "\u0000\u0001\u00ff\n" + "(1.0)" + FRAME);

        assertRead(run, "3 lines", "Line 2: this is not a line of a candump log");
    }

    @ParameterizedTest(name = "{0} under {1}")
    @CsvSource({"850, psi", "125, bar", "120000, kPa"})
    void pressures_in_another_unit_than_the_head_says_are_refused(double value, String unit)
            throws IOException {
        StringBuilder table = new StringBuilder("time s,primary " + unit + "\n");
        for (int i = 0; i < 100; i++) {
            table.append(String.format(Locale.ROOT, "%d,%.0f%n", i, value));
        }

        assertRefused(
                trace(table.toString()),
                "no pressure of a brake circuit; line 2: pressures left out",
                "check the unit in the head");
    }

    @ParameterizedTest(name = "{0} under {1}")
    @CsvSource({"8.5, psi", "125, kPa"})
    void pressures_too_low_to_drive_with_make_one_doubt_the_unit(double value, String unit)
            throws IOException {
        StringBuilder table = new StringBuilder("time s,primary " + unit + "\n");
        for (int i = 0; i < 100; i++) {
            table.append(String.format(Locale.ROOT, "%d,%.1f%n", i, value));
        }

        assertRead(trace(table.toString()), "no pressure of a circuit is above", "check the unit");
    }

    @Test
    void unit_that_is_not_read_is_refused_with_the_line() throws IOException {
        assertRefused(
                trace("time s,primary MPa\n0,0.8\n"),
                "a.log:1: this unit is not read (value 'primary MPa')",
                "psi, kPa, bar");
    }

    @Test
    void lines_before_the_head_of_a_table_are_passed_over() throws IOException {
        Cli run = trace("Logger 4711\nStart: 6:40\n\ntime s,primary psi\n0,100\n5,101\n");

        assertRead(
                run, "CSV, 0:05.0 min, 6 lines", "Line 1: lines left out before the head", ": 2");
    }

    @Test
    void junk_before_a_recording_is_passed_over() throws IOException {
        assertRead(
                trace("interface can0 up\n\n(0.0)" + FRAME),
                "candump log",
                "Line 1: this is not a line of a candump log");
    }

    @Test
    void junk_of_many_lines_is_refused_with_the_first() throws IOException {
        assertRefused(
                trace("what is this?\n".repeat(200_000)),
                "no line can be used of the log's 200000; line 1: this is not a line of");
    }

    @Test
    void one_good_line_in_much_junk_is_enough() throws IOException {
        String junk = "what is this?\n".repeat(100_000);

        assertRead(trace(junk + "(0.0)" + FRAME + junk), "200 001 lines", "200000 times in all");
    }
}
