package org.fandown.units;

/**
 * Mixes the bits of numbers into one (FNV-1a over words of 64 bits, with the halves folded). Equal
 * numbers in equal order give the same on every machine.
 *
 * <p>Zero counts the same with either sign: where the core is compiled for the browser, the
 * negative of zero is zero without a sign, which no result depends on.
 *
 * <p>To find out whether a run was repeated exactly; not a protection against forgery.
 */
public final class Fingerprint {
    private static final long OFFSET = 0xcbf29ce484222325L;
    private static final long PRIME = 0x100000001b3L;

    private long value = OFFSET;

    /** Adds numbers in their order. */
    public void add(double[] numbers) {
        for (double number : numbers) {
            add(number);
        }
    }

    /** Adds a number. */
    public void add(double number) {
        add(number == 0 ? 0L : Double.doubleToLongBits(number));
    }

    /** Adds a whole number. */
    public void add(long bits) {
        long mixed = (value ^ bits) * PRIME;
        value = mixed ^ (mixed >>> 32);
    }

    /** Adds the letters of a text. */
    public void add(String text) {
        for (int i = 0; i < text.length(); i++) {
            add((long) text.charAt(i));
        }
    }

    /** Returns the number made of all that was added. */
    public long value() {
        return value;
    }
}
