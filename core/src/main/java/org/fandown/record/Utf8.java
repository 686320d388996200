package org.fandown.record;

/** Texts as bytes in UTF-8. The library's own way needs what a browser does not have. */
final class Utf8 {
    private Utf8() {}

    /**
     * The bytes of a text.
     *
     * @param text whole characters, without half a surrogate pair
     */
    static byte[] bytes(String text) {
        byte[] bytes = new byte[length(text)];
        int at = 0;
        for (int i = 0; i < text.length(); i++) {
            int c = text.codePointAt(i);
            int size = size(c);
            if (size == 1) {
                bytes[at++] = (byte) c;
                continue;
            }
            int lead = size == 2 ? 0xc0 : size == 3 ? 0xe0 : 0xf0;
            bytes[at++] = (byte) (lead | (c >> (6 * (size - 1))));
            for (int part = size - 2; part >= 0; part--) {
                bytes[at++] = (byte) (0x80 | ((c >> (6 * part)) & 0x3f));
            }
            i += size == 4 ? 1 : 0;
        }
        return bytes;
    }

    private static int length(String text) {
        int length = 0;
        for (int i = 0; i < text.length(); i++) {
            int size = size(text.codePointAt(i));
            length += size;
            i += size == 4 ? 1 : 0;
        }
        return length;
    }

    private static int size(int c) {
        return c < 0x80 ? 1 : c < 0x800 ? 2 : c < 0x10000 ? 3 : 4;
    }
}
