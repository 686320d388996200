package org.fandown.generated;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Compares a generated document, or a part of one, with what stands in the file. With the system
 * property {@code fandown.write-docs} set to {@code true} it writes the file anew instead.
 */
public final class Generated {
    private static final String ADVICE =
            "%s is out of date; run its test with -Dfandown.write-docs=true";

    private Generated() {}

    /**
     * Checks the part between {@code <!-- name -->} and {@code <!-- end of name -->}.
     *
     * @param file the document
     * @param name the name in the two marks, which must stand on lines of their own
     * @param part what must stand between them, ending with a line feed
     */
    public static void check(Path file, String name, String part) throws IOException {
        String begin = "<!-- " + name + " -->\n";
        String end = "<!-- end of " + name + " -->\n";
        String text = Files.readString(file);
        int from = text.indexOf(begin) + begin.length();
        int to = text.indexOf(end);
        assertThat(to).as("marks of %s in %s", name, file).isGreaterThanOrEqualTo(from);
        if (writes()) {
            Files.writeString(file, text.substring(0, from) + part + text.substring(to));
            return;
        }
        assertThat(text.substring(from, to)).as(ADVICE, file).isEqualTo(part);
    }

    /** Checks a whole file. */
    public static void check(Path file, String text) throws IOException {
        if (writes()) {
            Files.createDirectories(file.toAbsolutePath().getParent());
            Files.writeString(file, text);
            return;
        }
        assertThat(file).as(ADVICE, file).exists();
        assertThat(Files.readString(file)).as(ADVICE, file).isEqualTo(text);
    }

    private static boolean writes() {
        return Boolean.getBoolean("fandown.write-docs");
    }
}
