package org.fandown.app.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.Optional;
import org.fandown.app.keys.SampleKeys;
import org.fandown.app.keys.SiteKey;
import org.fandown.app.keys.SiteKeyFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SigningTest {
    private static final OffsetDateTime MOMENT = OffsetDateTime.parse("2026-12-01T08:30:00-05:00");

    @TempDir private static Path folder;

    private final byte[] pdf = PrintedReport.of(Samples.sample(Samples.QUEBEC_TRUCK)).bytes();

    private static SiteKey key() {
        return SiteKeyFile.openOrMake(folder, "North yard", Optional.empty());
    }

    @Test
    void signature_stands_behind_the_bytes_of_the_report() throws IOException {
        byte[] signed = Signing.sign(pdf, key(), MOMENT);

        assertThat(Arrays.copyOf(signed, pdf.length)).isEqualTo(pdf);
        assertThat(Signing.sign(pdf, key(), MOMENT)).isEqualTo(signed);
    }

    @Test
    void other_program_finds_the_signature_valid_and_over_all() throws IOException {
        String said = PrintedReport.of(Signing.sign(pdf, key(), MOMENT)).signatures();

        assertThat(said)
                .contains("Signature Validation: Signature is Valid.")
                .contains("Total document signed")
                .contains("Signature Type: ETSI.CAdES.detached")
                .contains("Signing Hash Algorithm: SHA-256")
                .contains("Signer Certificate Common Name: North yard")
                .contains("Signing Time: Dec 01 2026 13:30:00");
    }

    @Test
    void other_program_accepts_a_key_of_the_sites_own_with_its_chain() throws Exception {
        SiteKey own = SampleKeys.ellipticWithChain(folder);

        String said = PrintedReport.of(Signing.sign(pdf, own, MOMENT)).signatures();

        assertThat(said)
                .contains("Signature Validation: Signature is Valid.")
                .contains("Signer Certificate Common Name: Own yard");
    }

    @Test
    void other_program_finds_a_changed_byte() throws IOException {
        byte[] signed = Signing.sign(pdf, key(), MOMENT);
        signed[pdf.length / 2] ^= 1;

        assertThat(PrintedReport.of(signed).signatures())
                .contains("Signature Validation: Digest Mismatch.");
    }

    @Test
    void signed_report_still_keeps_the_standard() throws IOException {
        byte[] signed = Signing.sign(pdf, key(), MOMENT);

        assertThat(VeraPdf.claim(signed)).isEqualTo("3a");
        assertThat(VeraPdf.problems(signed, "3a")).isEmpty();
    }
}
