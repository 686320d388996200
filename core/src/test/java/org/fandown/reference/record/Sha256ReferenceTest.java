package org.fandown.reference.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.fandown.record.Sha256;
import org.fandown.reference.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class Sha256ReferenceTest {
    private static final int MILLION = 1_000_000;

    @Source(
            work = "NIST, Secure Hash Standard, example values of SHA-256 (from FIPS 180-2)",
            edition = "2002",
            where = "Appendix B.1 and B.2, and the hash of the empty message",
            kind = Source.Kind.STANDARD,
            accessed = "2026-12-01",
            note = "read at second hand, in works that quote them")
    @ParameterizedTest
    @CsvSource({
        "abc, ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq,"
                + " 248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
        "'', e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
    })
    void messages_have_the_hash_published(String message, String hash) {
        assertThat(Sha256.of(message)).isEqualTo(hash);
    }

    @Source(
            work = "NIST, Secure Hash Standard, example values of SHA-256 (from FIPS 180-2)",
            edition = "2002",
            where = "Appendix B.3: a million times the letter a",
            kind = Source.Kind.STANDARD,
            accessed = "2026-12-01",
            note = "read at second hand, in works that quote them")
    @Test
    void a_million_letters_have_the_hash_published() {
        assertThat(Sha256.of("a".repeat(MILLION)))
                .isEqualTo("cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
    }

    @Source(
            work = "OpenJDK, java.security.MessageDigest",
            edition = "17",
            where = "SHA-256 of every length from 0 to 300 bytes, and of letters outside ASCII",
            kind = Source.Kind.OTHER_PROGRAM,
            accessed = "2026-12-01")
    @Test
    void every_length_has_the_hash_of_another_program() throws NoSuchAlgorithmException {
        MessageDigest other = MessageDigest.getInstance("SHA-256");
        for (int length = 0; length <= 300; length++) {
            byte[] bytes = new byte[length];
            for (int i = 0; i < length; i++) {
                bytes[i] = (byte) (i * 37 + length);
            }
            assertThat(Sha256.of(bytes)).isEqualTo(HexFormat.of().formatHex(other.digest(bytes)));
        }
        String text = "é € 😂 \u0080 \u07ff \u0800 \uffff";
        assertThat(Sha256.of(text))
                .isEqualTo(
                        HexFormat.of()
                                .formatHex(other.digest(text.getBytes(StandardCharsets.UTF_8))));
    }
}
