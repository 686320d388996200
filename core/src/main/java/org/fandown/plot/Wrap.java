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

    /** Never cuts a pair of surrogates. */
    private static int whole(String text, int end) {
        char last = text.charAt(end - 1);
        return end > 1 && last >= '\ud800' && last < '\udc00' ? end - 1 : end;
    }

    /** Cuts between words where it can, within a word where it must. */
    static List<String> lines(String text, int most) {
        List<String> lines = new ArrayList<>();
        String rest = text.strip();
        while (rest.length() > most) {
            int space = rest.lastIndexOf(' ', most);
            int end = space > 0 ? space : whole(rest, most);
            lines.add(rest.substring(0, end));
            rest = rest.substring(end).strip();
        }
        lines.add(rest);
        return lines;
    }
}
