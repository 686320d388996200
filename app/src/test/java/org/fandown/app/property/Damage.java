package org.fandown.app.property;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Damages a text in the ways in which files are damaged: by lines, by letters, by figures. */
final class Damage {
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");
    private static final List<String> FIGURES =
            List.of(
                    "0",
                    "-1",
                    "-0.0",
                    "NaN",
                    ".nan",
                    ".inf",
                    "-.inf",
                    "1e400",
                    "1e-400",
                    "0x1F",
                    "1/0",
                    "1/3",
                    "12",
                    "60",
                    "85",
                    "100",
                    "640",
                    "999999999",
                    "1000000000000000000000",
                    "0.000000000001",
                    "");
    private static final String LETTERS = "abkLR019 -.,:;'\"{}[]#&*!|>%@`~\t\\\u00e9\u00bd";

    private final Random random;

    Damage(Random random) {
        this.random = random;
    }

    /** One damage or more, one after the other; one is the likeliest. */
    String of(String text) {
        String damaged = once(text);
        while (random.nextInt(3) == 0) {
            damaged = once(damaged);
        }
        return damaged;
    }

    private String once(String text) {
        return switch (random.nextInt(6)) {
            case 0 -> lines(text, lines -> lines.remove(random.nextInt(lines.size())));
            case 1 ->
                    lines(
                            text,
                            lines ->
                                    lines.add(
                                            random.nextInt(lines.size()),
                                            lines.get(random.nextInt(lines.size()))));
            case 2 ->
                    lines(
                            text,
                            lines ->
                                    Collections.swap(
                                            lines,
                                            random.nextInt(lines.size()),
                                            random.nextInt(lines.size())));
            case 3 -> letter(text);
            default -> figure(text);
        };
    }

    private interface Change {
        void to(List<String> lines);
    }

    private static String lines(String text, Change change) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        if (lines.size() > 1) {
            change.to(lines);
        }
        return String.join("\n", lines);
    }

    private String letter(String text) {
        if (text.isEmpty()) {
            return text;
        }
        int at = random.nextInt(text.length());
        char other = LETTERS.charAt(random.nextInt(LETTERS.length()));
        int end = random.nextBoolean() ? at + 1 : at;
        return text.substring(0, at) + other + text.substring(end);
    }

    private String figure(String text) {
        List<int[]> found = new ArrayList<>();
        Matcher matcher = NUMBER.matcher(text);
        while (matcher.find()) {
            found.add(new int[] {matcher.start(), matcher.end()});
        }
        if (found.isEmpty()) {
            return text;
        }
        int[] one = found.get(random.nextInt(found.size()));
        String other = FIGURES.get(random.nextInt(FIGURES.size()));
        return text.substring(0, one[0]) + other + text.substring(one[1]);
    }
}
