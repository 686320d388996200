package org.fandown.procedure;

import java.util.Arrays;

/**
 * What a {@link Relaxation} has met: checks made and a situation, each with its least time. Checks
 * made are numbered as they come; an entry is that number before the number of the situation.
 * Situations that follow each other lie near each other, which is what makes it fast.
 */
final class Entries {
    /** Bits that hold any entry. */
    static final int BITS = 38;

    private static final int PAGE_BITS = 7;
    private static final int PAGE_MASK = (1 << PAGE_BITS) - 1;
    private static final int CHOICE_BITS = 8;
    private static final int CHOICE_MASK = (1 << CHOICE_BITS) - 1;
    private static final int[] NOTHING = {};

    private final int bits;
    private final LongTable numbers = new LongTable(1 << 6);
    private long[] made = new long[1 << 4];
    private int count;
    private int[][] pages;

    /** Empty, for so many situations. */
    Entries(int situations) {
        int needed = PAGE_BITS;
        while (1 << needed < situations) {
            needed++;
        }
        bits = needed;
        pages = new int[made.length << (bits - PAGE_BITS)][];
        Arrays.fill(pages, NOTHING);
    }

    /** The number of the checks made, -1 if they were not met. */
    int find(long checks) {
        return numbers.find(checks);
    }

    /** The number of the checks made, a new one if they were not met. */
    int number(long checks) {
        int known = numbers.find(checks);
        if (known >= 0) {
            return known;
        }
        if (entry(count + 1, 0) >>> BITS != 0) {
            throw new IllegalStateException(
                    "The checks can be made in too many orders to be planned; follow an order.");
        }
        if (count == made.length) {
            made = Arrays.copyOf(made, 2 * count);
            int old = pages.length;
            pages = Arrays.copyOf(pages, 2 * old);
            Arrays.fill(pages, old, 2 * old, NOTHING);
        }
        made[count] = checks;
        numbers.improves(checks, count);
        return count++;
    }

    /** The first closed entry from a number on, -1 if there is none. */
    long closed(long from) {
        long entry = from;
        while (entry < entry(count, 0)) {
            if (pages[(int) (entry >> PAGE_BITS)].length == 0) {
                entry = (entry | PAGE_MASK) + 1;
            } else if (isClosed(entry)) {
                return entry;
            } else {
                entry++;
            }
        }
        return -1;
    }

    long entry(int number, int situation) {
        return ((long) number << bits) | situation;
    }

    int numberOf(long entry) {
        return (int) (entry >> bits);
    }

    long made(long entry) {
        return made[numberOf(entry)];
    }

    int situation(long entry) {
        return (int) entry & ((1 << bits) - 1);
    }

    /** Notes a time; answers whether it is less than what was known. */
    boolean reach(long entry, int cost, int from, int choice) {
        int page = (int) (entry >> PAGE_BITS);
        if (pages[page].length == 0) {
            pages[page] = new int[2 << PAGE_BITS];
        }
        int[] there = pages[page];
        int at = place(entry);
        if (there[at] != 0 && there[at] >> 1 <= cost + 1) {
            return false;
        }
        there[at] = (cost + 1) << 1;
        there[at + 1] = (from << CHOICE_BITS) | choice;
        return true;
    }

    private static int place(long entry) {
        return ((int) entry & PAGE_MASK) << 1;
    }

    private int value(long entry) {
        int[] there = pages[(int) (entry >> PAGE_BITS)];
        return there.length == 0 ? 0 : there[place(entry)];
    }

    /** Whether it was reached. */
    boolean isKnown(long entry) {
        return value(entry) != 0;
    }

    int time(long entry) {
        return (value(entry) >> 1) - 1;
    }

    /** Whether its time is known to be the least. */
    boolean isClosed(long entry) {
        return (value(entry) & 1) != 0;
    }

    /** The least time of what is closed, -1 of anything else. */
    int closedTime(int number, int situation) {
        int value = number < 0 ? 0 : value(entry(number, situation));
        return (value & 1) == 0 ? -1 : (value >> 1) - 1;
    }

    void close(long entry) {
        pages[(int) (entry >> PAGE_BITS)][place(entry)] |= 1;
    }

    /** The situation it was reached from. */
    int from(long entry) {
        return pages[(int) (entry >> PAGE_BITS)][place(entry) + 1] >>> CHOICE_BITS;
    }

    /** The choice it was reached by. */
    int by(long entry) {
        return pages[(int) (entry >> PAGE_BITS)][place(entry) + 1] & CHOICE_MASK;
    }
}
