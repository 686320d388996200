package org.fandown.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the refusal of one broken file has to name, as typed by hand into a table.
 *
 * @param file the broken file
 * @param line the line, 0 if the refusal is of the file as a whole
 * @param path the path of the value, empty if the file could not be read as far as that
 * @param value the value as written, empty if there is none
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
    static final Path FOLDER = Path.of("src", "test", "resources", "refusals");

    private static final String BROKEN = "# Broken, line ";
    private static final String MENDED = "# Mended:";

    static List<Refusal> table(String name) {
        return lines(FOLDER.resolve(name)).stream().skip(1).map(Refusal::of).toList();
    }

    private static Refusal of(String row) {
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

    /** Whether the file says which of its lines is broken and how it would read mended. */
    static boolean isMendable(Path file) {
        try {
            byte[] start = Files.readAllBytes(file);
            return new String(start, java.nio.charset.StandardCharsets.ISO_8859_1)
                    .startsWith(BROKEN);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The text of a broken file with its one broken line mended. */
    static String mended(Path file) {
        List<String> lines = lines(file);
        String first = lines.get(0);
        int broken = Integer.parseInt(first.substring(BROKEN.length(), first.indexOf(':')));
        String second = lines.get(1).substring(MENDED.length());
        String whole = second.isEmpty() ? "" : second.substring(1);
        return Stream.of(
                                lines.subList(0, broken - 1),
                                List.of(whole),
                                lines.subList(broken, lines.size()))
                        .flatMap(List::stream)
                        .reduce((a, b) -> a + "\n" + b)
                        .orElse("")
                + "\n";
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String toString() {
        return file;
    }
}
