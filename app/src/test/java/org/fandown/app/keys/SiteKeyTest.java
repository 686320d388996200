package org.fandown.app.keys;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import java.util.Random;
import org.fandown.app.files.Sha256;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SiteKeyTest {
    private static final byte[] BYTES = "signed".getBytes(StandardCharsets.US_ASCII);

    @TempDir private static Path folder;

    private static SiteKey key() {
        return SiteKeyFile.openOrMake(folder, "North yard", Optional.empty());
    }

    private static Checked check(byte[] bytes, byte[] signature) {
        return Checked.of(Sha256.begin().digest(bytes), signature);
    }

    @Test
    void key_is_made_once_for_the_owner_alone() throws IOException {
        SiteKey first = key();

        assertThat(key().certificate()).isEqualTo(first.certificate());
        assertThat(Certificates.name(first.certificate())).isEqualTo("North yard");
        assertThat(Certificates.read(folder.resolve(SiteKeyFile.CERTIFICATE)))
                .isEqualTo(first.certificate());
        for (String secret : new String[] {SiteKeyFile.NAME, "site-key.password"}) {
            assertThat(
                            PosixFilePermissions.toString(
                                    Files.getPosixFilePermissions(folder.resolve(secret))))
                    .isEqualTo("rw-------");
        }
    }

    @Test
    void chosen_password_is_kept_nowhere(@TempDir Path other) {
        SiteKeyFile.openOrMake(other, "South yard", Optional.of("sesame".toCharArray()));

        assertThat(other.resolve("site-key.password")).doesNotExist();
        assertThat(SiteKeyFile.open(other.resolve(SiteKeyFile.NAME), "sesame".toCharArray()))
                .isNotNull();
        assertThatThrownBy(
                        () ->
                                SiteKeyFile.open(
                                        other.resolve(SiteKeyFile.NAME), "open".toCharArray()))
                .isInstanceOf(KeyException.class)
                .hasMessageContaining("check the file and its password");
    }

    @Test
    void signature_tells_its_signer() {
        byte[] signature = key().sign(BYTES);

        assertThat(check(BYTES, signature).signer()).contains(key().certificate());
        assertThat(key().sign(BYTES)).isEqualTo(signature);
    }

    @Test
    void other_bytes_are_not_what_was_signed() {
        Checked checked = check("Signed".getBytes(StandardCharsets.US_ASCII), key().sign(BYTES));

        assertThat(checked.signer()).isEmpty();
        assertThat(checked.problem()).contains("its bytes were changed");
    }

    @Test
    void every_changed_bit_of_a_signature_is_found() {
        byte[] signature = java.util.Arrays.copyOf(key().sign(BYTES), 4096);
        Random random = new Random(7);

        for (int i = 0; i < 1500; i++) {
            byte[] changed = signature.clone();
            int at = random.nextInt(changed.length);
            changed[at] ^= (byte) (1 << random.nextInt(8));
            assertThat(check(BYTES, changed).signer()).as("byte " + at).isEmpty();
        }
    }

    @Test
    void key_of_the_sites_own_signs_with_its_chain() throws Exception {
        SiteKey own = SampleKeys.ellipticWithChain(folder);

        byte[] signature = own.sign(BYTES);

        assertThat(check(BYTES, signature).signer()).contains(own.certificate());
        byte[] changed = signature.clone();
        int at = new String(signature, StandardCharsets.ISO_8859_1).indexOf("Voucher");
        changed[at] = 'W';
        assertThat(check(BYTES, changed).signer()).isEmpty();
    }

    @Test
    void what_is_no_certificate_is_refused_with_the_next_step() throws IOException {
        Path file = Files.writeString(folder.resolve("no.pem"), "no certificate");

        assertThatThrownBy(() -> Certificates.read(file))
                .isInstanceOf(KeyException.class)
                .hasMessageContaining("no.pem")
                .hasMessageContaining("Next: ask the site");
    }
}
