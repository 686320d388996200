package org.fandown.app.keys;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.text.Normalizer;
import java.util.Base64;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is kept of passwords: Argon2id with a salt of its own for each, as text in the form that
 * argon2 programs share, so that its cost can be raised later. Each hash takes 64 MiB for its
 * moment; more than {@value #AT_ONCE} at a time wait. Safe for use by several threads.
 */
public final class Passwords {
    /** Signs a password has at least. */
    public static final int SHORTEST = 10;

    /** Signs a password has at most. */
    public static final int LONGEST = 200;

    private static final int AT_ONCE = 2;
    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;
    private static final Pattern TEXT =
            Pattern.compile(
                    "\\$argon2id\\$v=19\\$m=(\\d{1,7}),t=(\\d{1,3}),p=(\\d{1,2})"
                            + "\\$([A-Za-z0-9+/]+)\\$([A-Za-z0-9+/]+)");
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final Semaphore PLACES = new Semaphore(AT_ONCE, true);

    private Passwords() {}

    /**
     * Why a new password is not good enough, empty if it is.
     *
     * @param password the new one
     * @param name of the account, which must not be the password
     */
    public static Optional<String> problem(String password, String name) {
        int length = password.codePointCount(0, password.length());
        if (length < SHORTEST || length > LONGEST) {
            return Optional.of(
                    "The password has "
                            + length
                            + " signs. Allowed: "
                            + SHORTEST
                            + " to "
                            + LONGEST
                            + ". Next: take a sentence that only you would think of.");
        }
        boolean same = password.strip().equalsIgnoreCase(name.strip());
        if (same || password.codePoints().distinct().count() < 4) {
            return Optional.of(
                    "The password is too easy to guess. Allowed: another than the name, of at least"
                            + " 4 different signs. Next: take a sentence that only you would think"
                            + " of.");
        }
        return Optional.empty();
    }

    /** What is to be kept of a password: {@code $argon2id$v=19$m=65536,t=3,p=4$SALT$HASH}. */
    public static String kept(String password) {
        byte[] salt = new byte[SALT_BYTES];
        RANDOM.nextBytes(salt);
        Cost cost = Cost.USUAL;
        return "$argon2id$v=19$m=%d,t=%d,p=%d$%s$%s"
                .formatted(
                        cost.memory(),
                        cost.passes(),
                        cost.lanes(),
                        base64(salt),
                        base64(hash(password, salt, cost, HASH_BYTES)));
    }

    /**
     * Whether a password is the one of which this was kept. Takes as long for a wrong one.
     *
     * @throws IllegalArgumentException if this was never kept of a password
     */
    public static boolean fits(String password, String kept) {
        Matcher parts = TEXT.matcher(kept);
        if (!parts.matches()) {
            throw new IllegalArgumentException("What the store has is of no password.");
        }
        Cost cost = new Cost(number(parts, 1), number(parts, 2), number(parts, 3));
        byte[] wanted = Base64.getDecoder().decode(parts.group(5));
        byte[] salt = Base64.getDecoder().decode(parts.group(4));
        return MessageDigest.isEqual(wanted, hash(password, salt, cost, wanted.length));
    }

    /** Spends the time that {@link #fits} takes, for a name that nobody has. */
    public static void spend(String password) {
        hash(password, new byte[SALT_BYTES], Cost.USUAL, HASH_BYTES);
    }

    private static int number(Matcher parts, int group) {
        return Integer.parseInt(parts.group(group));
    }

    /** Keyboards write the same letter in several ways; composed it is one. */
    private static byte[] hash(String password, byte[] salt, Cost cost, int length) {
        byte[] bytes =
                Normalizer.normalize(password, Normalizer.Form.NFC)
                        .getBytes(StandardCharsets.UTF_8);
        PLACES.acquireUninterruptibly();
        try {
            return Argon2id.hash(bytes, Argon2id.Beside.salt(salt), cost, length);
        } finally {
            PLACES.release();
        }
    }

    private static String base64(byte[] bytes) {
        return Base64.getEncoder().withoutPadding().encodeToString(bytes);
    }
}
