package org.fandown.plot;

import java.util.ArrayList;
import java.util.List;

/** Cuts texts into lines. */
final class Wrap {
    /** Width of a letter over its height, on the safe side of usual fonts. */
    static final double LETTER = 0.6;

    private Wrap() {}

    static double width(String text, double size) {
        return text.length() * LETTER * size;
    }

    /** Cuts between words where it can, within a word where it must. */
    static List<String> lines(String text, int most) {
        List<String> lines = new ArrayList<>();
        String rest = text.strip();
        while (rest.length() > most) {
            int space = rest.lastIndexOf(' ', most);
            int end = space > 0 ? space : most;
            lines.add(rest.substring(0, end));
            rest = rest.substring(end).strip();
        }
        lines.add(rest);
        return lines;
    }
}
