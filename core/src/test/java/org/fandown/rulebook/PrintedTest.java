package org.fandown.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.junit.jupiter.api.Test;

class PrintedTest {
    /** Conversion of one unit into another and back, in double arithmetic. */
    private static final double ROUNDING = 1e-9;

    /** The expected figures are worked out by hand to so many digits. */
    private static final double WORKED_BY_HAND = 1e-4;

    @Test
    void figure_is_the_one_printed_for_the_unit_however_badly_the_pair_agrees() {
        Printed twenty = printed("3 psi", "20 kPa");
        Printed twentyOne = printed("3 psi", "21 kPa");

        assertThat(twenty.in(Unit.PSI)).isEqualTo(3);
        assertThat(twenty.in(Unit.KPA)).isEqualTo(20);
        assertThat(twentyOne.in(Unit.PSI)).isEqualTo(3);
        assertThat(twentyOne.in(Unit.KPA)).isEqualTo(21);
    }

    @Test
    void reading_in_bar_is_compared_with_the_kilopascals_printed() {
        assertThat(printed("60 psi", "420 kPa").in(Unit.BAR)).isEqualTo(4.2, within(ROUNDING));
    }

    @Test
    void reading_in_centimetres_or_metres_is_compared_with_the_millimetres_printed() {
        Printed limit = printed("2 in", "51 mm");

        assertThat(limit.in(Unit.CM)).isEqualTo(5.1, within(ROUNDING));
        assertThat(limit.in(Unit.METRE)).isEqualTo(0.051, within(ROUNDING));
    }

    @Test
    void unit_that_is_not_printed_is_converted_from_the_source_s_own() {
        assertThat(printed("60 psi").in(Unit.KPA)).isEqualTo(413.6854376, within(WORKED_BY_HAND));
        assertThat(printed("420 kPa").in(Unit.PSI)).isEqualTo(60.9158, within(WORKED_BY_HAND));
        assertThat(printed("40 ft", "12.2 m").in(Unit.INCH)).isEqualTo(480, within(ROUNDING));
    }

    @Test
    void first_figure_is_the_source_s_own_and_the_others_stand_in_brackets() {
        Printed limit = printed("21 kPa", "3 psi");

        assertThat(limit.own()).isEqualTo(Quantity.parse("21 kPa"));
        assertThat(limit).hasToString("21 kPa (3 psi)");
        assertThat(printed("3 psi")).hasToString("3 psi");
        assertThat(printed("6.9 bar", "690 kPa", "100 psi"))
                .hasToString("6.9 bar (690 kPa, 100 psi)");
    }

    @Test
    void figures_that_are_no_pair_are_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Printed(List.of()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> printed("3 psi", "3 s"))
                .withMessageContaining("3 s");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> printed("3 psi", "21 kPa", "4 psi"))
                .withMessageContaining("4 psi");
    }

    @Test
    void unit_of_another_dimension_is_refused() {
        Printed limit = printed("3 psi");

        assertThatIllegalArgumentException().isThrownBy(() -> limit.in(Unit.SECOND));
    }

    private static Printed printed(String... forms) {
        return new Printed(List.of(forms).stream().map(Quantity::parse).toList());
    }
}
