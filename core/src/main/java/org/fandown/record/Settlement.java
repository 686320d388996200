package org.fandown.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Node;

/**
 * What was done about defects of a report, as somebody certifies it.
 *
 * @param report the id of the report
 * @param items one for each defect
 * @param by who certifies it
 * @param firm for whom, empty if not said
 */
public record Settlement(String report, List<Item> items, String by, Optional<String> firm) {
    /** The kind of record, and the key of its content. */
    public static final String KIND = "repair";

    private static final int MOST_DEFECTS = 500;

    /** What became of a defect. */
    public enum Outcome {
        /** It was put right. */
        REPAIRED("put right"),
        /** It needs no repair for safe driving. */
        NOT_NEEDED("certified as needing no repair for safe driving");

        private final String title;

        Outcome(String title) {
            this.title = title;
        }

        /** How it is said. */
        public String title() {
            return title;
        }
    }

    /**
     * What became of one defect.
     *
     * @param number its place among the defects of the report, from 1
     * @param outcome what became of it
     * @param work what was done, or why nothing is needed
     */
    public record Item(int number, Outcome outcome, String work) {}

    /** Copies the list. */
    public Settlement {
        items = List.copyOf(items);
    }

    /**
     * Reads one.
     *
     * @throws DocumentException if it is none, or names a defect twice
     */
    public static Settlement read(Node node) {
        Fields fields = Fields.of(node);
        List<Item> items = new ArrayList<>();
        List<Integer> numbers = new ArrayList<>();
        for (Node each : fields.list("settled")) {
            Fields item = Fields.of(each);
            int number = item.integer("defect", 1, MOST_DEFECTS);
            if (numbers.contains(number)) {
                throw item.refuse(
                        "defect", "this is here twice", "each defect once", "remove one of them");
            }
            numbers.add(number);
            items.add(
                    new Item(number, item.choice("outcome", Outcome.values()), item.text("work")));
            item.end();
        }
        if (items.isEmpty()) {
            throw fields.refuse(
                    "settled",
                    "no defect is named",
                    "one or more of defect, outcome and work",
                    "name what was settled");
        }
        Settlement settlement =
                new Settlement(
                        fields.text("of"), items, fields.text("by"), fields.optionalText("firm"));
        fields.end();
        return settlement;
    }
}
