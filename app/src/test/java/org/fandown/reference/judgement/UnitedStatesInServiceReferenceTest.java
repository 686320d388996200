package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Status;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Limit.DutyTerm;
import org.fandown.rulebook.Limit.TermSense;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitedStatesInServiceReferenceTest {
    private static final String TODAY = "2026-03-02";

    @Source(
            work = "49 CFR 393.50, reservoirs required",
            edition = "older wording, date not shown",
            where = "(a)",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "100 psi before, {0} psi after: {1}")
    @CsvSource({"70, MET, (a)", "69, NOT_MET, (a)"})
    void one_full_application_leaves_70_percent(String after, Status expected, String where) {
        String evidence =
                """
                readings:
                  reservoir-reserve: { before: 100 psi, after: %s psi }
                """
                        .formatted(after);
        Finding finding =
                judged(UnitedStatesVehicles.TRUCK, evidence)
                        .finding("us.reservoir-reserve.full-application");

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains("Measured " + after + " psi", "here 70 psi");
        assertThat(Judged.section(finding)).isEqualTo("393.50(a)");
    }

    @Source(
            work = "49 CFR 396.11(a)(4) and 380.725, keeping of records",
            edition = "electronic code, stored copy",
            where = "three months; three years",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}: {1} to {2}")
    @CsvSource({
        "us.report-retention.driver, 2026-01-10, 2026-04-10, 396.11(a)(4)",
        "us.report-retention.training, 2024-03-01, 2027-03-01, 380.725(b) and (c)"
    })
    void records_are_kept_to_the_day(String rule, String made, String keptTo, String where) {
        Limit limit =
                judged(UnitedStatesVehicles.TRUCK, "")
                        .judgement()
                        .rules()
                        .byId(rule)
                        .orElseThrow()
                        .limit();
        DutyTerm term = ((Limit.Duty) limit).term().orElseThrow();

        assertThat(term.sense()).isEqualTo(TermSense.KEEP);
        assertThat(term.term().from(OffsetDateTime.parse(made + "T17:00:00-05:00")))
                .isEqualTo(OffsetDateTime.parse(keptTo + "T17:00:00-05:00"));
    }

    @Source(
            work = "49 CFR 393.47(d)(1); 49 CFR part 396 Appendix A item 1.a(6)(d)",
            edition = "as amended 86 FR 57076 (14 October 2021); opening of the appendix",
            where = "lining thickness on the steering axle",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void strip_lining_of_seven_thirty_seconds_may_be_driven_but_fails_the_annual_list() {
        // 3/16 in = 6/32 in < 7/32 in < 8/32 in = 1/4 in
        Judged strip = lining("strip");

        Finding law = strip.finding("us.lining-thickness.steer-strip", "1L");
        Finding annual = strip.ifApplied("us.lining-thickness.annual-steer-drum", "1L");
        assertThat(law.status()).isEqualTo(Status.MET);
        assertThat(law.why().reason()).contains("Measured 0.219 in", "3/16 in");
        assertThat(annual.status()).isEqualTo(Status.NOT_MET);
        assertThat(Judged.section(annual)).isEqualTo("item 1.a(6)(d)");
    }

    @Source(
            work = "49 CFR 393.47(d)(1); 49 CFR part 396 Appendix A item 1.a(6)(d)",
            edition = "as amended 86 FR 57076 (14 October 2021); opening of the appendix",
            where = "lining thickness on the steering axle",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void two_pads_of_seven_thirty_seconds_fail_both() {
        Judged pads = lining("two-pad");

        Finding law = pads.finding("us.lining-thickness.steer-two-pad", "1L");
        assertThat(law.status()).isEqualTo(Status.NOT_MET);
        assertThat(Judged.section(law)).isEqualTo("393.47(d)(1)");
        assertThat(pads.finding("us.lining-thickness.annual-steer-two-pad", "1L").status())
                .isEqualTo(Status.NOT_MET);
    }

    @Source(
            work = "Model commercial driver manual; Georgia Commercial Drivers Manual page 52",
            edition = "July 2013; 2020",
            where = "5.3.2, slack adjusters",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25",
            note = "the text says about one inch")
    @Test
    void hand_movement_of_an_inch_and_a_half_is_flagged_but_is_no_stroke_violation() {
        Judged judged =
                judged(UnitedStatesVehicles.TRUCK, "wheels: { 2L: { hand-play: 1 1/2 in } }");

        Finding finding = judged.finding("us.adjuster-hand-play.manual", "2L");
        assertThat(finding.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(finding.why().reason())
                .contains("Measured 1 1/2 in", "at most 1 in", "needs adjusting", "about");
        assertThat(finding.why().advice()).isNotEmpty();
        assertThat(judged.findings("us.pushrod-applied-stroke.law")).isEmpty();
        assertThat(judged.judgement().defects()).isEmpty();
    }

    private static Judged lining(String form) {
        String axles =
                """
                - { position: steer, brake: drum, chamber: clamp 20, spring-brake: no, lining: %s }
                - { position: drive, brake: drum, chamber: clamp 30, spring-brake: yes }
                """
                        .formatted(form);
        return judged(
                UnitedStatesVehicles.truckWithAxles(axles), "wheels: { 1L: { lining: 7/32 in } }");
    }

    private static Judged judged(String vehicle, String evidence) {
        return Judged.inspection("US", TODAY, vehicle, evidence);
    }
}
