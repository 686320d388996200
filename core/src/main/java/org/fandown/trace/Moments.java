package org.fandown.trace;

import java.util.Arrays;
import java.util.function.Consumer;

/**
 * Gathers samples of any rate into moments of half a second, each the mean of its samples; of a
 * switch the last. A moment in which nothing came is left out. Allocates nothing for a sample, nor
 * for a moment.
 */
final class Moments {
    static final double LENGTH = 0.5;

    private final Consumer<Moment> receiver;
    private final Moment moment = new Moment();
    private final double[] sum = new double[Channel.values().length];
    private final int[] count = new int[sum.length];
    private double end = Double.NEGATIVE_INFINITY;
    private boolean any;

    Moments(Consumer<Moment> receiver) {
        this.receiver = receiver;
    }

    void sample(Channel channel, double seconds, double value) {
        if (seconds >= end) {
            close();
            end = (Math.floor(seconds / LENGTH) + 1) * LENGTH;
        }
        int i = channel.index();
        if (channel.unit().isPresent()) {
            sum[i] += value;
            count[i]++;
        } else {
            sum[i] = value;
            count[i] = 1;
        }
        any = true;
    }

    /** Passes on what is left. */
    void close() {
        if (!any) {
            return;
        }
        moment.fill(end - LENGTH / 2, sum, count);
        Arrays.fill(sum, 0);
        Arrays.fill(count, 0);
        any = false;
        receiver.accept(moment);
    }
}
