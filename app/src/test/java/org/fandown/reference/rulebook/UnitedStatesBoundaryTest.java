package org.fandown.reference.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.fandown.check.PlaceCode;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class UnitedStatesBoundaryTest {
    private static final BoundaryTriples TABLE =
            BoundaryTriples.read(
                    "united-states.csv", UnitedStatesBoundaryTest::isInTheUnitedStates);

    private static boolean isInTheUnitedStates(PlaceCode place) {
        return place.code().equals("US") || place.code().startsWith("US-");
    }

    static List<Triple> rows() {
        return TABLE.rows();
    }

    @Source(
            work = "Federal code, model driver manual and state handbooks of the United States",
            edition = "as the column where of the table names them",
            where = "column where of each row",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "rows that rest on second-hand text or memory say so in the column")
    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void readings_at_and_beside_each_printed_limit_are_judged_as_printed(Triple row) {
        assertThat(BoundaryTriples.judge(row))
                .as(row.where())
                .containsExactlyElementsOf(row.expected());
    }

    @Source(
            work = "The rule packs of the United States and its states",
            edition = "as they come with the program",
            where = "every numeric limit",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void every_numeric_rule_of_the_united_states_has_a_row_for_each_printed_figure() {
        assertThat(TABLE.uncovered(Map.of())).isEmpty();
    }
}
