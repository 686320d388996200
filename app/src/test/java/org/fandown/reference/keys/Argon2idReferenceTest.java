package org.fandown.reference.keys;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HexFormat;
import org.fandown.app.keys.Argon2id;
import org.fandown.app.keys.Cost;
import org.fandown.app.keys.Passwords;
import org.fandown.reference.Source;
import org.junit.jupiter.api.Test;

class Argon2idReferenceTest {
    @Test
    @Source(
            work = "RFC 9106, Argon2 Memory-Hard Function for Password Hashing and Proof-of-Work",
            edition = "September 2021",
            where = "section 5.3, Argon2id test vectors",
            kind = Source.Kind.STANDARD,
            accessed = "2026-12-01",
            note = "read at second hand, as independent programs quote it in their tests")
    void the_vector_of_the_standard() {
        byte[] tag =
                Argon2id.hash(
                        bytes(32, 1),
                        new Argon2id.Beside(bytes(16, 2), bytes(8, 3), bytes(12, 4)),
                        new Cost(32, 3, 4),
                        32);
        assertThat(HexFormat.ofDelimiter(" ").formatHex(tag))
                .isEqualTo(
                        "0d 64 0d f5 8d 78 76 6c 08 c0 37 a3 4a 8b 53 c9"
                                + " d0 1e f0 45 2d 75 b6 5e b5 25 20 e9 6b 01 e6 59");
    }

    @Test
    @Source(
            work = "Argon2 reference implementation, P-H-C/phc-winner-argon2",
            edition = "version 0x13",
            where = "src/test.c, Argon2id tests with 2 passes, 2^16 KiB and 1 lane",
            kind = Source.Kind.OTHER_PROGRAM,
            accessed = "2026-12-01",
            note = "read at second hand, as independent programs quote it in their tests")
    void what_the_reference_program_kept_is_of_the_same_password() {
        String kept =
                "$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ"
                        + "$CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc";
        assertThat(Passwords.fits("password", kept)).isTrue();
        assertThat(Passwords.fits("passwore", kept)).isFalse();
    }

    @Test
    @Source(
            work = "RFC 9106, Argon2 Memory-Hard Function for Password Hashing and Proof-of-Work",
            edition = "September 2021",
            where = "section 4, second recommended option",
            kind = Source.Kind.STANDARD,
            accessed = "2026-12-01",
            note =
                    "from memory: Argon2id, 3 passes, 4 lanes, 2^16 KiB, salt 128 bits, tag 256 bits")
    void cost_is_the_one_recommended_where_memory_is_not_plenty() {
        String[] parts = Passwords.kept("a gate that never squeaks").split("\\$", -1);
        assertThat(parts[1]).isEqualTo("argon2id");
        assertThat(parts[3]).isEqualTo("m=65536,t=3,p=4");
        assertThat(parts[4]).hasSize(22); // 16 bytes in base64
        assertThat(parts[5]).hasSize(43); // 32 bytes in base64
    }

    private static byte[] bytes(int count, int value) {
        byte[] bytes = new byte[count];
        Arrays.fill(bytes, (byte) value);
        return bytes;
    }
}
