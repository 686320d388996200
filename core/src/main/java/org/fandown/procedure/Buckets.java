package org.fandown.procedure;

import java.util.Arrays;

/** Entries by their time, the least first; of equal times the last that came goes first. */
final class Buckets {
    private static final long[] NOTHING = {};

    private long[][] buckets = new long[1 << 10][];
    private int[] sizes = new int[1 << 10];
    private int least = Integer.MAX_VALUE;
    private int size;

    Buckets() {
        Arrays.fill(buckets, NOTHING);
    }

    boolean isEmpty() {
        return size == 0;
    }

    long least() {
        settle();
        return buckets[least][sizes[least] - 1];
    }

    private void settle() {
        while (sizes[least] == 0) {
            least++;
        }
    }

    void add(long number) {
        int time = (int) (number >>> Entries.BITS);
        if (time >= sizes.length) {
            int old = sizes.length;
            int room = Math.max(2 * old, time + 1);
            buckets = Arrays.copyOf(buckets, room);
            Arrays.fill(buckets, old, room, NOTHING);
            sizes = Arrays.copyOf(sizes, room);
        }
        long[] there = buckets[time];
        if (sizes[time] == there.length) {
            there = Arrays.copyOf(there, Math.max(8, 2 * there.length));
            buckets[time] = there;
        }
        there[sizes[time]++] = number;
        least = size == 0 ? time : Math.min(least, time);
        size++;
    }

    long remove() {
        settle();
        size--;
        return buckets[least][--sizes[least]];
    }
}
