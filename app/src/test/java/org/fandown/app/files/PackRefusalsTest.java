package org.fandown.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.fandown.document.DocumentException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each refusal of a rule pack has one broken file. Its first line says what is broken, its second
 * how the broken line would read if it were mended; a table says what the refusal has to name.
 */
class PackRefusalsTest {
    private static final Path FOLDER = Path.of("src/test/resources/refusals/packs");
    private static final Path TABLE = Path.of("src/test/resources/refusals/packs.csv");
    private static final String BROKEN = "# Broken, line ";
    private static final String MENDED = "# Mended:";

    @TempDir private Path site;

    /**
     * What one refusal has to name.
     *
     * @param file the broken file
     * @param line the line
     * @param path the path of the value
     * @param value the value as written
     * @param problem key words of what is wrong
     * @param allowed key words of what is allowed
     * @param next key words of what to do next
     */
    record Refusal(
            String file,
            int line,
            String path,
            String value,
            List<String> problem,
            List<String> allowed,
            List<String> next) {

        static Refusal of(String row) {
            String[] cells = row.split(";", -1);
            return new Refusal(
                    cells[0],
                    Integer.parseInt(cells[1]),
                    orEmpty(cells[2]),
                    orEmpty(cells[3]),
                    words(cells[4]),
                    words(cells[5]),
                    words(cells[6]));
        }

        private static String orEmpty(String cell) {
            return cell.equals("-") ? "" : cell;
        }

        private static List<String> words(String cell) {
            return List.of(cell.split("\\|", -1));
        }

        @Override
        public String toString() {
            return file;
        }
    }

    static List<Refusal> refusals() throws IOException {
        return Files.readAllLines(TABLE).stream().skip(1).map(Refusal::of).toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refusals")
    void broken_pack_is_refused_with_place_value_what_is_allowed_and_what_to_do(Refusal refusal)
            throws IOException {
        Path file = site.resolve(refusal.file());
        Files.copy(FOLDER.resolve(refusal.file()), file);

        DocumentException refused =
                catchThrowableOfType(DocumentException.class, () -> RulePacks.builtIn().and(site));

        assertThat(refused).as("refusal").isNotNull();
        SoftAssertions.assertSoftly(
                softly -> {
                    softly.assertThat(refused.file()).isEqualTo(file.toString());
                    softly.assertThat(refused.line()).as("line").isEqualTo(refusal.line());
                    softly.assertThat(refused.path()).as("path").isEqualTo(refusal.path());
                    softly.assertThat(refused.value()).as("value").isEqualTo(refusal.value());
                    softly.assertThat(refused.problem()).contains(refusal.problem());
                    softly.assertThat(refused.allowed()).contains(refusal.allowed());
                    softly.assertThat(refused.nextStep()).contains(refusal.next());
                    softly.assertThat(refused.getMessage())
                            .startsWith(file + ":" + refusal.line() + ":")
                            .contains(refusal.value())
                            .contains(" Allowed: ")
                            .contains(" Next: ")
                            .doesNotContain("..")
                            .doesNotContain("\n");
                });
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refusals")
    void broken_pack_loads_once_its_one_broken_line_is_mended(Refusal refusal) throws IOException {
        List<String> lines = Files.readAllLines(FOLDER.resolve(refusal.file()));
        String first = lines.get(0);
        int broken = Integer.parseInt(first.substring(BROKEN.length(), first.indexOf(':')));
        String second = lines.get(1);
        String mended = second.equals(MENDED) ? "" : second.substring(MENDED.length() + 1);
        List<String> whole =
                Stream.of(
                                lines.subList(0, broken - 1),
                                mended.replace("\\n", "\n").lines().toList(),
                                lines.subList(broken, lines.size()))
                        .flatMap(List::stream)
                        .toList();
        Files.write(site.resolve(refusal.file()), whole);

        assertThat(RulePacks.builtIn().and(site).places()).hasSize(builtInPlaces() + 1);
    }

    @Test
    void every_broken_file_is_in_the_table_and_every_row_has_its_file() throws IOException {
        List<String> files;
        try (Stream<Path> found = Files.list(FOLDER)) {
            files = found.map(path -> path.getFileName().toString()).sorted().toList();
        }

        assertThat(refusals().stream().map(Refusal::file).toList())
                .containsExactlyElementsOf(files);
    }

    private static int builtInPlaces() {
        return RulePacks.builtIn().places().size();
    }
}
