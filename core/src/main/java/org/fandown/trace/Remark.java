package org.fandown.trace;

import org.fandown.units.Decimals;

/**
 * Something about a trace that a person should know before trusting it.
 *
 * @param kind what it is
 * @param line the line of the log, 0 where none is meant
 * @param seconds the time in the trace, NaN where none is meant
 * @param size how much: seconds of a gap or jump, psi of a difference, messages lost, rows or cells
 *     left out
 */
public record Remark(Kind kind, long line, double seconds, double size) {
    /** What can be remarked. */
    public enum Kind {
        /** No sample came for a while. */
        GAP("nothing was recorded for %s s"),
        /** The clock went back; the trace goes on from where it was. */
        CLOCK_WENT_BACK("the clock goes back by %s s"),
        /** Samples without a time. */
        NO_TIME("a message without a time; it is left out"),
        /** The recorder lost messages. */
        MESSAGES_LOST("the recorder lost %s messages"),
        /** A sensor says that it is at fault. */
        SENSOR_ERROR("a sensor reports an error instead of a value"),
        /** A pressure stands at the most its message can say. */
        SATURATED("a pressure stands at the most its message can say, %s psi"),
        /** What should be one pressure is two: the circuits may be swapped in one message. */
        CIRCUITS_DISAGREE("two messages or columns differ by %s psi on one circuit"),
        /** The circuits of one message or column look like those of the other exchanged. */
        CIRCUITS_SWAPPED("two messages or columns name the circuits the other way round"),
        /** Lines that stand before the head of a table. */
        LINES_BEFORE_HEAD("lines left out before the head of the table: %s, this is the first"),
        /** The table ends in the middle of a row. */
        CUT_SHORT("the table ends within this row, which is left out"),
        /** Pressures too low for a vehicle on which something is tested. */
        LOW("no pressure of a circuit is above %s psi; check the unit in the head"),
        /** Rows of a table without a time. */
        ROWS_LEFT_OUT("rows left out because their time cannot be read: %s, this is the first"),
        /** Cells of a table that hold no number. */
        CELLS_LEFT_OUT("cells left out because they hold no value: %s, this is the first"),
        /** Pressures that no gauge shows, as when the unit in the head is wrong. */
        IMPOSSIBLE(
                "pressures left out because they are below -15 psi or above 300 psi: %s, this is the"
                        + " first; check the unit in the head");

        private final String text;

        Kind(String text) {
            this.text = text;
        }

        /** Returns the words, with the size put in. */
        String words(String size) {
            return text.replace("%s", size);
        }
    }

    /** Returns it as a sentence. */
    public String sentence() {
        String where = line > 0 ? "Line " + line + ": " : "";
        String when =
                Double.isNaN(seconds)
                        ? ""
                        : " (at " + Decimals.formatShort(seconds, 1) + " s of the trace)";
        return where + kind.words(Decimals.formatShort(size, 1)) + when + ".";
    }
}
