package org.fandown.record;

/**
 * The hash that records are told apart and chained by, the same on every machine.
 *
 * <p><i>Source:</i> NIST FIPS 180-4, Secure Hash Standard, August 2015, sections 4 to 6.
 */
public final class Sha256 {
    /** How many hexadecimal digits a hash has. */
    public static final int DIGITS = 64;

    private static final String HEX = "0123456789abcdef";
    private static final int BLOCK = 64;
    private static final int ROUNDS = 64;
    private static final int LENGTH_BYTES = 8;

    private static final int[] ROUND = {
        0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4,
                0xab1c5ed5,
        0xd807aa98, 0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7,
                0xc19bf174,
        0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc,
                0x76f988da,
        0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351,
                0x14292967,
        0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e,
                0x92722c85,
        0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624, 0xf40e3585,
                0x106aa070,
        0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f,
                0x682e6ff3,
        0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7,
                0xc67178f2
    };

    private final int[] state = {
        0x6a09e667,
        0xbb67ae85,
        0x3c6ef372,
        0xa54ff53a,
        0x510e527f,
        0x9b05688c,
        0x1f83d9ab,
        0x5be0cd19
    };
    private final int[] words = new int[ROUNDS];

    private Sha256() {}

    /**
     * The hash of some bytes.
     *
     * @param bytes any bytes
     * @return 64 hexadecimal digits, letters in lower case
     */
    public static String of(byte[] bytes) {
        Sha256 hash = new Sha256();
        int whole = bytes.length / BLOCK * BLOCK;
        for (int at = 0; at < whole; at += BLOCK) {
            hash.block(bytes, at);
        }
        byte[] last = last(bytes, whole);
        for (int at = 0; at < last.length; at += BLOCK) {
            hash.block(last, at);
        }
        return hash.digits();
    }

    /**
     * The hash of a text.
     *
     * @param text whole characters, without half a surrogate pair
     * @return the hash of its bytes in UTF-8
     */
    public static String of(String text) {
        return of(Utf8.bytes(text));
    }

    /** What is left, a one, zeros, and the length in bits: one block or two. */
    private static byte[] last(byte[] bytes, int from) {
        int left = bytes.length - from;
        byte[] last = new byte[left + 1 + LENGTH_BYTES <= BLOCK ? BLOCK : 2 * BLOCK];
        System.arraycopy(bytes, from, last, 0, left);
        last[left] = (byte) 0x80;
        long bits = 8L * bytes.length;
        for (int i = 0; i < LENGTH_BYTES; i++) {
            last[last.length - 1 - i] = (byte) (bits >>> (8 * i));
        }
        return last;
    }

    private void block(byte[] bytes, int from) {
        for (int i = 0; i < 16; i++) {
            int at = from + 4 * i;
            words[i] =
                    (bytes[at] & 255) << 24
                            | (bytes[at + 1] & 255) << 16
                            | (bytes[at + 2] & 255) << 8
                            | (bytes[at + 3] & 255);
        }
        for (int i = 16; i < ROUNDS; i++) {
            int early = words[i - 15];
            int late = words[i - 2];
            words[i] =
                    words[i - 16]
                            + (turn(early, 7) ^ turn(early, 18) ^ (early >>> 3))
                            + words[i - 7]
                            + (turn(late, 17) ^ turn(late, 19) ^ (late >>> 10));
        }
        mix();
    }

    private void mix() {
        int[] s = state.clone();
        for (int i = 0; i < ROUNDS; i++) {
            int choice = (s[4] & s[5]) ^ (~s[4] & s[6]);
            int most = (s[0] & s[1]) ^ (s[0] & s[2]) ^ (s[1] & s[2]);
            int first =
                    s[7]
                            + (turn(s[4], 6) ^ turn(s[4], 11) ^ turn(s[4], 25))
                            + choice
                            + ROUND[i]
                            + words[i];
            int second = (turn(s[0], 2) ^ turn(s[0], 13) ^ turn(s[0], 22)) + most;
            System.arraycopy(s, 0, s, 1, 7);
            s[4] += first;
            s[0] = first + second;
        }
        for (int i = 0; i < s.length; i++) {
            state[i] += s[i];
        }
    }

    private static int turn(int word, int by) {
        return (word >>> by) | (word << (32 - by));
    }

    private String digits() {
        StringBuilder out = new StringBuilder(DIGITS);
        for (int word : state) {
            for (int shift = 28; shift >= 0; shift -= 4) {
                out.append(HEX.charAt((word >>> shift) & 15));
            }
        }
        return out.toString();
    }
}
