package org.fandown.trace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import org.fandown.document.DocumentException;
import org.fandown.document.Position;
import org.fandown.evidence.Instruments;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.jspecify.annotations.Nullable;

/**
 * Reads a log of either form, told apart by the first line that is of one, and keeps what it shows.
 *
 * <p>Give it the bytes in pieces of any size, then {@link #finish} it. What it keeps does not grow
 * with the length of the log, but for what was recognised, and of that at most {@value #MOST}.
 */
public final class TraceLog implements LogReader {
    /** More than this that was recognised is not kept. */
    private static final int MOST = 2_000;

    private static final int HEAD = 1 << 16;
    private static final int MOST_NAMES = 6;

    /** Moments of what is recognised are at least this far apart, s. */
    private static final double CLOCK = Moments.LENGTH;

    private final String name;
    private final CandumpReader.Times times;
    private final NetworkTrace.SampleSink also;
    private final Notes notes = new Notes();
    private final List<Recognised> recognised = new ArrayList<>();
    private final TraceWatch watch = new TraceWatch(this::found);
    private final long[] counts = new long[Channel.values().length];
    private final byte[] head = new byte[HEAD];
    private @Nullable LossAdvisor advisor;
    private @Nullable VinReader vin;
    private final Marker marker = new Marker(watch, counts, notes);
    private DoubleSupplier offset = () -> Double.NaN;
    private int headLength;
    private int lineStart;
    private boolean anyLine;
    private @Nullable LogReader reader;
    private @Nullable CsvReader table;
    private double seconds;
    private long leftOut;
    private Consumer<Recognised> listener = what -> {};
    private long frames;

    /**
     * Makes a reader of a log.
     *
     * @param name the name of the log, for refusals
     * @param times what the times of a candump log are
     * @param also takes every sample too, for a chart
     */
    public TraceLog(String name, CandumpReader.Times times, NetworkTrace.SampleSink also) {
        this.name = name;
        this.times = times;
        this.also = also;
    }

    /** Tells a listener, too, each thing recognised from now on, as soon as it is certain. */
    public void onRecognised(Consumer<Recognised> told) {
        listener = listener.andThen(told);
    }

    /** Has air losses watched by an advisor. */
    public void advise(LossAdvisor lossAdvisor) {
        advisor = lossAdvisor;
    }

    /** Adds what a person marked; to be called before the log is read. */
    public void mark(OperatorMarks marks) {
        marker.add(marks);
    }

    /**
     * Takes what a person marks now, at the time of the last sample.
     *
     * @return why the mark is left out, empty if it is not
     */
    public Optional<String> mark(MarkWord word) {
        return marker.mark(word, seconds);
    }

    /** Returns the marks that were taken, in the time of the trace. */
    public List<OperatorMark> marks() {
        return marker.taken();
    }

    /** Has the vehicle identification number read, which is passed over otherwise. */
    public void readVin() {
        vin = new VinReader();
    }

    /** Returns the vehicle identification numbers that came, if they were asked for. */
    public List<VehicleNumber> vins() {
        return vin == null ? List.of() : vin.found();
    }

    /**
     * {@inheritDoc}
     *
     * @throws DocumentException if it is a table with a head that cannot be used
     */
    @Override
    public void accept(byte[] buffer, int from, int to) {
        int start = from;
        while (reader == null && start < to) {
            head[headLength] = buffer[start];
            headLength++;
            if (isEnd(buffer[start])) {
                look();
            }
            if (headLength == HEAD && reader == null) {
                open(false);
            }
            start++;
        }
        if (reader != null && start < to) {
            reader.accept(buffer, start, to);
        }
    }

    /**
     * {@inheritDoc}
     *
     * @throws DocumentException if it is a table with a head that cannot be used
     */
    @Override
    public void finish() {
        if (reader == null) {
            look();
        }
        LogReader decided = reader == null ? open(false) : reader;
        decided.finish();
        watch.finish();
        marker.finish();
        List<String> ignored = table == null ? List.of() : table.ignored();
        if (!ignored.isEmpty()) {
            int more = ignored.size() - MOST_NAMES;
            String names =
                    String.join(", ", ignored.subList(0, Math.min(MOST_NAMES, ignored.size())))
                            + (more > 0 ? " and " + more + " more" : "");
            notes.add(new TraceNote("columns-ignored", 0, 1, "Columns not read: " + names + "."));
        }
        if (vin != null && vin.found().isEmpty()) {
            String text = "No vehicle identification number came.";
            notes.add(new TraceNote("no-vin", 0, 1, text));
        }
        if (leftOut > 0) {
            String text = "Only the first " + MOST + " things recognised are kept.";
            notes.add(new TraceNote("too-much", 0, 1, text));
        }
    }

    private static boolean isEnd(byte b) {
        return b == '\n' || b == '\r';
    }

    /** Decides by the line that ends here, if it is of either form. */
    private void look() {
        String text = CsvReader.text(head, lineStart, headLength).strip();
        if (text.isEmpty()) {
            lineStart = headLength;
            return;
        }
        int end = isEnd(head[headLength - 1]) ? headLength - 1 : headLength;
        LineKind kind = new CandumpLine(new CanFrame()).read(head, lineStart, end);
        if (anyLine ? CsvHead.isWhole(text) : CsvHead.isHead(text)) {
            open(true);
        } else if (!kind.isProblem()) {
            open(false);
        }
        anyLine = true;
        lineStart = headLength;
    }

    private LogReader open(boolean asTable) {
        if (asTable) {
            table = new CsvReader(name, this::sample, notes::add);
            table.marks(marker::mark);
            offset = table::offset;
            reader = table;
        } else {
            NetworkTrace network = new NetworkTrace(this::sample, notes::add);
            offset = network::offset;
            SignalDecoder decoder = new SignalDecoder(network);
            reader = new CandumpReader(new Frames(decoder), times);
        }
        reader.accept(head, 0, headLength);
        return reader;
    }

    /** Passes messages on, and notes the lines that are none. */
    private final class Frames implements FrameListener {
        private final FrameListener decoder;

        Frames(FrameListener decoder) {
            this.decoder = decoder;
        }

        @Override
        public void frame(CanFrame frame) {
            frames++;
            decoder.frame(frame);
            if (vin != null) {
                vin.frame(frame);
            }
        }

        @Override
        public void skipped(long line, LineKind kind) {
            notes.add(line, kind);
        }

        @Override
        public void dropped(long line, long lost) {
            notes.add(new Remark(Remark.Kind.MESSAGES_LOST, line, Double.NaN, lost));
        }
    }

    private void sample(Channel channel, double time, double value) {
        counts[channel.index()]++;
        seconds = time;
        if (marker.waits()) {
            marker.upTo(time, offset.getAsDouble());
        }
        watch.sample(channel, time, value);
        if (advisor != null) {
            advisor.look(watch);
        }
        also.sample(channel, time, value);
    }

    private void found(Recognised what) {
        if (recognised.size() < MOST) {
            recognised.add(what);
            listener.accept(what);
        } else {
            leftOut++;
        }
        if (advisor != null) {
            advisor.closed(what);
        }
    }

    /** Returns whether it is a table, and not a candump log. */
    public boolean isTable() {
        return table != null;
    }

    /** Returns whether the log says of itself that it comes from a simulation. */
    public boolean isSimulated() {
        return table != null && table.isSimulated();
    }

    @Override
    public long lines() {
        return reader == null ? 0 : reader.lines();
    }

    /** Returns how long the trace is, s from the first sample to the last. */
    public double seconds() {
        return seconds;
    }

    /** Returns how many samples of each channel there were, channels without any left out. */
    public Map<Channel, Long> channels() {
        Map<Channel, Long> channels = new EnumMap<>(Channel.class);
        for (Channel channel : Channel.values()) {
            if (counts[channel.index()] > 0) {
                channels.put(channel, counts[channel.index()]);
            }
        }
        return channels;
    }

    /** Returns what a person should know, each kind once. */
    public List<TraceNote> notes() {
        return notes.list();
    }

    /** Returns what was recognised, in the order in which it became certain. */
    public List<Recognised> recognised() {
        return List.copyOf(recognised);
    }

    /** Returns how finely the trace tells pressure and time; the rest as is usual. */
    public Instruments instruments() {
        Map<Dimension, Quantity> steps = new EnumMap<>(Dimension.class);
        steps.putAll(Instruments.USUAL.steps());
        if (watch.step() > 0) {
            steps.put(Dimension.GAUGE_PRESSURE, Quantity.of(watch.step(), Unit.PSI));
        }
        long most = Math.max(counts[Channel.PRIMARY.index()], counts[Channel.SECONDARY.index()]);
        double between = most > 1 ? seconds / (most - 1) : CLOCK;
        steps.put(Dimension.TIME, Quantity.of(Math.max(CLOCK, between), Unit.SECOND));
        return new Instruments(steps);
    }

    /** Returns whether any pressure of a brake circuit has come. */
    public boolean hasPressure() {
        return counts[Channel.PRIMARY.index()] > 0 || counts[Channel.SECONDARY.index()] > 0;
    }

    /**
     * Refuses a log without any pressure of a brake circuit.
     *
     * @throws DocumentException if there is none
     */
    public void requirePressure() {
        if (!hasPressure()) {
            throw new DocumentException(
                    Position.inFile(name), "", "", problem(), allowed(), nextStep());
        }
    }

    private String problem() {
        if (lines() == 0) {
            return "the log is empty";
        }
        if (table == null && frames == 0) {
            return isBinary()
                    ? "this is not text: it begins with bytes that no text has"
                    : "no line can be used of the log's " + lines() + firstNote();
        }
        return "the log has "
                + lines()
                + (table == null ? " lines, " + notes.problems() + " of them damaged," : " lines")
                + " and no pressure of a brake circuit"
                + (table == null ? "" : firstNote());
    }

    private boolean isBinary() {
        for (int i = 0; i < headLength; i++) {
            if (head[i] == 0) {
                return true;
            }
        }
        return false;
    }

    private String firstNote() {
        return notes().stream()
                .filter(note -> note.line() > 0)
                .min(Comparator.comparingLong(TraceNote::line))
                .map(note -> "; " + decapital(note.text()))
                .orElse("");
    }

    private static String decapital(String text) {
        return text.startsWith("Line") ? "l" + text.substring(1) : text;
    }

    private static String allowed() {
        return "a candump log of an SAE J1939 network, or CSV with a head such as '"
                + CsvHead.EXAMPLE
                + "'";
    }

    private String nextStep() {
        if (table == null && frames == 0 && isBinary()) {
            return "unpack it, or save it as text in UTF-8";
        }
        return table == null
                ? "record the network that carries the groups 65198 (AIR1) or 65274, or name"
                        + " the right file"
                : "fill the columns of the circuits, or name the right file";
    }
}
