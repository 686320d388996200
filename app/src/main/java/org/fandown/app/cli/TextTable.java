package org.fandown.app.cli;

import java.util.ArrayList;
import java.util.List;

/** Lines of cells, aligned in columns; the last column is not padded. */
final class TextTable {
    private final List<List<String>> rows = new ArrayList<>();

    void add(String... cells) {
        rows.add(List.of(cells));
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    List<String> lines() {
        List<Integer> widths = new ArrayList<>();
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                if (i == widths.size()) {
                    widths.add(0);
                }
                widths.set(i, Math.max(widths.get(i), row.get(i).length()));
            }
        }
        return rows.stream().map(row -> line(row, widths)).toList();
    }

    private static String line(List<String> row, List<Integer> widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < row.size(); i++) {
            line.append(i == 0 ? "" : "  ").append(row.get(i));
            if (i < row.size() - 1) {
                line.append(" ".repeat(widths.get(i) - row.get(i).length()));
            }
        }
        return line.toString().stripTrailing();
    }
}
