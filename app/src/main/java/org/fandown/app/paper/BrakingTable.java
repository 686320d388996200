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
    private static final String NOT_KNOWN = "not known";
    private static final String DRUMS = "Drums ";

    private final Set<String> states = new LinkedHashSet<>();
    private final Map<String, Map<String, Line>> rows = new LinkedHashMap<>();

    BrakingTable(BrakingSummary summary) {
        for (Line line : summary.lines()) {
            int comma = line.what().indexOf(", ");
            String state = comma < 0 ? "" : line.what().substring(0, comma);
            String what = comma < 0 ? line.what() : line.what().substring(comma + 2);
            String shown = state.startsWith(DRUMS) ? state.substring(DRUMS.length()) : state;
            states.add(shown);
            rows.computeIfAbsent(what, w -> new LinkedHashMap<>()).put(shown, line);
        }
    }

    /** The states of the drums: {@code cold}, {@code at 400 F}. */
    List<String> states() {
        return List.copyOf(states);
    }

    /** The things of which something is known in some state. */
    List<String> things() {
        return rows.keySet().stream().filter(thing -> !isUnknown(thing)).toList();
    }

    /** What is estimated of a thing in a state, a dash if nothing. */
    String value(String thing, String state) {
        Line line = row(thing).get(state);
        return line == null ? "\u2013" : line.value();
    }

    private Map<String, Line> row(String thing) {
        return rows.getOrDefault(thing, Map.of());
    }

    private boolean isUnknown(String thing) {
        return row(thing).values().stream().allMatch(line -> line.value().equals(NOT_KNOWN));
    }

    /** The remarks, each once, with the things and states it is about. */
    List<String> remarks() {
        Map<String, Set<String>> about = new LinkedHashMap<>();
        rows.forEach(
                (thing, row) ->
                        byRemark(row)
                                .forEach(
                                        (remark, in) ->
                                                about.computeIfAbsent(
                                                                remark, r -> new LinkedHashSet<>())
                                                        .add(subject(thing, row, in))));
        List<String> remarks = new ArrayList<>();
        about.forEach((remark, subjects) -> remarks.add(sentence(remark, subjects)));
        return remarks;
    }

    private static Map<String, List<String>> byRemark(Map<String, Line> row) {
        Map<String, List<String>> byRemark = new LinkedHashMap<>();
        row.forEach(
                (state, line) -> {
                    if (!line.remark().isEmpty()) {
                        byRemark.computeIfAbsent(line.remark(), r -> new ArrayList<>()).add(state);
                    }
                });
        return byRemark;
    }

    private String subject(String thing, Map<String, Line> row, List<String> in) {
        String lead = isUnknown(thing) ? thing + " not known" : thing;
        boolean everywhere = in.size() == row.size();
        return everywhere ? lead : lead + " (" + String.join(", ", in) + ")";
    }

    private static String sentence(String remark, Set<String> subjects) {
        return Words.capital(String.join(", ", subjects)) + ": " + remark + ".";
    }
}
