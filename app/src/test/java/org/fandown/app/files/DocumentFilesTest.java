package org.fandown.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fandown.document.DocumentException;
import org.fandown.document.Json;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DocumentFilesTest {
    @TempDir Path directory;

    @ParameterizedTest
    @ValueSource(strings = {"run.yaml", "run.yml", "RUN.YAML", "run.json"})
    void the_suffix_says_how_a_file_is_written(String name) throws IOException {
        Path file = Files.writeString(directory.resolve(name), "{\"a\": 1}");

        assertThat(Json.writeCompact(DocumentFiles.read(file))).isEqualTo("{\"a\":1}");
    }

    @Test
    void positions_name_the_file_as_it_was_given() throws IOException {
        Path file = Files.writeString(directory.resolve("run.yaml"), "a: 1\n");

        assertThat(DocumentFiles.read(file).at().file()).isEqualTo(file.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"run.txt", "run", "yaml", "run.yaml.bak"})
    void another_suffix_is_refused_before_the_file_is_opened(String name) {
        assertThat(refusal(directory.resolve(name)).problem())
                .isEqualTo("the name does not say how the file is written");
    }

    @Test
    void an_absent_file_is_refused() {
        Path file = directory.resolve("absent.yaml");

        assertThat(refusal(file))
                .hasMessage(file + ": There is no such file. Next: Check the name.");
    }

    @Test
    void a_directory_is_refused() throws IOException {
        Path folder = Files.createDirectory(directory.resolve("folder.yaml"));

        assertThat(refusal(folder).problem()).isEqualTo("this is a directory");
    }

    @Test
    void a_file_over_8_mib_is_refused_and_one_of_8_mib_is_not() throws IOException {
        String start = "a: 1\n";
        String fitting = start + "#".repeat(DocumentFiles.MAX_BYTES - start.length());
        Path largest = Files.writeString(directory.resolve("largest.yaml"), fitting);
        Path large = Files.writeString(directory.resolve("large.yaml"), fitting + "#");

        assertThat(Json.writeCompact(DocumentFiles.read(largest))).isEqualTo("{\"a\":1}");
        assertThat(refusal(large).problem()).isEqualTo("the file is too large");
    }

    private static DocumentException refusal(Path file) {
        return catchThrowableOfType(DocumentException.class, () -> DocumentFiles.read(file));
    }
}
