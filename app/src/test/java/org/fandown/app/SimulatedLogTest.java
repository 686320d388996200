package org.fandown.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A log of the practice truck must not pass for one of a real vehicle. */
class SimulatedLogTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final Path LOG = EXAMPLES.resolve("traces/cold-start.csv");
    private static final String NOT_REAL = "this is not a record of a real vehicle";

    @TempDir private Path folder;

    @Test
    void what_drive_writes_says_in_every_row_that_it_is_simulated() throws IOException {
        Path csv = folder.resolve("drive.csv");
        Cli drive =
                Cli.run(
                        "drive",
                        EXAMPLES.resolve("scenarios/roll-away.yaml").toString(),
                        "--script",
                        EXAMPLES.resolve("scripts/walk-away.yaml").toString(),
                        "--out",
                        csv.toString());

        assertThat(drive.exit()).isZero();
        assertThat(Files.readAllLines(csv).get(0)).endsWith(",simulated");
        assertThat(Files.readAllLines(csv)).hasSizeGreaterThan(100);
        assertThat(Files.readAllLines(csv).stream().skip(1)).allMatch(row -> row.endsWith(",1"));
        assertThat(Cli.run("trace", csv.toString(), "--json").out())
                .contains("\"simulated\": true");
    }

    @Test
    void judgement_of_a_simulated_log_says_so_before_the_verdict() {
        Cli run = judge(LOG);

        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.out())
                .contains("Simulated: the log says that it comes from a practice truck.")
                .containsSubsequence("SIMULATED: NOT PROVEN\n", NOT_REAL, "Tractor 7")
                .doesNotContain("Valid until", "Keep until");
        assertThat(judge(LOG, "--json").out())
                .containsPattern("(?s)judgement.*\"simulated\": true");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"no column,false", "0,false", "1,true", "yes,true", "maybe,false"})
    void log_is_simulated_only_where_a_row_says_so(String cell, String simulated)
            throws IOException {
        Path log = folder.resolve("log.csv");
        Files.writeString(log, withCell(cell));
        Cli run = judge(log, "--json");

        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.out()).contains("\"simulated\": " + simulated);
        assertThat(run.out().split("\"simulated\": " + simulated, -1)).hasSize(3);
        assertThat(judge(log).out().contains(NOT_REAL)).isEqualTo(simulated.equals("true"));
    }

    /** The example with another last column; without one it is as earlier versions wrote it. */
    private static String withCell(String cell) throws IOException {
        boolean none = cell.equals("no column");
        return Files.readAllLines(LOG).stream()
                .map(
                        row ->
                                row.endsWith("simulated")
                                        ? (none ? row.replace(",simulated", "") : row)
                                        : row.replaceFirst(",1$", none ? "" : "," + cell))
                .collect(Collectors.joining("\n"));
    }

    @Test
    void one_simulated_row_makes_the_whole_log_simulated() throws IOException {
        String real = withCell("0");
        Path log = folder.resolve("joined.csv");
        Files.writeString(log, real.replaceFirst("(?m),0$", ",1"));

        assertThat(judge(log).out()).contains("SIMULATED: NOT PROVEN");
    }

    @Test
    void two_columns_that_say_it_are_refused() throws IOException {
        Path log = folder.resolve("twice.csv");
        Files.writeString(log, "time s,primary psi,simulated,Simulated\n0,100,1,0\n");

        assertThat(Cli.run("trace", log.toString()).err())
                .contains("Two columns hold the same", "Simulated");
    }

    @Test
    void readings_written_down_at_a_practice_truck_say_so_too() throws IOException {
        Path example = EXAMPLES.resolve("inspections/ontario-truck-in-order.yaml");
        String text = Files.readString(example).replace("../vehicles/", vehicles());
        Path file = Files.writeString(folder.resolve("i.yaml"), text + "\nsimulated: yes\n");
        Path report = folder.resolve("i.pdf");
        Cli run = Cli.run("judge", file.toString(), "--report", report.toString());

        assertThat(run.exit()).isZero();
        assertThat(run.out()).startsWith("SIMULATED: FIT TO MOVE\n").contains(NOT_REAL);
        try (var document = org.apache.pdfbox.Loader.loadPDF(report.toFile())) {
            String printed =
                    new org.apache.pdfbox.text.PDFTextStripper()
                            .getText(document)
                            .replaceAll("\\s+", " ");
            assertThat(printed)
                    .contains("Air-brake practice report, simulated", "SIMULATED: FIT TO MOVE")
                    .contains(NOT_REAL, "I inspected no real vehicle.")
                    .doesNotContain("Inspection valid until", "Keep until", "required here")
                    .doesNotContain("I inspected this vehicle", "Air-brake inspection report");
            assertThat(document.getDocumentInformation().getTitle()).contains("simulated");
        }
    }

    private static String vehicles() {
        return EXAMPLES.resolve("vehicles").toAbsolutePath().normalize() + "/";
    }

    private static Cli judge(Path log, String... more) {
        String[] command = {
            "trace",
            log.toString(),
            "--place",
            "CA-ON",
            "--vehicle",
            EXAMPLES.resolve("vehicles/tractor-box-trailer.yaml").toString()
        };
        String[] all = java.util.Arrays.copyOf(command, command.length + more.length);
        System.arraycopy(more, 0, all, command.length, more.length);
        return Cli.run(all);
    }
}
