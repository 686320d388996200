package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.fandown.check.Severity;
import org.fandown.check.Verdict;
import org.fandown.judgement.Defect;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Status;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WesternAustraliaReferenceTest {
    private static final String TODAY = "2026-03-02";
    private static final String WORK = "Road Traffic (Vehicles) Regulations 2014 (WA)";
    private static final String EDITION = "as amended, Gazette of 29 March 2019 p. 969";

    @Source(
            work = WORK,
            edition = EDITION,
            where = "reg. 334 (1)(a)",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0} from empty to {1} with cut-out {2}: {3}")
    @CsvSource({
        "300 s, 680 kPa, 850 kPa, MET, 'reg. 334 (1)(a): 680 = 0.80 x 850, 300 s = 5 min'",
        "301 s, 680 kPa, 850 kPa, NOT_MET, reg. 334 (1)(a)",
        "5 min, 680 kPa, 850 kPa, MET, reg. 334 (1)(a)",
        "300 s, 679 kPa, 850 kPa, SPOILED, 'reg. 334 (1)(a): 679 is less than 0.80 x 850'"
    })
    void compressor_fills_the_empty_reserve_to_80_percent_of_cut_out_in_5_minutes(
            String time, String reached, String cutOut, Status expected, String where) {
        Judged judged =
                truck(
                        """
                        readings:
                          governor-cut-out: %s
                          build-up-from-empty: { time: %s, to: %s }
                        """
                                .formatted(cutOut, time, reached));

        Finding finding = judged.finding("au-wa.build-up-from-empty");
        assertThat(finding.status()).isEqualTo(expected);
        assertThat(Judged.section(finding)).isEqualTo("reg. 334 (1)(a)");
    }

    @Source(
            work = WORK,
            edition = EDITION,
            where = "reg. 334 (1)(a)",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void compressor_that_takes_a_second_too_long_is_a_defect_of_the_vehicle() {
        Judged judged =
                truck(
                        """
                        readings:
                          governor-cut-out: 850 kPa
                          build-up-from-empty: { time: 301 s, to: 680 kPa }
                        """);

        assertThat(judged.finding("au-wa.build-up-from-empty").why().reason())
                .contains("301 s")
                .contains("5 min");
        assertThat(judged.judgement().defects())
                .extracting(Defect::component, Defect::severity)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(
                                "build-up-from-empty", Optional.of(Severity.MAJOR)));
        assertThat(judged.verdict()).isEqualTo(Verdict.NOT_FIT_TO_MOVE);
    }

    @Source(
            work = WORK,
            edition = EDITION,
            where = "reg. 334 (1)(b)",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0} left of cut-out 850 kPa: {1}")
    @CsvSource({
        "425 kPa, MET, 'reg. 334 (1)(b): half of 850 is 425'",
        "424 kPa, NOT_MET, reg. 334 (1)(b)"
    })
    void five_service_applications_leave_half_of_cut_out(
            String after, Status expected, String where) {
        Finding finding =
                truck(
                                """
                                readings:
                                  governor-cut-out: 850 kPa
                                  reservoir-reserve: { before: 850 kPa, after: %s, applications: 5 }
                                """
                                        .formatted(after))
                        .finding("au-wa.reservoir-reserve");

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains(after).contains("here 425 kPa");
        assertThat(Judged.section(finding)).isEqualTo("reg. 334 (1)(b)");
    }

    @Source(
            work = WORK,
            edition = EDITION,
            where = "reg. 334 (1)(d)",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "springs at {0}, warning at {1}: {2}")
    @CsvSource({
        "400 kPa, 380 kPa, NOT_MET, 'reg. 334 (1)(d): the springs come first as pressure falls'",
        "380 kPa, 400 kPa, MET, reg. 334 (1)(d)"
    })
    void spring_brakes_do_not_act_before_the_low_air_warning(
            String springs, String warning, Status expected, String where) {
        Finding finding =
                truck(
                                """
                                readings:
                                  low-air-warning: %s
                                  spring-brake-start: %s
                                """
                                        .formatted(warning, springs))
                        .finding("au-wa.spring-brake-start");

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains(springs).contains("here " + warning);
        assertThat(Judged.section(finding)).isEqualTo("reg. 334 (1)(d)");
    }

    private static Judged truck(String evidence) {
        return Judged.inspection("AU-WA", TODAY, OverseasVehicles.TRUCK, evidence);
    }
}
