package org.fandown.trace;

import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.fandown.document.DocumentException;
import org.fandown.document.Position;
import org.jspecify.annotations.Nullable;

/**
 * Reads a trace from a table: CSV whose head names each signal with its unit, as {@code fandown
 * drive --out} writes it.
 *
 * <p>Cells stand apart by commas, or by semicolons, and then a comma may be the decimal sign. Times
 * are seconds, or dates and times of day as ISO 8601 has them. Pressures are gauge pressures in
 * psi, kPa or bar. Cells that hold nothing are passed over; those that hold no value are left out,
 * counted and remarked at the end. Memory does not grow with the length of the table.
 */
public final class CsvReader implements LogReader {
    private static final int LONGEST = 1 << 16;

    /** No gauge shows less or more, psi. */
    private static final double LEAST = -15;

    private static final double MOST = 300;

    /** A trace that lasts for this, s, and never comes so high, psi, may be in another unit. */
    private static final double A_WHILE = 60;

    private static final double LEAST_DRIVEN = 25;
    private static final double MOST_SECONDS = 1e10;
    private static final byte QUOTE = '"';
    private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private final String file;
    private final NetworkTrace.SampleSink sink;
    private final Consumer<Remark> remarks;
    private final TraceClock clock;
    private final CircuitPair pair;
    private final CsvCell cell = new CsvCell();
    private final LineCutter cutter = new LineCutter(LONGEST, new Lines());
    private final Tally rows = new Tally();
    private final Tally cells = new Tally();
    private final Tally impossible = new Tally();
    private final Tally before = new Tally();
    private final Tally cut = new Tally();
    private String firstLine = "";
    private boolean ending;
    private double highest = Double.NEGATIVE_INFINITY;
    private boolean simulated;
    private @Nullable CsvHead head;
    private double[] row = new double[0];
    private MarkSink marks = (word, seconds) -> {};
    private String mark = "";
    private @Nullable MarkWord markBefore;

    /** How often something was met, and where first. */
    private static final class Tally {
        private long first;
        private long times;

        void add(long line) {
            first = times == 0 ? line : first;
            times++;
        }
    }

    /**
     * Makes a reader.
     *
     * @param file the name of the table, for refusals
     * @param sink where the samples go
     * @param remarks is told what a person should know
     */
    public CsvReader(String file, NetworkTrace.SampleSink sink, Consumer<Remark> remarks) {
        this.file = file;
        this.sink = sink;
        this.remarks = remarks;
        clock = new TraceClock(remarks);
        pair = new CircuitPair(remarks);
    }

    /** Returns whether any row so far says that it comes from a simulation. */
    public boolean isSimulated() {
        return simulated;
    }

    /** Takes the marks of a person. */
    @FunctionalInterface
    interface MarkSink {
        void mark(MarkWord word, double seconds);
    }

    /** Passes on the marks that a column holds; they are left out otherwise. */
    void marks(MarkSink listener) {
        marks = listener;
    }

    /** What is added to the time of the table for the time of the trace, s; NaN before any. */
    double offset() {
        return clock.offset();
    }

    /** Returns the heads of the columns that are not read. */
    public List<String> ignored() {
        return head == null ? List.of() : List.copyOf(head.ignored());
    }

    /**
     * {@inheritDoc}
     *
     * @throws DocumentException if the head cannot be used
     */
    @Override
    public void accept(byte[] buffer, int from, int to) {
        cutter.accept(buffer, from, to);
    }

    /**
     * {@inheritDoc}
     *
     * @throws DocumentException if the head cannot be used
     */
    @Override
    public void finish() {
        ending = true;
        cutter.finish();
        if (head == null && before.times > 0) {
            head = CsvHead.of(file, before.first, firstLine);
        }
        remark(Remark.Kind.LINES_BEFORE_HEAD, before);
        remark(Remark.Kind.ROWS_LEFT_OUT, rows);
        remark(Remark.Kind.CELLS_LEFT_OUT, cells);
        remark(Remark.Kind.IMPOSSIBLE, impossible);
        remark(Remark.Kind.CUT_SHORT, cut);
        if (clock.last() >= A_WHILE && highest >= LEAST && highest < LEAST_DRIVEN) {
            remarks.accept(new Remark(Remark.Kind.LOW, 0, Double.NaN, highest));
        }
    }

    private void remark(Remark.Kind kind, Tally tally) {
        if (tally.times > 0) {
            remarks.accept(new Remark(kind, tally.first, Double.NaN, tally.times));
        }
    }

    @Override
    public long lines() {
        return cutter.lines();
    }

    /** Reads the head, then each row. */
    private final class Lines implements LineCutter.Taker {
        @Override
        public void line(byte[] buffer, int from, int to) {
            cell.set(buffer, from, to);
            if (cell.isEmpty()) {
                return;
            }
            if (head == null) {
                head(text(buffer, from, to));
            } else {
                read(head, buffer, from, to);
            }
        }

        @Override
        public void tooLong() {
            rows.add(cutter.lines());
        }
    }

    /** The first line that holds something is the head; what has one elsewhere has it whole. */
    private void head(String text) {
        if (before.times == 0 ? CsvHead.isHead(text) : CsvHead.isWhole(text)) {
            head = CsvHead.of(file, cutter.lines(), text);
            row = new double[head.size()];
            return;
        }
        firstLine = before.times == 0 ? text : firstLine;
        before.add(cutter.lines());
    }

    /** A first line as text; what is not ASCII becomes a question mark, a byte order mark goes. */
    static String text(byte[] buffer, int from, int to) {
        int start = from;
        boolean marked =
                to - from >= MARK.length
                        && Arrays.equals(buffer, from, from + MARK.length, MARK, 0, MARK.length);
        if (marked) {
            start += MARK.length;
        }
        StringBuilder text = new StringBuilder();
        for (int i = start; i < to; i++) {
            if (buffer[i] >= 0) {
                text.append(buffer[i] < ' ' ? ' ' : (char) buffer[i]);
            } else if ((buffer[i] & 0xC0) != 0x80) {
                text.append('?');
            }
        }
        return text.toString();
    }

    private void read(CsvHead columns, byte[] buffer, int from, int to) {
        Arrays.fill(row, Double.NaN);
        mark = "";
        int index = 0;
        int start = from;
        boolean quoted = false;
        for (int i = from; i <= to && index < row.length; i++) {
            if (i < to && buffer[i] == QUOTE) {
                quoted = !quoted;
            } else if (i == to || (buffer[i] == columns.separator() && !quoted)) {
                cell.set(buffer, start, i);
                take(columns, index);
                index++;
                start = i + 1;
            }
        }
        double seconds = row[columns.time()];
        if (ending && index < row.length) {
            cut.add(cutter.lines());
        } else if (Double.isNaN(seconds)) {
            rows.add(cutter.lines());
        } else {
            pass(columns, clock.time(seconds, cutter.lines()));
        }
    }

    private void take(CsvHead columns, int index) {
        boolean comma = columns.separator() == ';';
        CsvHead.Column column = columns.column(index);
        CsvHead.Column second = columns.second(index);
        if (index == columns.time()) {
            double seconds = cell.number(comma);
            double time = Double.isNaN(seconds) ? cell.moment() : seconds;
            row[index] = Math.abs(time) <= MOST_SECONDS ? time : Double.NaN;
        } else if (index == columns.simulated()) {
            simulated |= cell.truth() > 0;
        } else if (index == columns.mark()) {
            mark = cell.text();
        } else if (column != null && !cell.isEmpty()) {
            double value = column.unit() == null ? cell.truth() : cell.number(comma);
            if (Double.isNaN(value)) {
                cells.add(cutter.lines());
            } else {
                row[index] = possible(column, column.inChannel(value));
            }
        } else if (second != null) {
            row[index] = second.inChannel(cell.number(comma));
        }
    }

    /** A word that stands in several rows one after the other is one mark. */
    private void mark(double time) {
        MarkWord word = mark.isEmpty() ? null : MarkWord.find(mark).orElseThrow(this::unknownMark);
        if (word != null && word != markBefore) {
            marks.mark(word, time);
        }
        markBefore = word;
    }

    private DocumentException unknownMark() {
        int at = (int) Math.min(cutter.lines(), Integer.MAX_VALUE);
        return new DocumentException(
                new Position(file, at, 0),
                "mark",
                mark,
                "this is not one of the words that can be marked",
                MarkWord.allowed(),
                "take one of these words, or rename the column");
    }

    private double possible(CsvHead.Column column, double value) {
        boolean pressure = CsvNames.isPressure(column.name().channel());
        if (!pressure || (value >= LEAST && value <= MOST)) {
            return value;
        }
        impossible.add(cutter.lines());
        return Double.NaN;
    }

    private void pass(CsvHead columns, double time) {
        if (columns.mark() >= 0) {
            mark(time);
        }
        for (int i = 0; i < row.length; i++) {
            CsvHead.Column column = columns.column(i);
            CsvHead.Column second = columns.second(i);
            if (column != null) {
                if (!Double.isNaN(row[i])) {
                    boolean circuit = CsvHead.isCircuit(column.name().channel());
                    highest = circuit ? Math.max(highest, row[i]) : highest;
                    sink.sample(column.name().channel(), time, row[i]);
                }
                pair.first(column.name().channel(), row[i]);
            } else if (second != null) {
                pair.second(second.name().channel(), row[i]);
            }
        }
        pair.compare(time, cutter.lines());
    }
}
