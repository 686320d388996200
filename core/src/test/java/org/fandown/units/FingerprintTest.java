package org.fandown.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FingerprintTest {
    private static long of(double... numbers) {
        Fingerprint print = new Fingerprint();
        print.add(numbers);
        return print.value();
    }

    @Test
    void every_bit_and_the_order_count() {
        assertThat(of(1, 2)).isEqualTo(of(1, 2)).isNotEqualTo(of(2, 1));
        assertThat(of(1)).isNotEqualTo(of(Math.nextUp(1.0)));
        assertThat(of(-1)).isNotEqualTo(of(1));
        assertThat(of()).isNotEqualTo(of(0));
    }

    @Test
    void the_sign_of_zero_does_not() {
        assertThat(of(-0.0, 3)).isEqualTo(of(0.0, 3));
    }

    @Test
    void letters_count() {
        Fingerprint one = new Fingerprint();
        one.add("ab");
        Fingerprint other = new Fingerprint();
        other.add("ba");

        assertThat(one.value()).isNotEqualTo(other.value());
    }
}
