package org.fandown.app.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Help.Ansi;

/** Writes text for a terminal: wrapped, and emphasised only where a person looks. */
final class Screen {
    private static final int WIDTH = 100;

    private final PrintWriter out;
    private final boolean colour;

    Screen(PrintWriter out) {
        this.out = out;
        this.colour = Ansi.AUTO.enabled();
    }

    void title(String text) {
        out.println(colour ? "\u001b[1m" + text + "\u001b[0m" : text);
    }

    void heading(String text) {
        out.println();
        title(text);
    }

    void line(String text) {
        out.println(text);
    }

    /** Writes a text under an indent, wrapped between words. */
    void wrapped(String indent, String text) {
        for (String line : wrap(text.strip(), WIDTH - indent.length())) {
            out.println(indent + line);
        }
    }

    /** Writes a text behind a head, its further lines under its first. */
    void hanging(String head, String text) {
        String indent = head;
        for (String line : wrap(text.strip(), WIDTH - head.length())) {
            out.println(indent + line);
            indent = " ".repeat(head.length());
        }
    }

    void table(TextTable table) {
        table.lines().forEach(out::println);
    }

    void done() {
        out.flush();
    }

    static List<String> wrap(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split("\\s+", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
