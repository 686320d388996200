package org.fandown.referee;

import org.fandown.units.GaugePressure;

/** What both needles showed through a run, every tenth of a second. */
final class NeedleTrack {
    /** Ticks from one sample to the next. */
    static final int EVERY = 5;

    private static final int FIRST = 1 << 10;

    private double[] primary = new double[FIRST];
    private double[] secondary = new double[FIRST];
    private int count;

    void add(GaugePressure first, GaugePressure second) {
        if (count == primary.length) {
            primary = java.util.Arrays.copyOf(primary, 2 * count);
            secondary = java.util.Arrays.copyOf(secondary, 2 * count);
        }
        primary[count] = first.inPsi();
        secondary[count] = second.inPsi();
        count++;
    }

    private int index(long tick) {
        return (int) Math.max(0, Math.min(count - 1, tick / EVERY));
    }

    double primary(long tick) {
        return primary[index(tick)];
    }

    double secondary(long tick) {
        return secondary[index(tick)];
    }

    double needle(boolean first, long tick) {
        return first ? primary(tick) : secondary(tick);
    }

    double lower(long tick) {
        return Math.min(primary(tick), secondary(tick));
    }

    double higher(long tick) {
        return Math.max(primary(tick), secondary(tick));
    }
}
