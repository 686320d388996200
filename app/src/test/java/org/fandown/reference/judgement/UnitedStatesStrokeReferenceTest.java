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

class UnitedStatesStrokeReferenceTest {
    private static final String RULE = "us.pushrod-applied-stroke.law";
    private static final String TODAY = "2026-03-02";

    @Source(
            work = "49 CFR 393.47, brake actuators, slack adjusters, linings and drums",
            edition = "as amended 86 FR 57076 (14 October 2021)",
            where = "(e)(1), tables",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "clamp type 36 also as amended 77 FR 46638 (6 August 2012)")
    @ParameterizedTest(name = "{0} on {1}: {2} passes, {3} fails")
    @CsvSource({
        "clamp 30 long, 2026-03-02, 2.5 in, 2 9/16 in, 2 1/2 in, '(e)(1) clamp type 30, long'",
        "clamp 30 long, 2026-03-02, 63.5 mm, 63.6 mm, 63.5 mm, '(e)(1) clamp type 30, long'",
        "clamp 30, 2026-03-02, 2 in, 2 1/16 in, 2 in, '(e)(1) clamp type 30, standard'",
        "clamp 30, 2026-03-02, 50.8 mm, 50.9 mm, 50.8 mm, '(e)(1) clamp type 30, standard'",
        "clamp 24 long, 2026-03-02, 2 in, 2 1/16 in, 2 in, '(e)(1) clamp type 24, long'",
        "clamp 24 long 3 in, 2026-03-02, 2 1/2 in, 2 9/16 in, 2 1/2 in, '(e)(1) type 24, 3 in'",
        "clamp 20, 2026-03-02, 1.75 in, 1.76 in, 1 3/4 in, '(e)(1) clamp type 20, standard'",
        "clamp 16 long, 2026-03-02, 2 in, 2.01 in, 2 in, '(e)(1) clamp type 16, long'",
        "clamp 12 long, 2026-03-02, 1.75 in, 1.76 in, 1 3/4 in, '(e)(1) clamp type 12, long'",
        "clamp 9, 2026-03-02, 1.375 in, 1.376 in, 1 3/8 in, '(e)(1) clamp type 9, standard'",
        "clamp 36, 2026-03-02, 2.5 in, 2.51 in, 2 1/2 in, '(e)(1) clamp type 36, 2021 text'",
        "clamp 36, 2013-03-04, 2.25 in, 2.26 in, 2 1/4 in, '(e)(1) clamp type 36, 2012 text'",
        "dd3 30, 2026-03-02, 2.25 in, 2.26 in, 2 1/4 in, '(e)(1) DD-3'",
        "bolt B, 2026-03-02, 1.75 in, 1.76 in, 1 3/4 in, '(e)(1) bolt type B'",
        "bolt F, 2026-03-02, 2.25 in, 2.26 in, 2 1/4 in, '(e)(1) bolt type F'",
        "bolt D, 2026-03-02, 1.25 in, 1.26 in, 1 1/4 in, '(e)(1) bolt type D'",
        "rotochamber 36, 2026-03-02, 2.75 in, 2.76 in, 2 3/4 in, '(e)(1) rotochamber 36'",
        "rotochamber 50, 2026-03-02, 3.0 in, 3.01 in, 3 in, '(e)(1) rotochamber 50'"
    })
    void stroke_at_the_limit_of_its_chamber_passes_and_a_longer_one_is_not_met(
            String chamber, String day, String passes, String fails, String limit, String where) {
        Finding at = stroke(chamber, day, passes).finding(RULE, "2L");
        Judged over = stroke(chamber, day, fails);

        assertThat(at.status()).isEqualTo(Status.MET);
        assertThat(at.why().reason()).contains("limit for " + chamber + " " + limit);
        assertThat(over.finding(RULE, "2L").status()).isEqualTo(Status.NOT_MET);
        assertThat(over.finding(RULE, "2L").why().reason())
                .contains("limit for " + chamber + " " + limit);
        assertThat(Judged.section(over.finding(RULE, "2L"))).isEqualTo("393.47(e)");
        assertThat(over.verdict()).isEqualTo(Verdict.NOT_FIT_TO_MOVE);
    }

    @Source(
            work = "49 CFR 393.47, brake actuators, slack adjusters, linings and drums",
            edition = "as amended 86 FR 57076 (14 October 2021)",
            where = "(e)(2)",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void actuator_no_table_lists_is_held_to_80_percent_of_its_marked_stroke() {
        // 80 % of a marked rated stroke of 2.75 in is 2.20 in.
        String unlisted = "{ mount: other, type: U7, rated-stroke: 2.75 in }";

        assertThat(stroke(unlisted, TODAY, "2.20 in").finding(RULE, "2L").status())
                .isEqualTo(Status.MET);
        Finding over = stroke(unlisted, TODAY, "2.21 in").finding(RULE, "2L");
        assertThat(over.status()).isEqualTo(Status.NOT_MET);
        assertThat(over.why().reason()).contains("Stroke 2.21 in").contains("2.2 in");
    }

    @Source(
            work = "49 CFR 393.47, brake actuators, slack adjusters, linings and drums",
            edition = "as amended 86 FR 57076 (14 October 2021)",
            where = "(e)(2)",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void actuator_no_table_lists_is_held_to_the_readjustment_limit_marked_on_it() {
        String unlisted = "{ mount: other, type: U7, marked-limit: 2.1 in }";

        assertThat(stroke(unlisted, TODAY, "2.10 in").finding(RULE, "2L").status())
                .isEqualTo(Status.MET);
        assertThat(stroke(unlisted, TODAY, "2.11 in").finding(RULE, "2L").status())
                .isEqualTo(Status.NOT_MET);
    }

    @Source(
            work = "49 CFR 393.47, brake actuators, slack adjusters, linings and drums",
            edition = "as amended 86 FR 57076 (14 October 2021)",
            where = "(f)",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "1/16 in, MET, (f)",
        "1.6 mm, MET, (f)",
        "1/8 in, NOT_MET, (f)",
        "1.7 mm, NOT_MET, (f)"
    })
    void scribe_mark_of_a_wedge_brake_may_move_a_sixteenth(
            String movement, Status expected, String where) {
        String axles =
                """
                - { position: steer, brake: drum, chamber: clamp 20, spring-brake: no }
                - { position: drive, brake: wedge, chamber: clamp 12, spring-brake: no }
                """;
        Judged judged =
                Judged.inspection(
                        "US",
                        TODAY,
                        UnitedStatesVehicles.truckWithAxles(axles),
                        "wheels: { 2L: { wedge-movement: " + movement + " } }");

        Finding finding = judged.finding("us.wedge-lining-movement.law", "2L");
        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains("Measured " + movement);
        assertThat(Judged.section(finding)).isEqualTo("393.47(f)");
    }

    private static Judged stroke(String chamber, String day, String applied) {
        String axles =
                """
                - { position: steer, brake: drum, chamber: clamp 20, spring-brake: no }
                - { position: drive, brake: drum, chamber: %s, spring-brake: no }
                """
                        .formatted(chamber);
        return Judged.inspection(
                "US",
                day,
                // older than each of the texts
                UnitedStatesVehicles.truckWithAxles(axles).replace("2019-04-09", "2010-04-09"),
                "wheels: { 2L: { applied: " + applied + " } }");
    }
}
