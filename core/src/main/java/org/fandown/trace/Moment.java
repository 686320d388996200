package org.fandown.trace;

import org.jspecify.annotations.Nullable;

/** What all channels tell in a short piece of time; NaN where one tells nothing. */
final class Moment {
    private static final int CHANNELS = Channel.values().length;

    final double time;
    private final double[] values;

    Moment(double time, double[] values) {
        this.time = time;
        this.values = values;
    }

    /** A moment that holds nothing. */
    static double[] blank() {
        double[] blank = new double[CHANNELS];
        java.util.Arrays.fill(blank, Double.NaN);
        return blank;
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
