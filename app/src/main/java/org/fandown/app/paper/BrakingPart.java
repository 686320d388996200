package org.fandown.app.paper;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fandown.record.BrakingSummary;
import org.fandown.record.BrakingSummary.Line;

/** What the strokes mean for braking. */
final class BrakingPart {
    private static final int FIRST_COLUMN = 37;

    private final BrakingTable lines;

    private BrakingPart(BrakingSummary summary) {
        this.lines = new BrakingTable(summary);
    }

    static void print(Tag parent, BrakingSummary summary) {
        new BrakingPart(summary).print(parent);
    }

    private void print(Tag parent) {
        parent.add("h2").text("What the strokes mean: an estimate, not a finding");
        int states = Math.max(1, lines.states().size());
        List<Integer> widths = new ArrayList<>(List.of(FIRST_COLUMN));
        widths.addAll(Collections.nCopies(states, (100 - FIRST_COLUMN) / states));
        Tag table = parent.add("table", "braking").columns(widths);
        Tag head = table.add("tr");
        head.add("th");
        lines.states().forEach(state -> head.add("th").text(state));
        for (String thing : lines.things()) {
            if (!lines.isUnknown(thing)) {
                row(table.add("tr"), thing);
            }
        }
        unknown(parent);
    }

    private void row(Tag row, String thing) {
        String shared = lines.sharedRemark(thing);
        Tag name = row.add("td").text(Words.capital(thing));
        if (!shared.isEmpty()) {
            name.add("div", "minor").text(shared);
        }
        for (String state : lines.states()) {
            Tag cell = row.add("td");
            Line line = lines.row(thing).get(state);
            if (line == null) {
                cell.text("\u2013");
                continue;
            }
            cell.add("span", "strong").text(line.value());
            if (shared.isEmpty() && !line.remark().isEmpty()) {
                cell.add("div", "minor").text(line.remark());
            }
        }
    }

    /** What could not be estimated at all, with the reason once. */
    private void unknown(Tag parent) {
        Map<String, List<String>> byReason = new LinkedHashMap<>();
        for (String thing : lines.things()) {
            if (lines.isUnknown(thing)) {
                byReason.computeIfAbsent(lines.sharedRemark(thing), r -> new ArrayList<>())
                        .add(thing);
            }
        }
        byReason.forEach(
                (reason, things) ->
                        parent.add("div", "small")
                                .text(
                                        "Not known: "
                                                + String.join(", ", things)
                                                + ": "
                                                + reason
                                                + "."));
    }
}
