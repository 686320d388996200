package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import org.fandown.judgement.Finding;
import org.fandown.judgement.Status;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitedStatesWarningReferenceTest {
    private static final String TODAY = "2026-03-02";

    @Source(
            work = "49 CFR 393.51, warning signals, air pressure and vacuum gauges",
            edition = "electronic code, stored copy",
            where = "(c)(2)",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "cut-out {0}, warning at {1}: {2}")
    @CsvSource({
        // cut-out 120 psi: the less of 55 psi and 60 psi is 55 psi
        "120 psi, 55 psi, MET, 55 psi, (c)(2)",
        "120 psi, 54.9 psi, NOT_MET, 55 psi, (c)(2)",
        // cut-out 100 psi: the less of 55 psi and 50 psi is 50 psi
        "100 psi, 50 psi, MET, 50 psi, (c)(2)",
        "100 psi, 49.9 psi, NOT_MET, 50 psi, (c)(2)"
    })
    void warning_of_a_truck_older_than_the_standard_goes_by_55_psi_or_half_the_cut_out(
            String cutOut, String warning, Status expected, String worked, String where) {
        String evidence =
                """
                readings:
                  governor-cut-out: %s
                  low-air-warning: %s
                """
                        .formatted(cutOut, warning);
        Judged judged =
                Judged.inspection("US", TODAY, UnitedStatesVehicles.truck("1974-11-20"), evidence);

        Finding finding = judged.finding("us.low-air-warning.before-1975");
        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains("Measured " + warning, "here " + worked);
        assertThat(Judged.section(finding)).isEqualTo("393.51(c)(2)");
    }

    @Source(
            work = "49 CFR 571.121 S5.1.5; manuals of states; California handbook page 99",
            edition = "2022 text; July 2013 and 2023 to 2025; posted January 2013",
            where = "low-pressure warning",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}, {1} psi by {2}: {3}")
    @CsvSource({
        "US, 57, us.low-air-warning.fmvss-121, NOT_MET, S5.1.5, FMVSS 121",
        "US, 57, us.low-air-warning.manual-60, NOT_MET, page 5-4, older manual",
        "US-GA, 57, us-ga.low-air-warning.skills-test, MET, 11M.1.2, newer manual",
        "US-NC, 57, us-nc.low-air-warning.handbook, MET, page 149, North Carolina",
        "US-CA, 57, us-ca.low-air-warning.handbook, MET, page 99, California",
        "US-CA, 78, us-ca.low-air-warning.handbook, NOT_MET, page 99, California: over 75 psi",
        "US, 78, us.low-air-warning.manual-60, MET, page 5-4, older manual",
        "US, 78, us.low-air-warning.fmvss-121, MET, S5.1.5, FMVSS 121"
    })
    void warning_at_57_and_at_78_psi_is_judged_differently_from_place_to_place(
            String place, String psi, String rule, Status expected, String section, String where) {
        Finding finding = warning(place, psi).finding(rule);

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains("Measured " + psi + " psi");
        assertThat(Judged.section(finding)).startsWith(section);
    }

    @Source(
            work = "Georgia driver manual, section 11M (modernized skills test)",
            edition = "2023 to 2025",
            where = "11M.1.2 step 3",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @Test
    void newer_manuals_55_psi_is_known_but_not_applied_against_the_standard() {
        Finding finding = warning("US", "57").ifApplied("us.low-air-warning.manual-55");

        assertThat(finding.status()).isEqualTo(Status.MET);
        assertThat(Judged.section(finding)).isEqualTo("11M.1.2");
    }

    private static Judged warning(String place, String psi) {
        return Judged.inspection(
                place,
                TODAY,
                UnitedStatesVehicles.TRUCK,
                "readings: { low-air-warning: " + psi + " psi }");
    }
}
