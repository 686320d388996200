package org.fandown.reference.rulebook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.fandown.judgement.Status;

/**
 * Reads a table of boundary triples: columns parted by semicolons, the names of the columns in the
 * first line, lines that begin with {@code #} left out.
 */
final class TripleTable {
    private static final String FOLDER = "/reference/rulebook/";
    private static final String COLUMNS =
            "rule;judged;on;vehicle;beside;below;at;above;expected;where";
    private static final int COUNT = 10;

    private TripleTable() {}

    static List<Triple> read(String name) {
        List<String> lines = resource(name).lines().filter(l -> !l.startsWith("#")).toList();
        if (!lines.get(0).equals(COLUMNS)) {
            throw new IllegalArgumentException(name + " must begin with " + COLUMNS);
        }
        List<Triple> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            if (!line.isBlank()) {
                rows.add(row(line));
            }
        }
        return List.copyOf(rows);
    }

    private static Triple row(String line) {
        List<String> cells = List.of(line.split(";", -1)).stream().map(String::strip).toList();
        if (cells.size() != COUNT || cells.get(COUNT - 1).isEmpty()) {
            throw new IllegalArgumentException("Ten filled columns are needed in: " + line);
        }
        return new Triple(
                cells.get(0),
                isAlone(cells.get(1)),
                LocalDate.parse(cells.get(2)),
                cells.get(3),
                beside(cells.get(4)),
                cells.subList(5, 8),
                statuses(cells.get(8)),
                cells.get(9));
    }

    private static boolean isAlone(String word) {
        return switch (word) {
            case "in-place" -> false;
            case "alone" -> true;
            default -> throw new IllegalArgumentException("in-place or alone, not " + word);
        };
    }

    private static List<Status> statuses(String cell) {
        List<Status> statuses = new ArrayList<>();
        for (String word : cell.split(" +", -1)) {
            statuses.add(Status.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_')));
        }
        if (statuses.size() != 3) {
            throw new IllegalArgumentException("Three statuses are needed, not " + cell);
        }
        return statuses;
    }

    /**
     * Pairs such as {@code chamber: clamp 30, limit: 2 in}; a comma within braces does not part.
     */
    private static Map<String, String> beside(String cell) {
        Map<String, String> pairs = new LinkedHashMap<>();
        int depth = 0;
        int start = 0;
        String text = cell + ",";
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            depth += c == '{' || c == '[' ? 1 : c == '}' || c == ']' ? -1 : 0;
            if (c == ',' && depth == 0) {
                pair(text.substring(start, i).strip(), pairs);
                start = i + 1;
            }
        }
        return pairs;
    }

    private static void pair(String text, Map<String, String> pairs) {
        if (!text.isEmpty()) {
            int colon = text.indexOf(':');
            pairs.put(text.substring(0, colon).strip(), text.substring(colon + 1).strip());
        }
    }

    static String resource(String name) {
        try (InputStream in = TripleTable.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalArgumentException("There is no " + FOLDER + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
