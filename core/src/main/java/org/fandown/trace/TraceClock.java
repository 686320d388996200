package org.fandown.trace;

import java.util.function.Consumer;

/**
 * Makes time go forward from 0 whatever the clock of a recorder does. A jump back is bridged, so
 * that nothing before it is overwritten; gaps and jumps are remarked.
 */
final class TraceClock {
    /** A log that is silent for longer has a gap, s. */
    private static final double GAP = 3;

    /** Messages of several senders may come this much out of order, s. */
    private static final double ORDER = 0.05;

    /** After a jump back the trace goes on this much later, s. */
    private static final double BRIDGE = 10;

    private final Consumer<Remark> remarks;
    private double offset = Double.NaN;
    private double last;

    TraceClock(Consumer<Remark> remarks) {
        this.remarks = remarks;
    }

    /** Returns the time of the trace for a time of the recorder's clock. */
    double time(double seconds, long line) {
        if (Double.isNaN(offset)) {
            offset = -seconds;
        }
        double time = seconds + offset;
        if (time < last - ORDER) {
            remarks.accept(new Remark(Remark.Kind.CLOCK_WENT_BACK, line, last, last - time));
            offset += last + BRIDGE - time;
            time = last + BRIDGE;
        } else if (time > last + GAP) {
            remarks.accept(new Remark(Remark.Kind.GAP, line, last, time - last));
        }
        last = Math.max(last, time);
        return last;
    }

    /** What is added to a time of the recorder's clock now, s; NaN before any. */
    double offset() {
        return offset;
    }

    double last() {
        return last;
    }
}
