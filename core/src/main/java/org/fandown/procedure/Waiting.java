package org.fandown.procedure;

import java.util.Arrays;

/** Entries of one {@link Relaxation} by the entry of another for which each waits. */
final class Waiting {
    private static final int PAGE_BITS = 7;
    private static final int PAGE_MASK = (1 << PAGE_BITS) - 1;
    private static final int[] NOTHING = {};

    private int[][] heads = {};
    private long[] entries = new long[1 << 10];
    private int[] next = new int[1 << 10];
    private int count;

    /** Lets an entry wait for another. */
    void add(long awaited, long entry) {
        int page = (int) (awaited >> PAGE_BITS);
        if (page >= heads.length) {
            int old = heads.length;
            heads = Arrays.copyOf(heads, Math.max(2 * old, page + 1));
            Arrays.fill(heads, old, heads.length, NOTHING);
        }
        if (heads[page].length == 0) {
            heads[page] = new int[1 << PAGE_BITS];
        }
        if (count == entries.length) {
            entries = Arrays.copyOf(entries, 2 * count);
            next = Arrays.copyOf(next, 2 * count);
        }
        int at = (int) awaited & PAGE_MASK;
        entries[count] = entry;
        next[count] = heads[page][at];
        heads[page][at] = ++count;
    }

    /** The first that waits, 0 if nothing does. */
    int first(long awaited) {
        int page = (int) (awaited >> PAGE_BITS);
        boolean none = page >= heads.length || heads[page].length == 0;
        return none ? 0 : heads[page][(int) awaited & PAGE_MASK];
    }

    /** The entry of one that waits. */
    long entry(int waits) {
        return entries[waits - 1];
    }

    /** The one after it, 0 if it is the last. */
    int next(int waits) {
        return next[waits - 1];
    }
}
