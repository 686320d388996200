package org.fandown.trace;

/** Digits as bytes of text. */
final class Hex {
    private static final byte[] VALUES = values();

    private Hex() {}

    /** Returns the value of a hexadecimal digit, -1 if it is none. */
    static int value(byte digit) {
        return VALUES[digit & 0xFF];
    }

    static boolean isDigit(byte b) {
        return b >= '0' && b <= '9';
    }

    private static byte[] values() {
        byte[] values = new byte[256];
        for (int i = 0; i < values.length; i++) {
            values[i] = -1;
        }
        for (int i = 0; i < 10; i++) {
            values['0' + i] = (byte) i;
        }
        for (int i = 0; i < 6; i++) {
            values['A' + i] = (byte) (10 + i);
            values['a' + i] = (byte) (10 + i);
        }
        return values;
    }
}
