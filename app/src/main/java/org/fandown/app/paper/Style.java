package org.fandown.app.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The style sheet. */
final class Style {
    private static final String SHEET = read("report.css");

    private Style() {}

    static String sheet(PaperSize paper, Density density) {
        return "@page { size: "
                + paper.css()
                + " }\nbody { font-size: "
                + density.points()
                + "pt }\n"
                + SHEET;
    }

    private static String read(String name) {
        try (InputStream in = Style.class.getResourceAsStream(name)) {
            return new String(
                    Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
