package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import org.fandown.check.Verdict;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Status;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tests last one minute, so the loss is the drop of the needle. */
class UnitedStatesAirLossReferenceTest {
    private static final String TODAY = "2026-03-02";

    @Source(
            work = "Model commercial driver manual; California Commercial Driver Handbook",
            edition = "reprint by a Georgia city, older text; handbook posted January 2013",
            where = "static leakage test",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25",
            note = "California's figures were read as a learner quoted them from the handbook")
    @ParameterizedTest(name = "{0}, {1} psi: {3}")
    @CsvSource({
        "US, 3.0, us.air-loss-released.combination, NOT_MET, page 198, 'model text: less than 3'",
        "US, 2.9, us.air-loss-released.combination, MET, page 198, 'model text: less than 3'",
        "US-CA, 3.0, us-ca.air-loss-released.two, MET, in-cab check, 'California: up to 3'",
        "US-CA, 3.1, us-ca.air-loss-released.two, NOT_MET, in-cab check, 'California: up to 3'"
    })
    void combination_that_loses_exactly_3_psi_released_fails_the_model_text_and_passes_california(
            String place, String psi, String rule, Status expected, String section, String where) {
        Judged judged = loss(place, UnitedStatesVehicles.TRACTOR_TRAILER, "air-loss-released", psi);

        requireFinding(judged, rule, expected, psi, section);
    }

    @Source(
            work = "Model commercial driver manual; handbooks of California, Georgia, Carolina",
            edition = "older text; posted January 2013; 2023 to 2025; undated",
            where = "applied leakage test",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}, {1} psi: {3}")
    @CsvSource({
        "US, 3.0, us.air-loss-applied.single, MET, page 198, model text",
        "US, 3.1, us.air-loss-applied.single, NOT_MET, page 198, model text",
        "US-CA, 3.0, us-ca.air-loss-applied.single, MET, page 88, California page 88",
        "US-CA, 3.1, us-ca.air-loss-applied.single, NOT_MET, page 88, California page 88",
        "US-GA, 3.0, us-ga.air-loss-applied.single, MET, 11M.1.2, Georgia 11M.1.2 step 2",
        "US-GA, 3.1, us-ga.air-loss-applied.single, NOT_MET, 11M.1.2, Georgia 11M.1.2 step 2",
        "US-NC, 3.0, us-nc.air-loss-applied.single, MET, page 149, North Carolina page 149",
        "US-NC, 3.1, us-nc.air-loss-applied.single, NOT_MET, page 149, North Carolina page 149"
    })
    void single_vehicle_may_lose_3_psi_applied_and_no_more(
            String place, String psi, String rule, Status expected, String section, String where) {
        Judged judged = loss(place, UnitedStatesVehicles.TRUCK, "air-loss-applied", psi);

        requireFinding(judged, rule, expected, psi, section);
    }

    @Source(
            work = "Model commercial driver manual; California Commercial Driver Handbook",
            edition = "reprint by a Georgia city, older text; handbook posted January 2013",
            where = "applied leakage test",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}, {1} psi: {3}")
    @CsvSource({
        "US, 5.5, us.air-loss-applied.combination, NOT_MET, page 198, 'model text: 4 psi'",
        "US-CA, 5.5, us-ca.air-loss-applied.three, MET, page 88, 'California page 88: 6 psi'",
        "US-CA, 6.0, us-ca.air-loss-applied.three, MET, page 88, 'California page 88: 6 psi'",
        "US-CA, 6.1, us-ca.air-loss-applied.three, NOT_MET, page 88, 'California page 88: 6 psi'"
    })
    void three_vehicles_that_lose_5_5_psi_applied_pass_california_and_fail_the_model_text(
            String place, String psi, String rule, Status expected, String section, String where) {
        Judged judged = loss(place, UnitedStatesVehicles.DOUBLES, "air-loss-applied", psi);

        requireFinding(judged, rule, expected, psi, section);
    }

    private static Judged loss(String place, String vehicle, String check, String psi) {
        String evidence =
                """
                readings:
                  %s: { loss: %s psi, time: 60 s }
                """
                        .formatted(check, psi);
        return Judged.inspection(place, TODAY, vehicle, evidence);
    }

    private static void requireFinding(
            Judged judged, String rule, Status expected, String psi, String section) {
        Finding finding = judged.finding(rule);
        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.measured().orElseThrow().value()).isEqualTo(Double.parseDouble(psi));
        assertThat(finding.why().reason()).contains("Measured").contains("in 1 min");
        assertThat(Judged.section(finding)).isEqualTo(section);
        if (expected == Status.NOT_MET) {
            assertThat(judged.verdict()).isEqualTo(Verdict.NOT_FIT_TO_MOVE);
        } else {
            assertThat(judged.notMet()).isEmpty();
            assertThat(judged.verdict()).isEqualTo(Verdict.NOT_PROVEN);
        }
    }
}
