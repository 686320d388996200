package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import org.fandown.check.Verdict;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Status;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitedStatesValvesReferenceTest {
    private static final String TODAY = "2026-03-02";

    @Source(
            work = "Georgia manual 5.3.3; California handbook page 92; D.C. rule 18-721",
            edition = "2020; posted January 2013; read 2026-11-25",
            where = "spring brakes and trailer supply, 20 to 45 psi",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25",
            note = "the federal section on the trailer supply is from memory")
    @ParameterizedTest(name = "{0}, {1} at {2} psi: {4}")
    @CsvSource({
        "US, parking-valve-closing, 47, us.parking-valve-closing.manual, NOT_MET, 5.3.3",
        "US, parking-valve-closing, 45, us.parking-valve-closing.manual, MET, 5.3.3",
        "US, parking-valve-closing, 20, us.parking-valve-closing.manual, MET, 5.3.3",
        "US-CA, parking-valve-closing, 47, us-ca.parking-valve-closing.handbook, NOT_MET, page 92",
        "US-CA, parking-valve-closing, 45, us-ca.parking-valve-closing.handbook, MET, page 92",
        "US-CA, parking-valve-closing, 20, us-ca.parking-valve-closing.handbook, MET, page 92",
        "US-DC, trailer-supply-closing, 47, us-dc.trailer-supply-closing.rule, NOT_MET, 18-721",
        "US-DC, trailer-supply-closing, 45, us-dc.trailer-supply-closing.rule, MET, 18-721",
        "US-DC, trailer-supply-closing, 20, us-dc.trailer-supply-closing.rule, MET, 18-721",
        "US, trailer-supply-closing, 47, us.trailer-supply-closing.manual, NOT_MET, 6.5.2",
        "US, trailer-supply-closing, 45, us.trailer-supply-closing.manual, MET, 6.5.2",
        "US, trailer-supply-closing, 20, us.trailer-supply-closing.manual, MET, 6.5.2"
    })
    void knob_that_pops_at_47_psi_is_outside_and_at_either_end_of_the_range_inside(
            String place, String check, String psi, String rule, Status expected, String where) {
        Finding finding = reading(place, check, psi).finding(rule);

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains("Measured " + psi + " psi", "20 psi to 45 psi");
        assertThat(Judged.section(finding)).contains(where);
    }

    @Source(
            work = "49 CFR 571.121 S5.1.1.1; California Commercial Driver Handbook page 99",
            edition = "2022 text; posted January 2013",
            where = "governor cut-in",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0} {1}: {3}")
    @CsvSource({
        "US-CA, truck, us-ca.governor-cut-in.handbook, MET, page 99",
        "US-CA, bus, us-ca.governor-cut-in.handbook, MET, page 99",
        "US, bus, us.governor-cut-in.bus, MET, S5.1.1.1",
        "US, truck, us.governor-cut-in.truck, NOT_MET, S5.1.1.1"
    })
    void cut_in_at_90_psi_fails_only_the_federal_standard_for_trucks(
            String place, String kind, String rule, Status expected, String where) {
        String vehicle = kind.equals("bus") ? UnitedStatesVehicles.BUS : UnitedStatesVehicles.TRUCK;
        Judged judged =
                Judged.inspection(place, TODAY, vehicle, "readings: { governor-cut-in: 90 psi }");

        assertThat(judged.finding(rule).status()).isEqualTo(expected);
        assertThat(judged.finding(rule).why().reason()).contains("Measured 90 psi");
        assertThat(Judged.section(judged.finding(rule))).contains(where);
        assertThat(judged.verdict())
                .isEqualTo(expected == Status.MET ? Verdict.NOT_PROVEN : Verdict.NOT_FIT_TO_MOVE);
    }

    @Source(
            work = "Handbooks of California, Georgia and North Carolina",
            edition = "posted January 2013; 2023 to 2025; undated",
            where = "governor cut-out",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource({
        "US-CA, us-ca.governor-cut-out.handbook, NOT_MET, page 88",
        "US-GA, us-ga.governor-cut-out.skills-test, MET, 11M.1.2",
        "US-NC, us-nc.governor-cut-out.handbook, MET, page 149"
    })
    void cut_out_at_132_psi_fails_california_and_is_inside_in_georgia_and_north_carolina(
            String place, String rule, Status expected, String where) {
        Judged judged =
                Judged.inspection(
                        place,
                        TODAY,
                        UnitedStatesVehicles.TRUCK,
                        "readings: { governor-cut-out: 132 psi }");

        assertThat(judged.finding(rule).status()).isEqualTo(expected);
        assertThat(judged.finding(rule).why().reason()).contains("Measured 132 psi");
        assertThat(Judged.section(judged.finding(rule))).contains(where);
    }

    private static Judged reading(String place, String check, String psi) {
        return Judged.inspection(
                place,
                TODAY,
                UnitedStatesVehicles.TRACTOR_TRAILER,
                "readings: { " + check + ": " + psi + " psi }");
    }
}
