package org.fandown.air;

import java.util.Arrays;

/**
 * The pressures at which something will switch, so that a step ends there and does not pass them
 * by.
 *
 * <p>Each is a level of one volume, or a difference between two. Told anew after each step. Before
 * a step it says when the first level will be reached if all goes on as in the step before; after
 * it, when in the step the first was in fact reached.
 */
final class Foresight {
    private static final int NONE = -1;

    private int[] volume = new int[8];
    private int[] other = new int[8];
    private double[] level = new double[8];
    private int count;

    /** Forgets all. */
    void clear() {
        count = 0;
    }

    /** Adds a level of one volume, Pa. */
    void add(int node, double pascals) {
        add(node, NONE, pascals);
    }

    /**
     * Adds a difference of the pressures of two volumes.
     *
     * @param node the first volume
     * @param less the one whose pressure is subtracted
     * @param pascals the difference, Pa
     */
    void add(int node, int less, double pascals) {
        if (count == volume.length) {
            grow();
        }
        volume[count] = node;
        other[count] = less;
        level[count] = pascals;
        count++;
    }

    /** Returns the time until the first level is reached, s; infinite if none will be. */
    double soonest(AirState state) {
        double soonest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            double time = toGo(i, state) / rate(i, state);
            if (time > 0 && time < soonest) {
                soonest = time;
            }
        }
        return soonest;
    }

    /**
     * Returns how long before the end of the step just done the first level was reached.
     *
     * @param state the state after the step
     * @param step the length of the step, s
     * @return the time, s; 0 if none was reached
     */
    double longestSince(AirState state, double step) {
        double longest = 0;
        for (int i = 0; i < count; i++) {
            double since = -toGo(i, state) / rate(i, state);
            if (since < step && since > longest) {
                longest = since;
            }
        }
        return longest;
    }

    private double toGo(int i, AirState state) {
        double now = state.pressure[volume[i]];
        return other[i] == NONE ? level[i] - now : level[i] - now + state.pressure[other[i]];
    }

    private double rate(int i, AirState state) {
        double rate = state.slope[volume[i]];
        return other[i] == NONE ? rate : rate - state.slope[other[i]];
    }

    /** Takes over what another one knows. */
    void copyFrom(Foresight from) {
        clear();
        for (int i = 0; i < from.count; i++) {
            add(from.volume[i], from.other[i], from.level[i]);
        }
    }

    private void grow() {
        volume = Arrays.copyOf(volume, 2 * count);
        other = Arrays.copyOf(other, 2 * count);
        level = Arrays.copyOf(level, 2 * count);
    }
}
