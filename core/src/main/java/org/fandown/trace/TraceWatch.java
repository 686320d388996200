package org.fandown.trace;

import java.util.function.Consumer;

/**
 * Watches a trace as it comes and says what was done: build-up, cut-out and cut-in, air loss,
 * warnings, applications.
 *
 * <p>Samples of all channels come in rising time. Nothing is guessed: a loss is one only while
 * nothing pumps and nothing moves, and what no channel tells is left open. Memory does not grow
 * with the length of the trace.
 */
public final class TraceWatch {
    private final RawWindow primary = new RawWindow();
    private final RawWindow secondary = new RawWindow();
    private final Moments moments;
    private final Pumping pumping;
    private final Losses losses;
    private final Switches switches;
    private final Drains drains;

    /**
     * Makes a watch.
     *
     * @param found is told what was recognised, as soon as it is certain
     */
    public TraceWatch(Consumer<Recognised> found) {
        pumping = new Pumping(found, primary, secondary);
        losses = new Losses(found, primary, secondary);
        switches = new Switches(found);
        drains = new Drains(found);
        moments = new Moments(this::moment);
    }

    /**
     * Takes a sample.
     *
     * @param channel what it is of
     * @param seconds when, not before the sample before it
     * @param value in the channel's unit
     */
    public void sample(Channel channel, double seconds, double value) {
        if (channel == Channel.PRIMARY) {
            primary.add(seconds, value);
        } else if (channel == Channel.SECONDARY) {
            secondary.add(seconds, value);
        }
        moments.sample(channel, seconds, value);
    }

    /**
     * Returns the least difference between two pressures that followed each other, of the coarser
     * circuit, psi; 0 while none changed.
     */
    public double step() {
        return Math.max(primary.step(), secondary.step());
    }

    private void moment(Moment now) {
        pumping.moment(now);
        losses.moment(now);
        switches.moment(now);
        drains.moment(now);
    }

    /** Ends the trace: what is still open is closed. */
    public void finish() {
        moments.close();
        pumping.finish();
        losses.finish();
        switches.finish();
        drains.finish();
    }
}
