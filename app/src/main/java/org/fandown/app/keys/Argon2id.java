package org.fandown.app.keys;

import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/**
 * Argon2id of RFC 9106, version 0x13.
 *
 * <p>Source: RFC 9106, Argon2 Memory-Hard Function for Password Hashing and Proof-of-Work.
 */
public final class Argon2id {
    private Argon2id() {}

    /**
     * What goes into a hash beside the password.
     *
     * @param salt 8 bytes or more, another for each password
     * @param secret may be empty
     * @param data may be empty
     */
    @SuppressWarnings("ArrayRecordComponent") // Never compared.
    public record Beside(byte[] salt, byte[] secret, byte[] data) {
        /** A salt alone. */
        public static Beside salt(byte[] salt) {
            return new Beside(salt, new byte[0], new byte[0]);
        }
    }

    /**
     * The hash of a password.
     *
     * @param password its bytes
     * @param beside what goes in beside it
     * @param cost how much work it is
     * @param length of the hash, 4 bytes or more
     */
    public static byte[] hash(byte[] password, Beside beside, Cost cost, int length) {
        Argon2BytesGenerator generator = new Argon2BytesGenerator();
        generator.init(
                new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                        .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                        .withMemoryAsKB(cost.memory())
                        .withIterations(cost.passes())
                        .withParallelism(cost.lanes())
                        .withSalt(beside.salt())
                        .withSecret(beside.secret())
                        .withAdditional(beside.data())
                        .build());
        byte[] hash = new byte[length];
        generator.generateBytes(password, hash);
        return hash;
    }
}
