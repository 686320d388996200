package org.fandown.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reports that are signed and checked from the command line. */
class VerifyTest {
    private static final String INSPECTION =
            Path.of("..", "examples", "inspections", "nunavut-limit-from-memory.yaml").toString();

    @TempDir private static Path folder;

    private static Path report;
    private static String data;

    @BeforeAll
    static void sign() {
        report = folder.resolve("report.pdf");
        data = folder.resolve("records").toString();
        Cli judged =
                Cli.run(
                        "judge",
                        INSPECTION,
                        "--report",
                        report.toString(),
                        "--sign",
                        "--data",
                        data,
                        "--site",
                        "North yard");
        assertThat(judged.err()).isEmpty();
    }

    @Test
    void report_of_the_site_itself_holds() {
        Cli found = Cli.run("verify", report.toString(), "--data", data);

        assertThat(found.out()).contains("ok          signature signed by 'North yard'");
        assertThat(found.out()).contains("ok          record", "ok          page");
        assertThat(found.exit()).isZero();
    }

    @Test
    void signer_is_known_by_the_certificate_the_site_gives_away() {
        String certificate = Path.of(data, "site-certificate.pem").toString();

        Cli found =
                Cli.run(
                        "verify",
                        report.toString(),
                        "--data",
                        folder.toString(),
                        "--certificate",
                        certificate);

        assertThat(found.out().replaceAll("\\s+", " ")).contains("which is known");
    }

    @Test
    void unknown_signer_is_not_proven() {
        Cli found = Cli.run("verify", report.toString(), "--data", folder.resolve("no").toString());

        assertThat(found.exit()).isEqualTo(3);
        assertThat(found.out()).contains("not checked signature", "the signer is not known");
    }

    @Test
    void changed_report_is_wrong() throws IOException {
        byte[] bytes = Files.readAllBytes(report);
        bytes[bytes.length / 2] ^= 4;
        Path changed = Files.write(folder.resolve("changed.pdf"), bytes);

        Cli found = Cli.run("verify", changed.toString(), "--data", data);

        assertThat(found.exit()).isEqualTo(1);
        assertThat(found.out()).contains("NOT OK      signature", "bytes were changed");
    }

    @Test
    void json_says_the_same() {
        Cli found = Cli.run("verify", report.toString(), "--data", data, "--json");

        assertThat(found.out())
                .contains("\"format\": \"fandown-verification/1\"", "\"outcome\": \"ok\"")
                .doesNotContain("not-checked");
    }

    @Test
    void what_is_no_report_is_refused_with_the_next_step() throws IOException {
        Path none = Files.writeString(folder.resolve("none.pdf"), "nothing");

        Cli found = Cli.run("verify", none.toString(), "--data", data);

        assertThat(found.exit()).isEqualTo(2);
        assertThat(found.err()).contains("it is no PDF document", "Next: ");
    }

    @Test
    void plate_written_like_a_number_is_printed_as_it_was_written() throws IOException {
        Path inspection = folder.resolve("plate.yaml");
        Path vehicles = Path.of("..", "examples", "vehicles").toAbsolutePath().normalize();
        Files.writeString(
                inspection,
                Files.readString(Path.of(INSPECTION))
                        .replaceFirst("plate: .*", "plate: 12.50")
                        .replaceFirst("vehicle: \\.\\./vehicles", "vehicle: " + vehicles));
        Path printed = folder.resolve("plate.pdf");

        Cli.run("judge", inspection.toString(), "--report", printed.toString());

        try (PDDocument document = Loader.loadPDF(printed.toFile())) {
            assertThat(new PDFTextStripper().getText(document)).contains("12.50");
        }
    }

    @Test
    void signing_needs_a_report() {
        Cli found = Cli.run("judge", INSPECTION, "--sign", "--data", data);

        assertThat(found.exit()).isEqualTo(2);
        assertThat(found.err()).contains("--report OUT.pdf");
    }
}
