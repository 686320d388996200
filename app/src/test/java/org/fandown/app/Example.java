package org.fandown.app;

import java.util.ArrayList;
import java.util.List;

/**
 * What a person who worked an example inspection through by hand expects of it.
 *
 * @param file the name of the file without its ending
 * @param verdict the verdict as the JSON names it
 * @param exit the exit code
 * @param open every finding that counts for the verdict and is not met: rule, wheel if any, status
 * @param defects every defect: component, wheel if any, severity, rule if any
 * @param met some findings that are met, with what was measured: rule, wheel if any, value and
 *     unit, the uncertainty as plain arithmetic
 * @param words words that the text has to hold
 */
record Example(
        String file,
        String verdict,
        int exit,
        List<String> open,
        List<String> defects,
        List<Measured> met,
        List<String> words) {

    /**
     * A measured value.
     *
     * @param finding rule, and wheel if any
     * @param value the value
     * @param unit its unit
     * @param uncertainty half the width of its interval
     */
    record Measured(String finding, double value, String unit, double uncertainty) {}

    static Example fit(String file) {
        return new Example(file, "fit-to-move", 0, List.of(), List.of(), List.of(), List.of());
    }

    static Example notFit(String file) {
        return new Example(file, "not-fit-to-move", 1, List.of(), List.of(), List.of(), List.of());
    }

    static Example notProven(String file) {
        return new Example(file, "not-proven", 3, List.of(), List.of(), List.of(), List.of());
    }

    Example open(String... findings) {
        return new Example(file, verdict, exit, List.of(findings), defects, met, words);
    }

    Example defects(String... texts) {
        return new Example(file, verdict, exit, open, List.of(texts), met, words);
    }

    Example measured(String finding, double value, String unit, double uncertainty) {
        List<Measured> more = new ArrayList<>(met);
        more.add(new Measured(finding, value, unit, uncertainty));
        return new Example(file, verdict, exit, open, defects, more, words);
    }

    Example words(String... texts) {
        return new Example(file, verdict, exit, open, defects, met, List.of(texts));
    }

    @Override
    public String toString() {
        return file + ": " + verdict;
    }
}
