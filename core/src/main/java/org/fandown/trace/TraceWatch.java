package org.fandown.trace;

import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

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
    private final MarkedPoints marked;
    private Consumer<String> refused = why -> {};

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
        marked = new MarkedPoints(found, why -> refused.accept(why));
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

    /**
     * Takes what a person marked.
     *
     * @param word what
     * @param seconds when, not before the sample before it
     * @param reaction the longest time from what happened to the mark, s
     * @param says is told why the mark says nothing, if that turns out
     */
    void mark(MarkWord word, double seconds, double reaction, Consumer<String> says) {
        switch (word) {
            case FOOT_ON -> moments.sample(Channel.BRAKE_SWITCH, seconds, 1);
            case FOOT_OFF -> moments.sample(Channel.BRAKE_SWITCH, seconds, 0);
            case BEGIN_AIR_LOSS_APPLIED, BEGIN_AIR_LOSS_RELEASED -> {
                double foot = word == MarkWord.BEGIN_AIR_LOSS_APPLIED ? 1 : 0;
                losses.cut();
                moments.sample(Channel.BRAKE_SWITCH, seconds, foot);
            }
            case END_AIR_LOSS -> losses.cut();
            case LOW_AIR_WARNING -> point(Recognised.Kind.WARNING, seconds, reaction, says);
            case PARKING_KNOB_OUT -> point(Recognised.Kind.PARKING_CLOSED, seconds, reaction, says);
            case TRAILER_KNOB_OUT -> point(Recognised.Kind.TRAILER_CLOSED, seconds, reaction, says);
        }
    }

    private void point(
            Recognised.Kind kind, double seconds, double reaction, Consumer<String> says) {
        refused = says;
        marked.mark(kind, seconds, reaction, step());
    }

    /** Returns how long an air loss has been going on undisturbed, s; 0 if none is. */
    public double lossOpen() {
        return losses.open();
    }

    /** Returns which loss it is that is going on, as far as the pedal is known. */
    Recognised.Kind lossKind() {
        return losses.kind();
    }

    /**
     * Returns what an air loss that is still going on shows so far; null if there is none, or it is
     * too short to tell. This takes some work, so ask seldom.
     */
    public @Nullable Recognised lossSoFar() {
        return losses.soFar();
    }

    private void moment(Moment now) {
        pumping.moment(now);
        losses.moment(now);
        switches.moment(now);
        drains.moment(now);
        marked.moment(now);
    }

    /** Ends the trace: what is still open is closed. */
    public void finish() {
        moments.close();
        pumping.finish();
        losses.finish();
        switches.finish();
        drains.finish();
        marked.finish();
    }
}
