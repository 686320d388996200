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

class UnitedStatesAxleMatchReferenceTest {
    private static final String RULE = "us.chamber-match.law";
    private static final String TODAY = "2026-03-02";

    @Source(
            work = "49 CFR 393.47, brake actuators, slack adjusters, linings and drums",
            edition = "as amended 86 FR 57076 (14 October 2021)",
            where = "(b)",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void type_24_left_and_type_30_right_on_one_axle_fail_whatever_the_strokes() {
        // Both strokes are well inside the limits of their chambers, 1 3/4 in and 2 in.
        Judged judged =
                judged(
                        "clamp 24",
                        "clamp 30",
                        "wheels: { 2L: { applied: 1 in }, 2R: { applied: 1 in } }");

        Finding finding = judged.finding(RULE, "2L");
        assertThat(finding.status()).isEqualTo(Status.NOT_MET);
        assertThat(finding.why().reason()).contains("left clamp 24").contains("right clamp 30");
        assertThat(Judged.section(finding)).isEqualTo("393.47(b)");
        assertThat(judged.finding("us.pushrod-applied-stroke.law", "2L").status())
                .isEqualTo(Status.MET);
        assertThat(judged.verdict()).isEqualTo(Verdict.NOT_FIT_TO_MOVE);
    }

    @Source(
            work = "49 CFR 393.47, brake actuators, slack adjusters, linings and drums",
            edition = "as amended 86 FR 57076 (14 October 2021)",
            where = "(b)",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "the section asks for the same size; it does not name the stroke")
    @ParameterizedTest(name = "{0} beside {1}: {2}")
    @CsvSource({
        "clamp 30, clamp 30, MET, (b)",
        "clamp 30, clamp 30 long, MET, (b)",
        "clamp 24 long 3 in, clamp 24 long 76 mm, MET, (b)",
        "clamp 20, clamp 24, NOT_MET, (b)"
    })
    void chambers_of_one_axle_are_compared_by_size(
            String left, String right, Status expected, String where) {
        assertThat(judged(left, right, "").finding(RULE, "2L").status()).isEqualTo(expected);
    }

    private static Judged judged(String left, String right, String evidence) {
        String axles =
                """
                - { position: steer, brake: drum, chamber: clamp 20, spring-brake: no }
                - { position: drive, brake: drum, spring-brake: no,
                    left: { chamber: %s }, right: { chamber: %s } }
                """
                        .formatted(left, right);
        return Judged.inspection("US", TODAY, UnitedStatesVehicles.truckWithAxles(axles), evidence);
    }
}
