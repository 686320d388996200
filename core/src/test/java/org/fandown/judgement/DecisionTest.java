package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecisionTest {
    private static final Optional<Edge> NONE = Optional.empty();

    @ParameterizedTest(name = "{0} to {1} at most 3 is {2}, below 3 is {3}")
    @CsvSource({
        "2.0, 2.9,  MET,          MET",
        "2.0, 3.0,  MET,          UNDETERMINED",
        "3.0, 3.0,  MET,          NOT_MET",
        "2.9, 3.1,  UNDETERMINED, UNDETERMINED",
        "3.0, 3.1,  UNDETERMINED, NOT_MET",
        "3.1, 4.0,  NOT_MET,      NOT_MET"
    })
    void upper_edge(double low, double high, Status atMost, Status lessThan) {
        assertThat(Decision.decide(low, high, NONE, edge(3, true))).isEqualTo(atMost);
        assertThat(Decision.decide(low, high, NONE, edge(3, false))).isEqualTo(lessThan);
    }

    @ParameterizedTest(name = "{0} to {1} at least 60 is {2}, above 60 is {3}")
    @CsvSource({
        "61, 62, MET,          MET",
        "60, 61, MET,          UNDETERMINED",
        "60, 60, MET,          NOT_MET",
        "59, 61, UNDETERMINED, UNDETERMINED",
        "59, 60, UNDETERMINED, NOT_MET",
        "58, 59, NOT_MET,      NOT_MET"
    })
    void lower_edge(double low, double high, Status atLeast, Status moreThan) {
        assertThat(Decision.decide(low, high, edge(60, true), NONE)).isEqualTo(atLeast);
        assertThat(Decision.decide(low, high, edge(60, false), NONE)).isEqualTo(moreThan);
    }

    @ParameterizedTest(name = "{0} to {1} within 105 to 135 is {2}")
    @CsvSource({
        "105, 135, MET",
        "104, 106, UNDETERMINED",
        "134, 136, UNDETERMINED",
        "100, 140, UNDETERMINED",
        "100, 104, NOT_MET",
        "136, 137, NOT_MET"
    })
    void both_edges(double low, double high, Status expected) {
        assertThat(Decision.decide(low, high, edge(105, true), edge(135, true)))
                .isEqualTo(expected);
    }

    @Test
    void rounding_of_double_arithmetic_neither_passes_nor_fails_anything() {
        double threeByAddition = 0.1 + 0.2 + 2.7 - 1e-16;
        double slightlyMore = 3 + 1e-12;

        assertThat(threeByAddition).isNotEqualTo(slightlyMore);
        assertThat(Decision.decide(slightlyMore, slightlyMore, NONE, edge(3, true)))
                .isEqualTo(Status.MET);
        assertThat(Decision.decide(threeByAddition, threeByAddition, NONE, edge(3, false)))
                .isEqualTo(Status.NOT_MET);
        assertThat(Decision.decide(3.00001, 3.00001, NONE, edge(3, true)))
                .isEqualTo(Status.NOT_MET);
    }

    @Test
    void worse_of_two_is_the_one_that_leaves_less_hope() {
        assertThat(Status.MET.worse(Status.UNDETERMINED)).isEqualTo(Status.UNDETERMINED);
        assertThat(Status.NOT_MET.worse(Status.UNDETERMINED)).isEqualTo(Status.NOT_MET);
        assertThat(Status.SPOILED.worse(Status.NOT_CHECKED)).isEqualTo(Status.SPOILED);
    }

    private static Optional<Edge> edge(double value, boolean passes) {
        return Optional.of(new Edge(value, passes));
    }
}
