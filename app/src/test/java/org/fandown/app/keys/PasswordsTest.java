package org.fandown.app.keys;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class PasswordsTest {
    private static final String GOOD = "caf\u00e9 at the gravel pit";

    @Test
    void password_fits_what_was_kept_of_it_however_its_letters_were_typed() {
        String kept = Passwords.kept(GOOD);
        assertThat(kept).doesNotContain("gravel");
        assertThat(Passwords.fits(GOOD, kept)).isTrue();
        assertThat(Passwords.fits(GOOD.replace("\u00e9", "e\u0301"), kept)).isTrue();
        assertThat(Passwords.fits(GOOD + " ", kept)).isFalse();
        assertThat(Passwords.kept(GOOD)).as("another salt").isNotEqualTo(kept);
    }

    @Test
    void password_that_is_easily_guessed_is_refused_with_what_is_allowed() {
        assertThat(Passwords.problem("123456789", "Ines").orElseThrow()).contains("10 to 200");
        assertThat(Passwords.problem("x".repeat(201), "Ines").orElseThrow()).contains("10 to 200");
        assertThat(Passwords.problem("aabbccaabbcc", "Ines").orElseThrow()).contains("guess");
        assertThat(Passwords.problem("ines marlowe", "Ines Marlowe").orElseThrow())
                .contains("guess");
        assertThat(Passwords.problem("1234567890", "Ines")).isEmpty();
        assertThat(Passwords.problem(GOOD, "Ines")).isEmpty();
    }

    @Test
    void what_is_no_kept_password_is_never_taken_for_one() {
        for (String bad : new String[] {"", "$argon2i$v=19$m=8,t=1,p=1$c2FsdHNhbHQ$aGFzaA", GOOD}) {
            assertThatThrownBy(() -> Passwords.fits(GOOD, bad))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageNotContaining("gravel");
        }
    }
}
