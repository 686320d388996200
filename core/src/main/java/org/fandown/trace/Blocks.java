package org.fandown.trace;

import java.util.Arrays;

/**
 * Readings gathered into short blocks of time, with how often each block shows which reading.
 * Readings are in steps of the instrument, times in parts of a window.
 *
 * <p>Where few blocks show more than one reading, these tell most: they are cut finer, because the
 * pressure moves within them, and blocks amid a run of one reading are joined, because they tell
 * little.
 */
final class Blocks {
    /** One block in so many is few. */
    private static final int RARE = 3;

    private static final int FINER = 12;
    private static final int JOINED = 5;

    final int size;
    final double[] time;
    final double[] mean;
    final int[] readings;
    private final double[][] values;
    private final int[][] counts;
    private final double[] line;

    private Blocks(double[] times, double[] shown, int[] ends) {
        size = ends.length;
        time = new double[size];
        mean = new double[size];
        readings = new int[size];
        values = new double[size][];
        counts = new int[size][];
        line = new double[size];
        for (int b = 0; b < size; b++) {
            gather(b, times, shown, b == 0 ? 0 : ends[b - 1], ends[b]);
        }
    }

    /**
     * Gathers readings.
     *
     * @param times in parts of the window, rising
     * @param shown in steps
     * @param count how many of both count
     * @param most blocks at the most, before some are cut finer
     */
    static Blocks of(double[] times, double[] shown, int count, int most) {
        double length = (times[count - 1] - times[0]) / most;
        int[] ends = cut(times, 0, count, length);
        boolean[] mixed = new boolean[ends.length];
        int many = 0;
        for (int b = 0; b < ends.length; b++) {
            mixed[b] = isMixed(shown, b == 0 ? 0 : ends[b - 1] - 1, ends[b]);
            many += mixed[b] ? 1 : 0;
        }
        boolean rare = many * RARE <= ends.length;
        return new Blocks(times, shown, rare ? recut(times, ends, mixed, length / FINER) : ends);
    }

    private static int[] cut(double[] times, int first, int count, double length) {
        int[] ends = new int[count - first];
        int size = 0;
        int from = first;
        while (from < count) {
            int to = from + 1;
            while (to < count && times[to] - times[from] < length) {
                to++;
            }
            ends[size] = to;
            size++;
            from = to;
        }
        return Arrays.copyOf(ends, size);
    }

    private static boolean isMixed(double[] shown, int from, int to) {
        for (int i = from + 1; i < to; i++) {
            if (shown[i] != shown[from]) {
                return true;
            }
        }
        return false;
    }

    private static int[] recut(double[] times, int[] ends, boolean[] mixed, double length) {
        int[] all = new int[ends[ends.length - 1]];
        int size = 0;
        int joined = 0;
        for (int b = 0; b < ends.length; b++) {
            int from = b == 0 ? 0 : ends[b - 1];
            if (mixed[b]) {
                for (int end : cut(times, from, ends[b], length)) {
                    all[size] = end;
                    size++;
                }
                joined = 0;
            } else if (joined > 1 && joined <= JOINED && b + 1 < ends.length && !mixed[b + 1]) {
                all[size - 1] = ends[b];
                joined++;
            } else {
                all[size] = ends[b];
                size++;
                joined = joined == 0 ? 1 : 2;
            }
        }
        return Arrays.copyOf(all, size);
    }

    private void gather(int b, double[] times, double[] shown, int from, int to) {
        double[] value = new double[to - from];
        int[] many = new int[to - from];
        int kinds = 0;
        double sumTime = 0;
        double sum = 0;
        for (int i = from; i < to; i++) {
            sumTime += times[i];
            sum += shown[i];
            int k = 0;
            while (k < kinds && value[k] != shown[i]) {
                k++;
            }
            kinds = Math.max(kinds, k + 1);
            value[k] = shown[i];
            many[k]++;
        }
        readings[b] = to - from;
        time[b] = sumTime / readings[b];
        mean[b] = sum / readings[b];
        values[b] = Arrays.copyOf(value, kinds);
        counts[b] = Arrays.copyOf(many, kinds);
    }

    /** Takes pressures from now on as above a line. */
    void above(double level, double fall) {
        for (int b = 0; b < size; b++) {
            double now = level + fall * (0.5 - time[b]);
            mean[b] -= now - line[b];
            line[b] = now;
        }
    }

    /** Sum of the squares by which the readings of a block are off a pressure. */
    double squares(int block, double pressure) {
        double sum = 0;
        for (int k = 0; k < values[block].length; k++) {
            double off = values[block][k] - line[block] - pressure;
            sum += counts[block][k] * off * off;
        }
        return sum;
    }

    /** Logarithm of the probability of the readings of a block at a pressure. */
    double log(int block, double pressure, StepTable table) {
        double at = pressure + line[block];
        double[] value = values[block];
        int[] many = counts[block];
        double sum = 0;
        for (int k = 0; k < value.length; k++) {
            sum += many[k] * table.log(at - value[k]);
        }
        return sum;
    }
}
