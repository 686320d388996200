package org.fandown.app.cli;

import java.io.PrintWriter;
import org.fandown.plot.ClockText;
import picocli.CommandLine.Help.Ansi;

/** Tells a person at a terminal how far a long run is; tells nobody else. */
final class Progress {
    private static final long FIRST_NANOS = 1_000_000_000L;
    private static final long NEXT_NANOS = 200_000_000L;

    private final PrintWriter err;
    private final boolean watched;
    private long next;
    private boolean shown;

    Progress(PrintWriter err) {
        this(err, Ansi.AUTO.enabled());
    }

    Progress(PrintWriter err, boolean watched) {
        this.err = err;
        this.watched = watched;
        this.next = System.nanoTime() + FIRST_NANOS;
    }

    void at(double seconds) {
        if (!watched || System.nanoTime() - next < 0) {
            return;
        }
        next = System.nanoTime() + NEXT_NANOS;
        shown = true;
        err.print("\rfandown: driven so far " + ClockText.tenths(seconds) + " ");
        err.flush();
    }

    /** Clears the line. */
    void done() {
        if (shown) {
            err.print("\r" + " ".repeat(60) + "\r");
            err.flush();
        }
    }
}
