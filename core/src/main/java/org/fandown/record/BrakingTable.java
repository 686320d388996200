package org.fandown.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fandown.record.BrakingSummary.Line;

/**
 * A braking summary as a table: a row for each thing estimated, a column for each state of the
 * drums.
 */
public final class BrakingTable {
    private static final String NOT_KNOWN = "not known";

    private final Set<String> states = new LinkedHashSet<>();
    private final Map<String, Map<String, Line>> rows = new LinkedHashMap<>();

    /** The table of a summary. */
    public BrakingTable(BrakingSummary summary) {
        for (Line line : summary.lines()) {
            states.add(line.drums());
            rows.computeIfAbsent(line.what(), w -> new LinkedHashMap<>()).put(line.drums(), line);
        }
    }

    /** The states of the drums: {@code cold}, {@code at 400 F}. */
    public List<String> states() {
        return List.copyOf(states);
    }

    /** The things of which something is known in some state. */
    public List<String> things() {
        return rows.keySet().stream().filter(thing -> !isUnknown(thing)).toList();
    }

    /** What is estimated of a thing in a state, a dash if nothing. */
    public String value(String thing, String state) {
        Line line = row(thing).get(state);
        return line == null ? "\u2013" : line.value();
    }

    private Map<String, Line> row(String thing) {
        return rows.getOrDefault(thing, new LinkedHashMap<>());
    }

    private boolean isUnknown(String thing) {
        return row(thing).values().stream().allMatch(line -> line.value().equals(NOT_KNOWN));
    }

    /** The remarks on each thing, with the states they are about where they differ. */
    public List<String> remarks() {
        Map<String, List<String>> things = new LinkedHashMap<>();
        for (String thing : rows.keySet()) {
            String remark = remark(row(thing));
            if (!remark.isEmpty()) {
                things.computeIfAbsent(remark, r -> new ArrayList<>())
                        .add(isUnknown(thing) ? thing + " not known" : thing);
            }
        }
        List<String> remarks = new ArrayList<>();
        things.forEach(
                (remark, about) ->
                        remarks.add(capital(String.join(", ", about)) + ": " + remark + "."));
        return remarks;
    }

    private static String remark(Map<String, Line> row) {
        Map<String, List<String>> states = new LinkedHashMap<>();
        row.forEach(
                (state, line) ->
                        states.computeIfAbsent(line.remark(), r -> new ArrayList<>()).add(state));
        if (states.size() == 1) {
            return states.keySet().iterator().next();
        }
        List<String> texts = new ArrayList<>();
        states.forEach(
                (remark, in) -> {
                    if (!remark.isEmpty()) {
                        texts.add(remark + " (" + String.join(", ", in) + ")");
                    }
                });
        return String.join("; ", texts);
    }

    private static String capital(String text) {
        char first = text.charAt(0);
        boolean small = first >= 'a' && first <= 'z';
        return small ? (char) (first - 'a' + 'A') + text.substring(1) : text;
    }
}
