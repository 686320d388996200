package org.fandown.trace;

import org.jspecify.annotations.Nullable;

/**
 * What all channels tell in a short piece of time; NaN where one tells nothing. The same object is
 * filled again for each moment, so copy what must stay.
 */
final class Moment {
    /** Its middle, s. */
    double time;

    private final double[] values = new double[Channel.values().length];

    /** Makes it hold the mean of each channel, from sums and how many were added up. */
    void fill(double middle, double[] sums, int[] counts) {
        time = middle;
        for (int i = 0; i < values.length; i++) {
            values[i] = counts[i] > 0 ? sums[i] / counts[i] : Double.NaN;
        }
    }

    /** Makes it hold what another holds now. */
    void copy(Moment other) {
        time = other.time;
        System.arraycopy(other.values, 0, values, 0, values.length);
    }

    double get(Channel channel) {
        return values[channel.index()];
    }

    boolean has(Channel channel) {
        return !Double.isNaN(get(channel));
    }

    /** The lower of both circuits, NaN if there is none. */
    double lower() {
        double a = get(Channel.PRIMARY);
        double b = get(Channel.SECONDARY);
        return Double.isNaN(a) ? b : Double.isNaN(b) ? a : Math.min(a, b);
    }

    /** The higher of both circuits, NaN if there is none. */
    double higher() {
        double a = get(Channel.PRIMARY);
        double b = get(Channel.SECONDARY);
        return Double.isNaN(a) ? b : Double.isNaN(b) ? a : Math.max(a, b);
    }

    /** Whether the engine turns; null if nothing tells. */
    @Nullable Boolean engineTurns() {
        double rpm = get(Channel.ENGINE_SPEED);
        return Double.isNaN(rpm) ? null : rpm > 100;
    }
}
