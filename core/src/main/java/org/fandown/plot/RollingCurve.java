package org.fandown.plot;

/**
 * Values over time, of which there may be any number: the last of them finely, earlier ones ever
 * more coarsely. What happened a moment ago can be drawn as it was, and a long time still be drawn
 * whole.
 *
 * <p>Each level keeps the lowest and the highest value of so many short times; the times of the
 * next level are four times as long. A time that is over is passed on to the next level.
 *
 * <p><i>Valid for:</i> times from 0 on that do not fall, and finite values.
 */
public final class RollingCurve {
    private static final int LEVELS = 10;
    private static final int ROOM = 2048;

    /** A power of two, so that times of one level lie wholly in one of the next, s. */
    private static final double FIRST_WIDTH = 1.0 / 16;

    private static final double FACTOR = 4;

    private final Level[] levels = new Level[LEVELS];

    /** Makes an empty curve. */
    public RollingCurve() {
        double width = FIRST_WIDTH;
        for (int i = 0; i < LEVELS; i++) {
            levels[i] = new Level(width);
            width *= FACTOR;
        }
    }

    /**
     * Adds a value.
     *
     * @param seconds its time, 0 or more, not before that of the value before
     * @param value the value
     */
    public void add(double seconds, double value) {
        open(0, seconds);
        levels[0].take(seconds, value);
    }

    /** Makes a level ready for a time; what it then has behind it goes to the next level. */
    private void open(int level, double seconds) {
        if (levels[level].isBeyondOpen(seconds)) {
            passOn(level);
        }
    }

    /** Passes on what a level has open. Twice does no harm: lowest and highest stay the same. */
    private void passOn(int level) {
        Level from = levels[level];
        if (level + 1 < LEVELS && from.open >= 0) {
            int at = slot(from.open);
            Level next = levels[level + 1];
            open(level + 1, Math.min(from.lowTime[at], from.highTime[at]));
            next.take(from.lowTime[at], from.low[at]);
            next.take(from.highTime[at], from.high[at]);
        }
    }

    /**
     * Returns a part as a curve, as finely as it is still known.
     *
     * @param name what it shows
     * @param from where the part begins, s
     * @param to where it ends, s
     * @param strips of how many strips of time the lowest and the highest value are kept
     */
    public Curve part(String name, double from, double to, int strips) {
        for (int i = 0; i + 1 < LEVELS; i++) {
            passOn(i);
        }
        int level = 0;
        while (level + 1 < LEVELS && !levels[level].reachesBackTo(from)) {
            level++;
        }
        Curve curve = new Curve(name);
        Sieve sieve = new Sieve(curve, from, (to - from) / strips);
        levels[level].copy(sieve, from, to);
        sieve.flush();
        return curve;
    }

    private static int slot(long bucket) {
        return (int) (bucket % ROOM);
    }

    /** Lowest and highest value of times of equal length, the last of them. */
    private static final class Level {
        private final double width;
        private final double[] low = new double[ROOM];
        private final double[] lowTime = new double[ROOM];
        private final double[] high = new double[ROOM];
        private final double[] highTime = new double[ROOM];
        private final long[] bucket = new long[ROOM];
        private long open = -1;

        Level(double width) {
            this.width = width;
            java.util.Arrays.fill(bucket, -1);
        }

        private long number(double seconds) {
            return (long) Math.floor(seconds / width);
        }

        boolean isBeyondOpen(double seconds) {
            return open >= 0 && number(seconds) != open;
        }

        void take(double seconds, double value) {
            open = number(seconds);
            int at = slot(open);
            if (bucket[at] != open) {
                bucket[at] = open;
                low[at] = Double.POSITIVE_INFINITY;
                high[at] = Double.NEGATIVE_INFINITY;
            }
            if (value < low[at]) {
                low[at] = value;
                lowTime[at] = seconds;
            }
            if (value > high[at]) {
                high[at] = value;
                highTime[at] = seconds;
            }
        }

        /** Whether everything since a time is still here. */
        boolean reachesBackTo(double seconds) {
            return number(seconds) > open - ROOM;
        }

        void copy(Sieve sieve, double from, double to) {
            for (long b = Math.max(0, open - ROOM + 1); b <= open; b++) {
                int at = slot(b);
                if (bucket[at] == b) {
                    boolean rises = lowTime[at] <= highTime[at];
                    pass(sieve, at, rises, from, to);
                    if (lowTime[at] != highTime[at]) {
                        pass(sieve, at, !rises, from, to);
                    }
                }
            }
        }

        private void pass(Sieve sieve, int at, boolean lowest, double from, double to) {
            double seconds = lowest ? lowTime[at] : highTime[at];
            if (seconds >= from && seconds <= to) {
                sieve.take(seconds, lowest ? low[at] : high[at]);
            }
        }
    }

    /** Lets of each strip of time the lowest and the highest value through. */
    private static final class Sieve {
        private final Curve curve;
        private final double from;
        private final double width;
        private double strip = -1;
        private double low;
        private double lowTime;
        private double high;
        private double highTime;

        Sieve(Curve curve, double from, double width) {
            this.curve = curve;
            this.from = from;
            this.width = width;
        }

        void take(double seconds, double value) {
            double at = Math.floor((seconds - from) / width);
            if (at != strip) {
                flush();
                strip = at;
                low = value;
                lowTime = seconds;
                high = value;
                highTime = seconds;
            } else if (value < low) {
                low = value;
                lowTime = seconds;
            } else if (value > high) {
                high = value;
                highTime = seconds;
            }
        }

        void flush() {
            if (strip < 0) {
                return;
            }
            boolean rises = lowTime <= highTime;
            curve.add(rises ? lowTime : highTime, rises ? low : high);
            if (lowTime != highTime) {
                curve.add(rises ? highTime : lowTime, rises ? high : low);
            }
        }
    }
}
