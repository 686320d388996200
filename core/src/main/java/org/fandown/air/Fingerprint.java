package org.fandown.air;

/** Mixes the bits of numbers into one (FNV-1a over words of 64 bits, with the halves folded). */
final class Fingerprint {
    private static final long OFFSET = 0xcbf29ce484222325L;
    private static final long PRIME = 0x100000001b3L;

    private long value = OFFSET;

    void add(double[] numbers) {
        for (double number : numbers) {
            add(number);
        }
    }

    void add(double number) {
        long mixed = (value ^ Double.doubleToLongBits(number)) * PRIME;
        value = mixed ^ (mixed >>> 32);
    }

    long value() {
        return value;
    }
}
