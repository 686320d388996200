package org.fandown.plot;

import java.util.Arrays;

/**
 * Values over time, of which there may be any number: of each short time only the lowest and the
 * highest are kept, and the time doubles as often as the room asks for it.
 *
 * <p><i>Valid for:</i> times from 0 on that do not fall, and finite values.
 */
public final class LongCurve {
    private static final int ROOM = 4096;
    private static final double FIRST_WIDTH = 0.1;

    private final double[] low = new double[ROOM];
    private final double[] lowTime = new double[ROOM];
    private final double[] high = new double[ROOM];
    private final double[] highTime = new double[ROOM];
    private double width = FIRST_WIDTH;

    /** Makes an empty curve. */
    public LongCurve() {
        clear(0);
    }

    private void clear(int from) {
        Arrays.fill(low, from, ROOM, Double.POSITIVE_INFINITY);
        Arrays.fill(high, from, ROOM, Double.NEGATIVE_INFINITY);
    }

    /**
     * Adds a value.
     *
     * @param seconds its time, 0 or more
     * @param value the value
     */
    public void add(double seconds, double value) {
        while (seconds >= ROOM * width) {
            widen();
        }
        int at = (int) Math.floor(seconds / width);
        take(at, seconds, value);
    }

    private void take(int at, double seconds, double value) {
        if (value < low[at]) {
            low[at] = value;
            lowTime[at] = seconds;
        }
        if (value > high[at]) {
            high[at] = value;
            highTime[at] = seconds;
        }
    }

    private void widen() {
        for (int i = 0; i < ROOM; i++) {
            double least = low[i];
            double leastTime = lowTime[i];
            double most = high[i];
            double mostTime = highTime[i];
            low[i] = Double.POSITIVE_INFINITY;
            high[i] = Double.NEGATIVE_INFINITY;
            if (least <= most) {
                take(i / 2, leastTime, least);
                take(i / 2, mostTime, most);
            }
        }
        width *= 2;
    }

    /** Returns the highest value, 0 if none is higher. */
    public double highest() {
        double highest = 0;
        for (double value : high) {
            highest = Math.max(highest, value);
        }
        return highest;
    }

    /**
     * Returns what was kept as a curve.
     *
     * @param name what it shows
     */
    public Curve curve(String name) {
        Curve curve = new Curve(name);
        for (int i = 0; i < ROOM; i++) {
            if (low[i] > high[i]) {
                continue;
            }
            boolean rises = lowTime[i] <= highTime[i];
            curve.add(rises ? lowTime[i] : highTime[i], rises ? low[i] : high[i]);
            if (lowTime[i] != highTime[i]) {
                curve.add(rises ? highTime[i] : lowTime[i], rises ? high[i] : low[i]);
            }
        }
        return curve;
    }
}
