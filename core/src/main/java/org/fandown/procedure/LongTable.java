package org.fandown.procedure;

/** A table from long keys to the least cost seen, without order and without removal. */
final class LongTable {
    private static final long SPREAD = 0x9E3779B97F4A7C15L;

    private long[] keys;
    private int[] costs;
    private int size;

    /**
     * An empty table.
     *
     * @param room places at the beginning, a power of two
     */
    LongTable(int room) {
        keys = new long[room];
        costs = new int[room];
    }

    /** Notes a cost; answers whether it is the least so far. */
    boolean improves(long key, int cost) {
        if (2 * size >= keys.length) {
            grow();
        }
        int at = slot(keys, key);
        if (keys[at] == 0) {
            size++;
        } else if (costs[at] <= cost) {
            return false;
        }
        keys[at] = key + 1;
        costs[at] = cost;
        return true;
    }

    /** The cost noted, -1 if there is none. */
    int find(long key) {
        int at = slot(keys, key);
        return keys[at] == 0 ? -1 : costs[at];
    }

    private static int slot(long[] keys, long key) {
        int mask = keys.length - 1;
        int at = (int) ((key * SPREAD) >>> 33) & mask;
        while (keys[at] != 0 && keys[at] != key + 1) {
            at = (at + 1) & mask;
        }
        return at;
    }

    private void grow() {
        long[] oldKeys = keys;
        int[] oldCosts = costs;
        keys = new long[2 * oldKeys.length];
        costs = new int[2 * oldCosts.length];
        for (int i = 0; i < oldKeys.length; i++) {
            if (oldKeys[i] != 0) {
                int at = slot(keys, oldKeys[i] - 1);
                keys[at] = oldKeys[i];
                costs[at] = oldCosts[i];
            }
        }
    }
}
