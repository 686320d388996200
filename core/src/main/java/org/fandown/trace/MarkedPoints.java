package org.fandown.trace;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Consumer;
import org.fandown.trace.Recognised.Kind;

/**
 * Finds the pressure at which something happened that a person saw and marked.
 *
 * <p>The mark comes later than what was seen, by a time that is not known but for its longest. The
 * pressure is the mean of the lower circuit over that time before the mark, and its doubt how much
 * the circuit changed meanwhile, with the step of the gauge.
 */
final class MarkedPoints {
    /** Places in the time before a mark that are looked at. */
    private static final int PLACES = 16;

    /** Above this nobody expects a warning or a knob to act by itself, psi. */
    private static final double MOST = 95;

    /** Marks that wait for the next moment are never more. */
    private static final int WAITING = 100;

    private static final double DOUBT = 0.5;

    private final Consumer<Recognised> found;
    private final Consumer<String> refused;
    private final History history = new History();
    private final Deque<Waiting> waiting = new ArrayDeque<>();

    private record Waiting(Kind kind, double time, double reaction, double step) {}

    /**
     * Makes it.
     *
     * @param found is told what was found
     * @param refused is told why a mark says nothing
     */
    MarkedPoints(Consumer<Recognised> found, Consumer<String> refused) {
        this.found = found;
        this.refused = refused;
    }

    void mark(Kind kind, double time, double reaction, double step) {
        if (waiting.size() < WAITING) {
            waiting.add(new Waiting(kind, time, reaction, step));
        }
    }

    void moment(Moment now) {
        history.add(now);
        while (!waiting.isEmpty() && waiting.element().time() <= now.time) {
            point(waiting.remove(), now);
        }
    }

    private void point(Waiting mark, Moment now) {
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < PLACES; i++) {
            double place = mark.time() - mark.reaction() * (i + 0.5) / PLACES;
            double level = history.at(place, Moment::lower);
            sum += level;
            squares += level * level;
        }
        double mean = sum / PLACES;
        double earlier = history.mean(mark.time() - 10, mark.time() - 6, Moment::lower);
        if (Double.isNaN(mean)) {
            refused.accept("no pressure came just before it");
        } else if (!(earlier > mean + DOUBT)) {
            refused.accept("the pressure was not falling");
        } else if (mean > MOST) {
            refused.accept("the pressure was above 95 psi");
        } else {
            double variance = Math.max(0, squares / PLACES - mean * mean);
            double step = mark.step() * mark.step() / 12;
            found.accept(
                    Recognised.of(
                            mark.kind(),
                            mark.time() - mark.reaction(),
                            mark.time(),
                            mean,
                            Math.sqrt(variance + step + DOUBT * DOUBT),
                            now.get(Channel.ENGINE_SPEED)));
        }
    }

    void finish() {
        waiting.clear();
    }
}
