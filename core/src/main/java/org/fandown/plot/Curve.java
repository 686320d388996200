package org.fandown.plot;

import java.util.Arrays;

/** Values over time, added one after the other. */
public final class Curve {
    private static final int FIRST_ROOM = 1024;

    private final String name;
    private double[] times = new double[FIRST_ROOM];
    private double[] values = new double[FIRST_ROOM];
    private int count;

    /**
     * Makes an empty curve.
     *
     * @param name what it shows
     */
    public Curve(String name) {
        this.name = name;
    }

    /** Returns what it shows. */
    public String name() {
        return name;
    }

    /**
     * Adds a value.
     *
     * @param seconds its time, not before that of the value before
     * @param value the value
     * @throws IllegalArgumentException if time goes backwards or one of both is not a number
     */
    public void add(double seconds, double value) {
        if (!(seconds >= end()) || !(Math.abs(value) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "A curve takes numbers, and time does not go backwards in it.");
        }
        if (count == times.length) {
            times = Arrays.copyOf(times, 2 * count);
            values = Arrays.copyOf(values, 2 * count);
        }
        times[count] = seconds;
        values[count] = value;
        count++;
    }

    /** Returns how many values it has. */
    public int size() {
        return count;
    }

    /** Returns the time of a value, s. */
    public double time(int index) {
        return times[index];
    }

    /** Returns a value. */
    public double value(int index) {
        return values[index];
    }

    /** The time of the last value, 0 without any. */
    double end() {
        return count == 0 ? 0 : times[count - 1];
    }

    /** Returns the highest value, 0 if none is higher. */
    public double highest() {
        double highest = 0;
        for (int i = 0; i < count; i++) {
            highest = Math.max(highest, values[i]);
        }
        return highest;
    }
}
