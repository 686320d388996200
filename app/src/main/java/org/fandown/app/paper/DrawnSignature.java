package org.fandown.app.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.document.Fields;
import org.fandown.document.Node;
import org.fandown.document.Values;

/**
 * What a person drew by hand to sign, with what was signed.
 *
 * @param name who
 * @param statement what is stated
 * @param moment when, as the device says
 * @param strokes the lines drawn: each x, y, x, y ... in a field of {@value #WIDTH} by {@value
 *     #HEIGHT}
 */
public record DrawnSignature(
        String name, String statement, String moment, List<List<Double>> strokes) {
    static final int WIDTH = 600;
    static final int HEIGHT = 200;

    /** A hand draws less. */
    private static final int MOST_NUMBERS = 100_000;

    /** Copies the lists. */
    public DrawnSignature {
        strokes = strokes.stream().map(List::copyOf).toList();
    }

    /** Reads that of a record, empty if it has none. */
    static Optional<DrawnSignature> of(Fields record) {
        return record.optionalNode("signature").map(node -> read(Fields.of(node), record));
    }

    private static DrawnSignature read(Fields fields, Fields record) {
        List<List<Double>> strokes = new ArrayList<>();
        int count = 0;
        for (Node stroke : fields.optionalList("strokes")) {
            List<Double> line = new ArrayList<>();
            for (Node number : Values.list(stroke)) {
                line.add(Values.number(number, -WIDTH, 2 * WIDTH));
                count++;
            }
            if (line.size() % 2 != 0 || count > MOST_NUMBERS) {
                throw fields.refuse(
                        "strokes",
                        "this is no drawn signature",
                        "lists of x, y, x, y ..., " + MOST_NUMBERS + " numbers at most",
                        "sign again");
            }
            strokes.add(line);
        }
        return new DrawnSignature(
                fields.optionalText("name").orElse(""),
                fields.optionalText("statement").orElse(""),
                record.optionalMoment("made").map(Words::moment).orElse(""),
                strokes);
    }
}
