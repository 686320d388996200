package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import org.fandown.check.Verdict;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Status;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AustraliaReferenceTest {
    private static final String TODAY = "2026-03-02";
    private static final String STEPS =
            "Australian heavy-vehicle inspection steps: air brake system integrity";
    private static final String ADJUSTMENT =
            "Australian heavy-vehicle inspection steps: brake adjustment";
    private static final String EDITION = "reprint of 2008, issuer not named there";
    private static final String NOTE = "read at second hand, in the reprint";

    @Source(
            work = STEPS,
            edition = EDITION,
            where = "step 4",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25",
            note = NOTE)
    @ParameterizedTest(name = "{0}: {1} in a minute with brakes applied: {2}")
    @CsvSource({
        "alone, 20 kPa, 20 kPa, MET, step 4",
        "alone, 21 kPa, 20 kPa, NOT_MET, step 4",
        "two trailers, 30 kPa, 30 kPa, MET, 'step 4: 20 + 2 x 5 = 30'",
        "two trailers, 31 kPa, 30 kPa, NOT_MET, 'step 4: 20 + 2 x 5 = 30'"
    })
    void applied_brakes_lose_20_kpa_a_minute_and_5_more_for_each_trailer(
            String combination, String loss, String limit, Status expected, String where) {
        Finding finding =
                judged(
                                combination.equals("alone")
                                        ? OverseasVehicles.TRUCK
                                        : OverseasVehicles.TWO_TRAILERS,
                                "readings: { air-loss-applied: { loss: %s, time: 1 min } }"
                                        .formatted(loss))
                        .finding("au.air-loss-applied");

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains(loss).contains("here " + limit);
        assertThat(Judged.section(finding)).isEqualTo("step 4");
    }

    @Source(
            work = STEPS,
            edition = EDITION,
            where = "step 5",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25",
            note = NOTE)
    @ParameterizedTest(name = "{0} in a minute with brakes released: {1}")
    @CsvSource({"15 kPa, MET, step 5", "15.1 kPa, NOT_MET, step 5"})
    void released_brakes_lose_15_kpa_a_minute(String loss, Status expected, String where) {
        Judged judged =
                judged(
                        OverseasVehicles.TRUCK,
                        "readings: { air-loss-released: { loss: %s, time: 1 min } }"
                                .formatted(loss));

        Finding finding = judged.finding("au.air-loss-released");
        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains(loss).contains("here 15 kPa");
        assertThat(Judged.section(finding)).isEqualTo("step 5");
        assertThat(judged.verdict() == Verdict.NOT_FIT_TO_MOVE)
                .isEqualTo(expected == Status.NOT_MET);
    }

    @Source(
            work = STEPS,
            edition = EDITION,
            where = "step 1",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25",
            note = NOTE)
    @ParameterizedTest(name = "first warning at {0}: {1}")
    @CsvSource({"415 kPa, NOT_MET, step 1", "420 kPa, MET, step 1"})
    void vehicle_built_to_adr_35_warns_by_420_kpa(String warning, Status expected, String where) {
        Judged judged =
                judged(
                        OverseasVehicles.ADR_35_TRUCK,
                        "readings: { low-air-warning: %s }".formatted(warning));

        Finding finding = judged.finding("au.low-air-warning.adr-35");
        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains(warning).contains("at least 420 kPa");
        assertThat(Judged.section(finding)).isEqualTo("step 1");
        assertThat(judged.findings("au.low-air-warning.older")).isEmpty();
    }

    @Source(
            work = STEPS,
            edition = EDITION,
            where = "step 6",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25",
            note = NOTE)
    @ParameterizedTest(name = "{0} left of 900 kPa: {1}")
    @CsvSource({"450 kPa, MET, 'step 6: half of 900 is 450'", "449 kPa, NOT_MET, step 6"})
    void four_further_applications_leave_half_of_the_maximum(
            String after, Status expected, String where) {
        Finding finding =
                judged(
                                OverseasVehicles.TRUCK,
                                """
                                readings:
                                  governor-cut-out: 900 kPa
                                  reservoir-reserve: { before: 860 kPa, after: %s, applications: 4 }
                                """
                                        .formatted(after))
                        .finding("au.reservoir-reserve");

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains(after).contains("here 450 kPa");
        assertThat(Judged.section(finding)).isEqualTo("step 6");
    }

    @Source(
            work = STEPS,
            edition = EDITION,
            where = "step 6",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25",
            note = NOTE)
    @Test
    void reserve_after_another_number_of_applications_does_not_answer_the_rule() {
        Finding finding =
                judged(
                                OverseasVehicles.TRUCK,
                                """
                                readings:
                                  governor-cut-out: 900 kPa
                                  reservoir-reserve: { before: 860 kPa, after: 600 kPa, applications: 3 }
                                """)
                        .finding("au.reservoir-reserve");

        assertThat(finding.status()).isEqualTo(Status.SPOILED);
        assertThat(finding.why().reason()).contains("3").contains("4");
    }

    @Source(
            work = STEPS,
            edition = EDITION,
            where = "step 2",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25",
            note = NOTE)
    @ParameterizedTest(name = "cut-out {0}: {1}")
    @CsvSource({
        "719 kPa, NOT_MET, step 2",
        "720 kPa, MET, step 2",
        "1120 kPa, MET, step 2",
        "1121 kPa, NOT_MET, step 2"
    })
    void governor_cuts_out_between_720_and_1120_kpa(String cutOut, Status expected, String where) {
        Finding finding =
                judged(
                                OverseasVehicles.TRUCK,
                                "readings: { governor-cut-out: %s }".formatted(cutOut))
                        .finding("au.governor-cut-out");

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains(cutOut).contains("720 kPa to 1120 kPa");
        assertThat(Judged.section(finding)).isEqualTo("step 2");
    }

    @Source(
            work = ADJUSTMENT,
            edition = EDITION,
            where = "brake adjustment",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25",
            note = NOTE)
    @ParameterizedTest(name = "travel {0} of 64 mm: {1}")
    @CsvSource({
        "51.2 mm, MET, 'brake adjustment: 0.80 x 64 = 51.2'",
        "51.3 mm, NOT_MET, brake adjustment"
    })
    void push_rod_travels_no_more_than_80_percent_of_its_full_stroke(
            String travel, Status expected, String where) {
        Judged judged =
                judged(
                        OverseasVehicles.truckWithStroke("64 mm"),
                        "wheels: { 2L: { applied: %s } }".formatted(travel));

        Finding finding = judged.finding("au.pushrod-applied-stroke", "2L");
        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains(travel).contains("here 51.2 mm");
        assertThat(Judged.section(finding)).isEqualTo("brake adjustment");
        assertThat(judged.verdict() == Verdict.NOT_FIT_TO_MOVE)
                .isEqualTo(expected == Status.NOT_MET);
    }

    private static Judged judged(String vehicle, String evidence) {
        return Judged.inspection("AU", TODAY, vehicle, evidence);
    }
}
