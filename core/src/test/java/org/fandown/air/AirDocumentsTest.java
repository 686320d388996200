package org.fandown.air;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * The table of the document is that of the code. Run with the system property {@code
 * fandown.write-docs} set to {@code true} to write them anew.
 */
class AirDocumentsTest {
    private static final Path MODEL = Path.of("..", "docs", "model.md");

    @Test
    void the_defaults_of_the_air_system_are_listed() throws IOException {
        check(MODEL, "air-defaults", defaults());
    }

    private static String defaults() {
        StringBuilder table = new StringBuilder("| what | value | basis | source |\n");
        table.append("|---|---|---|---|\n");
        for (AirDefault each : AirDefault.values()) {
            String source = each.source().isEmpty() ? "assumption" : each.source();
            table.append("| ").append(each.label());
            table.append(" | ").append(each.value());
            table.append(" | ").append(words(each.basis()));
            table.append(" | ").append(source).append(" |\n");
        }
        return table.toString();
    }

    private static String words(Enum<?> basis) {
        return basis.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static void check(Path file, String name, String table) throws IOException {
        String begin = "<!-- " + name + " -->\n";
        String end = "<!-- end of " + name + " -->\n";
        String text = Files.readString(file);
        int from = text.indexOf(begin) + begin.length();
        int to = text.indexOf(end);
        assertThat(to).as("marks of %s in %s", name, file).isGreaterThanOrEqualTo(from);
        if (Boolean.getBoolean("fandown.write-docs")) {
            Files.writeString(file, text.substring(0, from) + table + text.substring(to));
            return;
        }
        assertThat(text.substring(from, to)).isEqualTo(table);
    }
}
