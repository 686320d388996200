package org.fandown.trace;

/**
 * Reads logs of candump, in its compact and its console form, mixed as they come.
 *
 * <p>Give it the bytes of a log in pieces of any size with {@link #accept}, and call {@link
 * #finish} at the end; what it tells the listener does not depend on how the log is cut. Never
 * throws whatever the bytes are.
 *
 * <p>A time in brackets is taken as written: seconds since some start, seconds of the day the log
 * began, or a date and time of day, which count as seconds since 1970 of the clock they were
 * written by. Where the log has the time since the line before, say {@link Times#SINCE_LAST}.
 *
 * <p><b>Source.</b> The forms are those that candump of can-utils prints (commit 95aae6b of its
 * public repository).
 */
public final class CandumpReader implements LogReader {
    /** What the times of a log are. */
    public enum Times {
        /** Times of one clock. */
        AS_WRITTEN,
        /** The time that passed since the line before. */
        SINCE_LAST
    }

    /** Longer than a CAN XL message in its longest form. */
    private static final int LONGEST = 8000;

    /** No two lines of a log are further apart, ns. */
    private static final long DAY = 86_400_000_000_000L;

    private final FrameListener listener;
    private final Times times;
    private final CanFrame frame = new CanFrame();
    private final CandumpLine parser = new CandumpLine(frame);
    private final LineCutter cutter = new LineCutter(LONGEST, new Lines());
    private long clock;

    /** Makes a reader of a log whose times are as written. */
    public CandumpReader(FrameListener listener) {
        this(listener, Times.AS_WRITTEN);
    }

    /**
     * Makes a reader.
     *
     * @param listener who is told what is found
     * @param times what the times of the log are
     */
    public CandumpReader(FrameListener listener, Times times) {
        this.listener = listener;
        this.times = times;
    }

    @Override
    public void accept(byte[] buffer, int from, int to) {
        cutter.accept(buffer, from, to);
    }

    @Override
    public void finish() {
        cutter.finish();
    }

    @Override
    public long lines() {
        return cutter.lines();
    }

    /** Reads each line. */
    private final class Lines implements LineCutter.Taker {
        @Override
        public void line(byte[] buffer, int from, int to) {
            read(buffer, from, to);
        }

        @Override
        public void tooLong() {
            listener.skipped(cutter.lines(), LineKind.TOO_LONG);
        }
    }

    private void read(byte[] buffer, int from, int to) {
        LineKind kind = parser.read(buffer, from, to);
        if (times == Times.SINCE_LAST && frame.timed) {
            if (frame.nanos > DAY || clock > Long.MAX_VALUE - 2 * DAY) {
                listener.skipped(cutter.lines(), LineKind.NOT_SINCE_LAST);
                return;
            }
            clock += frame.nanos;
            frame.nanos = clock;
        }
        if (kind == LineKind.FRAME) {
            frame.line = cutter.lines();
            listener.frame(frame);
        } else if (kind == LineKind.DROP_NOTE) {
            listener.dropped(cutter.lines(), parser.dropped());
        } else if (kind != LineKind.BLANK) {
            listener.skipped(cutter.lines(), kind);
        }
    }
}
