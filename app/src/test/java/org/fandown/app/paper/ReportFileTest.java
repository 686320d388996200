package org.fandown.app.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fandown.app.files.FileWriteException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportFileTest {
    private final ReportContent content = Samples.sample(Samples.QUEBEC_TRUCK);

    @TempDir private Path folder;

    @Test
    void report_is_written_and_nothing_else_is_left() throws IOException {
        Path file = folder.resolve("report.pdf");

        ReportPdf.write(content, file);

        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
        }
        assertThat(names()).containsExactly("report.pdf");
    }

    @Test
    void older_report_is_replaced() throws IOException {
        Path file = Files.writeString(folder.resolve("report.pdf"), "old");

        ReportPdf.write(content, file);

        assertThat(Files.size(file)).isGreaterThan(1000);
    }

    @Test
    void missing_directory_is_named_with_the_next_step() throws IOException {
        Path file = folder.resolve("absent").resolve("report.pdf");

        FileWriteException problem = problem(file);

        assertThat(problem)
                .hasMessageContaining(file.toString())
                .hasMessageContaining("there is no directory");
        assertThat(problem.path()).isEqualTo(file.toString());
        assertThat(problem.nextStep()).isEqualTo("Make the directory, or name another place.");
        assertThat(names()).isEmpty();
    }

    @Test
    void directory_is_not_written_over() throws IOException {
        Path file = Files.createDirectory(folder.resolve("report.pdf"));

        assertThat(problem(file)).hasMessageContaining("this is a directory");
        assertThat(names()).containsExactly("report.pdf");
        assertThat(file).isEmptyDirectory();
    }

    @Test
    void directory_that_is_a_file_is_refused() throws IOException {
        Path file = Files.writeString(folder.resolve("notes"), "x").resolve("report.pdf");

        assertThat(problem(file)).hasMessageContaining("there is no directory");
        assertThat(names()).containsExactly("notes");
    }

    @Test
    void stream_that_fails_says_so() {
        OutputStream broken =
                new OutputStream() {
                    @Override
                    public void write(int b) throws IOException {
                        throw new IOException("full");
                    }
                };

        assertThatThrownBy(() -> ReportPdf.write(content, broken))
                .isInstanceOf(IOException.class)
                .hasMessage("full");
    }

    private FileWriteException problem(Path file) {
        return catchThrowableOfType(FileWriteException.class, () -> ReportPdf.write(content, file));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }
}
