package org.fandown.trace;

import java.util.ArrayList;
import java.util.List;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Node;
import org.fandown.document.Values;
import org.fandown.trace.OperatorMark.Clock;
import org.fandown.units.Decimals;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.QuantityFormatException;
import org.fandown.units.Unit;
import org.jspecify.annotations.Nullable;

/** Reads a file of marks, strictly. */
public final class MarksReader {
    private static final double MOST_REACTION = 10;
    private static final int MOST = 10_000;
    private static final int MINUTE = 60;
    private static final String TIMES =
            "a time since the first sample as results show it, such as 11:54.0 or 714 s; a number"
                    + " as the log has it, such as 1543532003.57; or a date and time of day, such as"
                    + " 2026-11-25T06:40:00-05:00";

    private MarksReader() {}

    /**
     * Reads marks.
     *
     * @throws DocumentException if the document is no such file
     */
    public static OperatorMarks read(Node document) {
        Fields fields = Fields.of(document);
        double reaction =
                fields.optionalQuantity("reaction", Dimension.TIME)
                        .map(q -> q.valueIn(Unit.SECOND))
                        .orElse(OperatorMarks.USUAL_REACTION);
        if (!(reaction >= 0 && reaction <= MOST_REACTION)) {
            throw fields.refuse(
                    "reaction", "this time is out of range", "0 s to 10 s", "correct the time");
        }
        List<OperatorMark> marks = new ArrayList<>();
        for (Node item : fields.list("marks")) {
            marks.add(mark(Fields.of(item)));
        }
        fields.end();
        if (marks.size() > MOST) {
            throw fields.refuse(
                    "marks", "these are too many", "at most 10000 marks", "split the file");
        }
        return new OperatorMarks(marks, reaction);
    }

    private static OperatorMark mark(Fields fields) {
        Node at = fields.node("at");
        Node mark = fields.node("mark");
        MarkWord word =
                MarkWord.find(Values.text(mark))
                        .orElseGet(() -> Values.choice(mark, MarkWord.values()));
        OperatorMark read = timed(word, Values.text(at).strip());
        if (read == null) {
            throw fields.refuse("at", "this is not a time", TIMES, "correct the time");
        }
        fields.end();
        return read;
    }

    private static @Nullable OperatorMark timed(MarkWord word, String text) {
        CsvCell cell = new CsvCell();
        byte[] bytes = new byte[text.length()];
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = (byte) (text.charAt(i) < 128 ? text.charAt(i) : '?');
        }
        cell.set(bytes, 0, bytes.length);
        double moment = cell.moment();
        if (!Double.isNaN(moment)) {
            return new OperatorMark(word, Clock.LOG, moment);
        }
        if (Decimals.isDecimal(text)) {
            return new OperatorMark(word, Clock.LOG, Decimals.parse(text));
        }
        int colon = text.indexOf(':');
        if (colon > 0) {
            String minutes = text.substring(0, colon);
            String seconds = text.substring(colon + 1);
            boolean clock = Decimals.isDecimal(minutes) && Decimals.isDecimal(seconds);
            return clock
                    ? new OperatorMark(
                            word,
                            Clock.TRACE,
                            MINUTE * Decimals.parse(minutes) + Decimals.parse(seconds))
                    : null;
        }
        try {
            double seconds = Quantity.parse(text, Dimension.TIME).valueIn(Unit.SECOND);
            return new OperatorMark(word, Clock.TRACE, seconds);
        } catch (QuantityFormatException e) {
            return null;
        }
    }
}
