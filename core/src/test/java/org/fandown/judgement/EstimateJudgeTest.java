package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.fandown.yard.Packs.rule;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.evidence.Circumstances;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.Observations;
import org.fandown.evidence.Reading;
import org.fandown.units.Quantity;
import org.fandown.yard.Packs;
import org.fandown.yard.Trial;
import org.fandown.yard.Trucks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Estimates are weighed by the doubt they carry, not by the step of an instrument. */
class EstimateJudgeTest {
    private static final double ROUNDING = 1e-9;

    private static final String WARNING =
            rule(
                    "xa.warning",
                    "low-air-warning",
                    "'limit': {'at-least': ['55 psi', '380 kPa']}, 'words': 'At 55 psi or more.'");

    private static final String LOSS =
            rule(
                    "xa.loss",
                    "air-loss-applied",
                    "'limit': {'at-most': ['3 psi', '21 kPa'], 'per': '1 min'}, 'words':"
                            + " 'At most 3 psi in one minute.'");

    private static final String LOSS_IN_THREE =
            rule(
                    "xa.loss",
                    "air-loss-applied",
                    "'limit': {'at-most': ['3 psi', '21 kPa'], 'per': '3 min'}, 'words':"
                            + " 'At most 3 psi in three minutes.'");

    @ParameterizedTest(name = "{0} within {1}: {2}")
    @CsvSource({
        "58 psi, 2 psi, MET",
        "57 psi, 2 psi, MET",
        "56.9 psi, 2 psi, UNDETERMINED",
        "55 psi, 0 psi, MET",
        "54 psi, 2 psi, UNDETERMINED",
        "52.9 psi, 2 psi, NOT_MET",
        "400 kPa, 20 kPa, MET",
        "399 kPa, 20 kPa, UNDETERMINED",
        "359 kPa, 20 kPa, NOT_MET"
    })
    void doubt_of_the_estimate_decides(String value, String within, Status expected) {
        Finding finding =
                judged(WARNING, Check.LOW_AIR_WARNING, value, within, Optional.empty()).only();

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.measured().orElseThrow().uncertainty())
                .isEqualTo(Quantity.parse(within).value(), within(ROUNDING));
    }

    @ParameterizedTest(name = "{0} within {1} in {2}: {3}")
    @CsvSource({
        "2 psi, 0.9 psi, 60 s, MET",
        "2.5 psi, 0.9 psi, 60 s, UNDETERMINED",
        "4 psi, 0.9 psi, 60 s, NOT_MET",
        "4 psi, 1.8 psi, 2 min, MET",
        "-0.5 psi, 0.2 psi, 60 s, MET"
    })
    void loss_is_reckoned_for_the_time_of_the_rule(
            String value, String within, String over, Status expected) {
        Finding finding =
                judged(
                                LOSS,
                                Check.AIR_LOSS_APPLIED,
                                value,
                                within,
                                Optional.of(Quantity.parse(over)))
                        .only();

        assertThat(finding.status()).isEqualTo(expected);
    }

    @Test
    void loss_in_a_minute_is_three_times_that_in_three() {
        Measurement loss =
                judged(
                                LOSS_IN_THREE,
                                Check.AIR_LOSS_APPLIED,
                                "1.5 psi",
                                "0.2 psi",
                                Optional.of(Quantity.parse("60 s")))
                        .only()
                        .measured()
                        .orElseThrow();

        assertThat(loss.value()).isEqualTo(3 * 1.5, within(ROUNDING));
        assertThat(loss.uncertainty()).isEqualTo(3 * 0.2, within(ROUNDING));
    }

    @Test
    void doubt_below_nothing_or_in_another_unit_is_the_callers_mistake() {
        assertThatIllegalArgumentException().isThrownBy(() -> estimate("5 psi", "-1 psi"));
        assertThatIllegalArgumentException().isThrownBy(() -> estimate("5 psi", "1 kPa"));
    }

    private static Reading estimate(String value, String within) {
        return estimate(Check.LOW_AIR_WARNING, value, within, Optional.empty());
    }

    private static Reading estimate(
            Check check, String value, String within, Optional<Quantity> over) {
        return new Reading.Estimate(
                check,
                Quantity.parse(value),
                Quantity.parse(within),
                over,
                Circumstances.NONE,
                "from a trace");
    }

    private static Trial judged(
            String rule, Check check, String value, String within, Optional<Quantity> over) {
        Inspection blank = Trial.inspection("XA", Trucks.TRUCK, "");
        Inspection inspection =
                new Inspection(
                        blank.place(),
                        blank.moment(),
                        blank.vehicle(),
                        blank.report(),
                        blank.instruments(),
                        blank.conditionsAsPrinted(),
                        Observations.of(Map.of(check, estimate(check, value, within, over))),
                        List.of(),
                        false);
        return Trial.of(Packs.of(rule), inspection);
    }
}
