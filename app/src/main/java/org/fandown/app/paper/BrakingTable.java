package org.fandown.app.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fandown.record.BrakingSummary;
import org.fandown.record.BrakingSummary.Line;

/**
 * The lines of a braking summary turned into a table: a row for each thing estimated, a column for
 * each state of the drums. A line names its state before the first comma.
 */
final class BrakingTable {
    private final Set<String> states = new LinkedHashSet<>();
    private final Map<String, Map<String, Line>> rows = new LinkedHashMap<>();

    BrakingTable(BrakingSummary summary) {
        for (Line line : summary.lines()) {
            int comma = line.what().indexOf(", ");
            String state = comma < 0 ? "" : line.what().substring(0, comma);
            String what = comma < 0 ? line.what() : line.what().substring(comma + 2);
            states.add(state);
            rows.computeIfAbsent(what, w -> new LinkedHashMap<>()).put(state, line);
        }
    }

    List<String> states() {
        return List.copyOf(states);
    }

    List<String> things() {
        return List.copyOf(rows.keySet());
    }

    /** The cells of a row that have a line, by state. */
    Map<String, Line> row(String thing) {
        return rows.getOrDefault(thing, Map.of());
    }

    /** Whether nothing is known of a thing in any state, for one and the same reason. */
    boolean isUnknown(String thing) {
        return row(thing).values().stream().allMatch(line -> line.value().equals("not known"))
                && !sharedRemark(thing).isEmpty();
    }

    /** The remark all cells of a row have in common, empty if they differ or have none. */
    String sharedRemark(String thing) {
        List<String> remarks =
                new ArrayList<>(
                        new LinkedHashSet<>(
                                row(thing).values().stream().map(Line::remark).toList()));
        return remarks.size() == 1 ? remarks.get(0) : "";
    }
}
