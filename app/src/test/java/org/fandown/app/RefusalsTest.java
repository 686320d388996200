package org.fandown.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.SoftAssertions.assertSoftly;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Broken inspections and vehicles as people really break them: each is refused with its place, its
 * value, what is allowed and what to do next, and nothing is written.
 *
 * <p>A file that can be mended in one line says how in its first two lines.
 */
class RefusalsTest {
    private static final Path INSPECTIONS = Refusal.FOLDER.resolve("inspections");
    private static final Path VEHICLES = Refusal.FOLDER.resolve("vehicles");

    @TempDir private Path scratch;

    static List<Refusal> inspections() {
        return Refusal.table("inspections.csv");
    }

    static List<Refusal> vehicles() {
        return Refusal.table("vehicles.csv");
    }

    static Stream<Refusal> mendableInspections() {
        return inspections().stream()
                .filter(r -> Refusal.isMendable(INSPECTIONS.resolve(r.file())));
    }

    static Stream<Refusal> mendableVehicles() {
        return vehicles().stream().filter(r -> Refusal.isMendable(VEHICLES.resolve(r.file())));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("inspections")
    void broken_inspection_is_refused_and_nothing_is_written(Refusal refusal) {
        Path report = scratch.resolve("report.pdf");
        Path file = INSPECTIONS.resolve(refusal.file());

        Cli plain = Cli.run("judge", file.toString(), "--report", report.toString());
        Cli json = Cli.run("judge", file.toString(), "--json");

        assertRefused(plain, file, refusal);
        assertThat(json).isEqualTo(plain);
        assertThat(scratch).isEmptyDirectory();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("vehicles")
    void broken_vehicle_is_refused_where_rules_are_listed(Refusal refusal) {
        Path file = VEHICLES.resolve(refusal.file());

        assertRefused(listRules(file), file, refusal);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("vehicles")
    void broken_vehicle_is_refused_where_an_inspection_names_it(Refusal refusal)
            throws IOException {
        Path file = VEHICLES.resolve(refusal.file()).toAbsolutePath();
        Path inspection = scratch.resolve("inspection.yaml");
        Files.writeString(
                inspection, "place: CA-ON\nmoment: 2026-11-23T06:40:00Z\nvehicle: " + file + "\n");

        assertRefused(Cli.run("judge", inspection.toString()), file, refusal);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mendableInspections")
    void inspection_is_judged_once_its_one_broken_line_is_mended(Refusal refusal)
            throws IOException {
        Path file = scratch.resolve("inspections").resolve("mended.yaml");
        Files.createDirectories(file.getParent());
        Files.createDirectories(scratch.resolve("sound"));
        Files.copy(
                Refusal.FOLDER.resolve("sound/tractor-trailer.yaml"),
                scratch.resolve("sound/tractor-trailer.yaml"));
        Files.writeString(file, Refusal.mended(INSPECTIONS.resolve(refusal.file())));

        Cli run = Cli.run("judge", file.toString());

        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isNotEqualTo(2);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mendableVehicles")
    void vehicle_has_rules_once_its_one_broken_line_is_mended(Refusal refusal) throws IOException {
        Path file = scratch.resolve("mended.yaml");
        Files.writeString(file, Refusal.mended(VEHICLES.resolve(refusal.file())));

        Cli run = listRules(file);

        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"inspections, 70, 60", "vehicles, 25, 20"})
    void every_broken_file_stands_in_the_table_and_most_can_be_mended(
            String kind, int atLeast, int mendable) throws IOException {
        List<Refusal> table = Refusal.table(kind + ".csv");
        List<Path> files;
        try (Stream<Path> all = Files.list(Refusal.FOLDER.resolve(kind))) {
            files = all.sorted().toList();
        }

        assertThat(table)
                .extracting(Refusal::file)
                .containsExactlyInAnyOrderElementsOf(
                        files.stream().map(f -> f.getFileName().toString()).toList())
                .hasSizeGreaterThanOrEqualTo(atLeast);
        assertThat(files.stream().filter(Refusal::isMendable).count())
                .isGreaterThanOrEqualTo(mendable);
    }

    @ParameterizedTest
    @ValueSource(strings = {"no-such-file.yaml", "folder.yaml"})
    void file_that_cannot_be_opened_is_refused_with_its_name(String name) throws IOException {
        Files.createDirectories(scratch.resolve("folder.yaml"));
        Path file = scratch.resolve(name);

        Cli run = Cli.run("judge", file.toString());

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("fandown: " + file + ": T").contains(" Next: ");
    }

    @Test
    void report_that_cannot_be_written_leaves_nothing_behind() throws IOException {
        Path inspection = Path.of("..", "examples", "inspections", "ontario-stroke-over.yaml");
        Path report = scratch.resolve("missing").resolve("report.pdf");

        Cli run = Cli.run("judge", inspection.toString(), "--report", report.toString());

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("missing").contains("Next: ");
        assertThat(scratch).isEmptyDirectory();
    }

    private static Cli listRules(Path vehicle) {
        return Cli.run(
                "rules", "--place", "CA-ON", "--on", "2026-11-23", "--vehicle", vehicle.toString());
    }

    private static void assertRefused(Cli run, Path file, Refusal refusal) {
        String place = refusal.line() == 0 ? file + ": " : file + ":" + refusal.line() + ":";
        String message = run.err().strip();
        assertSoftly(
                softly -> {
                    softly.assertThat(run.exit()).as("exit code").isEqualTo(2);
                    softly.assertThat(run.out()).as("standard output").isEmpty();
                    softly.assertThat(message).startsWith("fandown: " + place);
                    softly.assertThat(message).contains(path(refusal), value(refusal));
                    softly.assertThat(problem(message)).contains(refusal.problem());
                    softly.assertThat(allowed(message)).contains(refusal.allowed());
                    softly.assertThat(next(message)).contains(refusal.next());
                    softly.assertThat(message).hasLineCount(1).matches(".*[.?]");
                    softly.assertThat(message).doesNotContain(". .", "Exception");
                });
    }

    private static String path(Refusal refusal) {
        return refusal.path().isEmpty() ? "" : ": " + refusal.path() + ": ";
    }

    private static String value(Refusal refusal) {
        return refusal.value().isEmpty() ? "" : "(value '" + refusal.value();
    }

    private static String problem(String message) {
        return message.substring(0, message.indexOf(" Allowed: "));
    }

    private static String allowed(String message) {
        return message.substring(message.indexOf(" Allowed: "), message.indexOf(" Next: "));
    }

    private static String next(String message) {
        return message.substring(message.indexOf(" Next: "));
    }
}
