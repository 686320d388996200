package org.fandown.app.files;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256, which every Java has. */
public final class Sha256 {
    private Sha256() {}

    /** Begins a digest. */
    public static MessageDigest begin() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }

    /** Ends a digest: 64 hexadecimal digits. */
    public static String end(MessageDigest digest) {
        return HexFormat.of().formatHex(digest.digest());
    }

    /** The digest of some bytes: 64 hexadecimal digits. */
    public static String of(byte[] bytes) {
        MessageDigest digest = begin();
        digest.update(bytes);
        return end(digest);
    }
}
