package org.fandown.record;

import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Node;

/**
 * The next driver's word: the report was reviewed and, where it lists defects, what was certified
 * about them.
 *
 * @param report the id of the report
 * @param by who reviewed it
 */
public record Review(String report, String by) {
    /** The kind of record, and the key of its content. */
    public static final String KIND = "review";

    /**
     * Reads one.
     *
     * @throws DocumentException if it is none
     */
    public static Review read(Node node) {
        Fields fields = Fields.of(node);
        Review review = new Review(fields.text("of"), fields.text("by"));
        fields.end();
        return review;
    }
}
