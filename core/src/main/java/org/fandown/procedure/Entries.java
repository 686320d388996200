package org.fandown.procedure;

import java.util.Arrays;

/** What a {@link Relaxation} has met: checks made and a situation, each with its least time. */
final class Entries {
    private static final long SPREAD = 0x9E3779B97F4A7C15L;
    private static final long SPREAD_AGAIN = 0xC2B2AE3D27D4EB4FL;

    private int[] slots = new int[1 << 13];
    private long[] made = new long[1 << 12];
    private int[] situation = new int[1 << 12];
    private int[] time = new int[1 << 12];
    private int[] before = new int[1 << 12];
    private int[] by = new int[1 << 12];
    private boolean[] closed = new boolean[1 << 12];
    private int size;

    /** The entry, -1 if it was not met. */
    int find(long checks, int at) {
        return slots[slot(checks, at)] - 1;
    }

    /** Notes a time; answers the entry, or -1 if it was known to take no longer. */
    int reach(long checks, int at, int cost, int from, int choice) {
        int slot = slot(checks, at);
        int entry = slots[slot] - 1;
        if (entry < 0) {
            entry = add(slot, checks, at);
        } else if (time[entry] <= cost) {
            return -1;
        }
        time[entry] = cost;
        before[entry] = from;
        by[entry] = choice;
        return entry;
    }

    private int add(int slot, long checks, int at) {
        if (size == time.length) {
            made = Arrays.copyOf(made, 2 * size);
            situation = Arrays.copyOf(situation, 2 * size);
            time = Arrays.copyOf(time, 2 * size);
            before = Arrays.copyOf(before, 2 * size);
            by = Arrays.copyOf(by, 2 * size);
            closed = Arrays.copyOf(closed, 2 * size);
        }
        made[size] = checks;
        situation[size] = at;
        slots[slot] = ++size;
        if (2 * size > slots.length) {
            slots = new int[2 * slots.length];
            for (int i = 0; i < size; i++) {
                slots[slot(made[i], situation[i])] = i + 1;
            }
        }
        return size - 1;
    }

    private int slot(long checks, int at) {
        int mask = slots.length - 1;
        int slot = (int) (((checks * SPREAD ^ at) * SPREAD_AGAIN) >>> 33) & mask;
        while (slots[slot] != 0) {
            int entry = slots[slot] - 1;
            if (situation[entry] == at && made[entry] == checks) {
                return slot;
            }
            slot = (slot + 1) & mask;
        }
        return slot;
    }

    int size() {
        return size;
    }

    long made(int entry) {
        return made[entry];
    }

    int situation(int entry) {
        return situation[entry];
    }

    int time(int entry) {
        return time[entry];
    }

    /** The entry it was reached from, -1 for an end of the order. */
    int before(int entry) {
        return before[entry];
    }

    /** The choice it was reached by. */
    int by(int entry) {
        return by[entry];
    }

    /** Whether its time is known to be the least. */
    boolean isClosed(int entry) {
        return closed[entry];
    }

    void close(int entry) {
        closed[entry] = true;
    }
}
