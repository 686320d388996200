package org.fandown.trace;

import java.util.List;
import java.util.function.Consumer;
import org.fandown.trace.Recognised.Kind;
import org.fandown.trace.Recognised.Point;
import org.jspecify.annotations.Nullable;

/**
 * Finds stretches in which nothing is done and nothing pumps, so that what the circuits lose is a
 * leak, and measures it.
 */
final class Losses {
    /** Time in which circuits and gauges settle after something was done, s. */
    static final double SETTLE = 10;

    /** A stretch shorter than this tells nothing, s. */
    private static final double LEAST = 40;

    /** A stretch that is still open tells something from here on, s. */
    private static final double LEAST_SO_FAR = 10;

    /** Where nothing tells that the engine stands, it must be at least this long, s. */
    private static final double LEAST_UNKNOWN = 55;

    /** Longest stretch that is measured, s: longer ones tell nothing new. */
    private static final double MOST = 300;

    /** A sudden fall larger than this is an application, psi. */
    private static final double APPLICATION = 1;

    /** Air that was cooled by an application warms again and gains up to this, psi. */
    private static final double RECOVERY = 2.5;

    private static final double MOVING = 1;
    private static final double FINEST = 0.02;
    private static final double MINUTE = 60;

    private final Consumer<Recognised> found;
    private final RawWindow primary;
    private final RawWindow secondary;
    private final BrakeState brakes = new BrakeState();
    private @Nullable Boolean engine;
    private @Nullable Boolean applied;
    private double start = Double.NaN;
    private double least = Double.POSITIVE_INFINITY;
    private double before = Double.NaN;
    private double beforeThat = Double.NaN;
    private double last = Double.NaN;
    private double startLevel = Double.NaN;

    Losses(Consumer<Recognised> found, RawWindow primary, RawWindow secondary) {
        this.found = found;
        this.primary = primary;
        this.secondary = secondary;
    }

    void moment(Moment now) {
        double level = now.lower();
        Boolean turns = now.engineTurns();
        boolean switched = turns != null && !turns.equals(engine);
        if (turns != null) {
            engine = turns;
        }
        switched |= brakes.changed(now);
        boolean moves = now.has(Channel.SPEED) && now.get(Channel.SPEED) > MOVING;
        boolean gap = now.time - last > 5;
        if (switched || moves || gap || Boolean.TRUE.equals(engine)) {
            close(last - 0.6);
            start = Boolean.TRUE.equals(engine) || moves ? Double.NaN : now.time;
            forget(level);
        } else if (!Double.isNaN(level)) {
            level(now, level);
        }
        last = now.time;
    }

    private void forget(double level) {
        applied = brakes.applied();
        least = Double.isNaN(level) ? Double.POSITIVE_INFINITY : level;
        startLevel = level;
        before = level;
        beforeThat = level;
    }

    private double step() {
        return Math.max(primary.step(), secondary.step());
    }

    private void level(Moment now, double level) {
        double sudden = Math.max(APPLICATION, 1.6 * step());
        boolean falls = Math.max(before, beforeThat) - level > sudden;
        double warming = engine == null ? RECOVERY : 2 * RECOVERY;
        boolean rises = level - least > Math.max(warming, 2.2 * step());
        if (falls || rises || Double.isNaN(start)) {
            close(last - 1);
            start = now.time;
            forget(level);
            return;
        }
        least = Math.min(least, level);
        startLevel = Double.isNaN(startLevel) ? level : startLevel;
        beforeThat = before;
        before = level;
    }

    private void close(double end) {
        double from = start + SETTLE;
        double to = Math.min(end, from + MOST);
        double needed = engine == null ? LEAST_UNKNOWN : LEAST;
        if (Double.isNaN(start) || to - from < needed) {
            return;
        }
        Recognised measured = measured(from, to);
        if (measured != null) {
            found.accept(measured);
        }
    }

    /** Which loss a stretch shows, as far as the pedal is known. */
    Kind kind() {
        return applied == null ? Kind.LOSS : applied ? Kind.LOSS_APPLIED : Kind.LOSS_RELEASED;
    }

    /** How long the stretch that is still open has been going on after it settled, s; 0 if none. */
    double open() {
        return Double.isNaN(start) ? 0 : Math.max(0, last - start - SETTLE);
    }

    /** What the stretch that is still open shows so far; null while that is nothing. */
    @Nullable Recognised soFar() {
        return open() < LEAST_SO_FAR
                ? null
                : measured(start + SETTLE, Math.min(last, start + SETTLE + MOST));
    }

    /** Ends the stretch, because a person says that something else begins. */
    void cut() {
        close(last);
        start = Double.isNaN(start) ? start : last;
        forget(before);
    }

    private @Nullable Recognised measured(double from, double to) {
        Slope worse = worse(measure(primary, from, to), measure(secondary, from, to));
        if (worse == null) {
            return null;
        }
        return new Recognised(
                kind(),
                from,
                to,
                MINUTE * worse.loss(),
                MINUTE * worse.uncertainty(),
                List.of(
                        new Point(from, MINUTE * worse.low()),
                        new Point(to, MINUTE * worse.high())),
                engine == null ? Double.NaN : 0,
                startLevel);
    }

    private static @Nullable Slope worse(@Nullable Slope a, @Nullable Slope b) {
        if (a == null || b == null) {
            return a == null ? b : a;
        }
        return a.loss() >= b.loss() ? a : b;
    }

    private @Nullable Slope measure(RawWindow raw, double from, double to) {
        double[] times = new double[raw.size()];
        double[] values = new double[raw.size()];
        int count = raw.copy(from, to, times, values);
        if (count < 3 || times[count - 1] - times[0] < (to - from) / 2) {
            return null;
        }
        return LossFit.fit(
                times, values, count, Math.max(FINEST, raw.step()), from, to, from - start);
    }

    void finish() {
        close(last);
        start = Double.NaN;
    }
}
