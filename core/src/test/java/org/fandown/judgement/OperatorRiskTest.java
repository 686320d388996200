package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

class OperatorRiskTest {
    private static final OperatorRisk ONE_MINOR = new OperatorRisk(0, 0, 1);

    @Test
    void operator_without_defects_weighs_nothing() {
        assertThat(OperatorRisk.weighed(List.of())).isZero();
        assertThat(OperatorRisk.weighed(List.of(new OperatorRisk(0, 0, 0)))).isZero();
    }

    @Test
    void greatest_numbers_do_not_overflow() {
        int most = Integer.MAX_VALUE;

        assertThat(OperatorRisk.weighed(List.of(new OperatorRisk(most, most, most))))
                .isEqualTo(3L * 51 * most);
    }

    @Test
    void negative_number_of_defects_is_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new OperatorRisk(-1, 0, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new OperatorRisk(0, -1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new OperatorRisk(0, 0, -1));
    }

    @Test
    void fourth_year_is_refused() {
        List<OperatorRisk> four = List.of(ONE_MINOR, ONE_MINOR, ONE_MINOR, ONE_MINOR);

        assertThatIllegalArgumentException().isThrownBy(() -> OperatorRisk.weighed(four));
    }
}
