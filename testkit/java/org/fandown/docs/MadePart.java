package org.fandown.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The part of a document between two marks, which is made from the code. It is compared, or, with
 * the system property {@code fandown.write-docs} set to {@code true}, written anew.
 */
public final class MadePart {
    private MadePart() {}

    /** Compares or writes the part of a name, which stands between two comments. */
    public static void check(Path file, String name, String made) throws IOException {
        String begin = "<!-- " + name + " -->\n";
        String end = "<!-- end of " + name + " -->\n";
        String text = Files.readString(file);
        int from = text.indexOf(begin) + begin.length();
        int to = text.indexOf(end);
        assertThat(to).as("marks of %s in %s", name, file).isGreaterThanOrEqualTo(from);
        if (Boolean.getBoolean("fandown.write-docs")) {
            Files.writeString(file, text.substring(0, from) + made + text.substring(to));
            return;
        }
        assertThat(text.substring(from, to)).isEqualTo(made);
    }
}
