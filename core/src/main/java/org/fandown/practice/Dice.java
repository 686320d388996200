package org.fandown.practice;

/**
 * A sequence of numbers that looks random and is the same for the same seed (SplitMix64: Steele,
 * Lea and Flood, Fast splittable pseudorandom number generators, OOPSLA 2014).
 */
final class Dice {
    private static final long STEP = 0x9e3779b97f4a7c15L;
    private static final double UNIT = 1.0 / (1L << 53);

    private long state;

    Dice(long seed) {
        state = seed;
    }

    /** Returns the next number, 0 or more and less than 1. */
    double next() {
        state += STEP;
        long mixed = (state ^ (state >>> 30)) * 0xbf58476d1ce4e5b9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94d049bb133111ebL;
        mixed ^= mixed >>> 31;
        return (mixed >>> 11) * UNIT;
    }

    /** Returns the next number, from -size to size. */
    double within(double size) {
        return (2 * next() - 1) * size;
    }
}
