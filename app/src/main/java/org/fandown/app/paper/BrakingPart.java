package org.fandown.app.paper;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.fandown.record.BrakingSummary;
import org.fandown.record.BrakingTable;

/** What the strokes mean for braking. */
final class BrakingPart {
    private static final int FIRST_COLUMN = 45;

    private BrakingPart() {}

    static void print(Tag parent, BrakingSummary summary) {
        BrakingTable lines = new BrakingTable(summary);
        parent.add("h2").text("What the strokes mean: an estimate");
        if (!lines.things().isEmpty()) {
            table(parent, lines);
        }
        parent.add("div", "small").text(String.join(" ", lines.remarks()));
    }

    private static void table(Tag parent, BrakingTable lines) {
        int states = lines.states().size();
        List<Integer> widths = new ArrayList<>(List.of(FIRST_COLUMN));
        widths.addAll(Collections.nCopies(states, (100 - FIRST_COLUMN) / states));
        Tag table = parent.add("table", "braking").columns(widths);
        Tag head = table.add("tr");
        head.add("th").text("Drums");
        lines.states().forEach(state -> head.add("th").text(state));
        for (String thing : lines.things()) {
            Tag row = table.add("tr");
            row.add("td").text(Words.capital(thing));
            for (String state : lines.states()) {
                String value = lines.value(thing, state);
                boolean range = value.contains(" to ");
                row.add("td", range ? "strong" : "strong whole").text(value);
            }
        }
    }
}
