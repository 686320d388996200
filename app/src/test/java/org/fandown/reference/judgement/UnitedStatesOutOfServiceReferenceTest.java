package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fandown.check.Verdict;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Status;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitedStatesOutOfServiceReferenceTest {
    private static final String RULE = "us.brakes-over-limit.twenty-percent";

    /** Shares are given to a tenth of a percent. */
    private static final double TENTH_OF_A_PERCENT = 0.05;

    /** Over the limit of every chamber here (1 3/4 in for type 20, 2 in for type 30). */
    private static final String OVER = "{ applied: 2 1/4 in }";

    /** Inside the limit of every chamber here. */
    private static final String INSIDE = "{ applied: 1 1/2 in }";

    /** In adjustment, but leaking at the chamber. */
    private static final String LEAKING =
            "{ applied: 1 1/2 in, defects: [audible leak at the chamber] }";

    @Source(
            work = "Commercial vehicle safety alliance, releases on unannounced brake days",
            edition = "reprint and trade press report, undated",
            where = "20 % rule",
            kind = Kind.AGENCY,
            accessed = "2026-11-25",
            note = "read at second hand; shares are computed: 2 of 10 = 20 %, 2 of 12 = 16.7 %")
    @ParameterizedTest(name = "{1} of {0} brakes, {2}: {4}")
    @CsvSource({
        "10, 1, over, 10, MET, 1 of 10 = 10 %",
        "10, 2, over, 20, NOT_MET, 2 of 10 = 20 %",
        "10, 2, leaking, 20, NOT_MET, 2 of 10 = 20 %",
        "12, 2, over, 16.7, MET, 2 of 12 = 16.7 %",
        "12, 3, over, 25, NOT_MET, 3 of 12 = 25 %"
    })
    void vehicle_is_out_of_service_from_a_fifth_of_its_brakes(
            int brakes, int bad, String how, double percent, Status expected, String where) {
        String vehicle =
                brakes == 10
                        ? UnitedStatesVehicles.TRACTOR_TRAILER
                        : UnitedStatesVehicles.TRACTOR_TRIAXLE;
        String badBrake = how.equals("leaking") ? LEAKING : OVER;
        StringBuilder wheels = new StringBuilder("wheels:\n");
        for (int i = 0; i < brakes; i++) {
            // The bad brakes are the last ones, at the rear of the trailer.
            String reading = i < brakes - bad ? INSIDE : badBrake;
            wheels.append("  %d%s: %s%n".formatted(i / 2 + 1, i % 2 == 0 ? "L" : "R", reading));
        }

        Judged judged = Judged.inspection("US", "2026-03-02", vehicle, wheels.toString());

        Finding finding = judged.finding(RULE);
        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.ruling().rule().weight().outOfService()).isTrue();
        assertThat(finding.measured().orElseThrow().value())
                .isCloseTo(percent, within(TENTH_OF_A_PERCENT));
        assertThat(finding.why().reason()).contains(bad + " of " + brakes + " brakes");
        assertThat(Judged.section(finding)).isEqualTo("out-of-service conditions");
        // Even one brake beyond its limit breaks 393.47(e) by itself.
        assertThat(judged.verdict()).isEqualTo(Verdict.NOT_FIT_TO_MOVE);
    }
}
