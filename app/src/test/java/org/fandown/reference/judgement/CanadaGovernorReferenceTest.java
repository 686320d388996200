package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fandown.reference.judgement.CanadaFindings.TODAY;

import org.fandown.check.Severity;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Status;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CanadaGovernorReferenceTest {
    @Source(
            work =
                    "Air brake manuals and handbooks of Saskatchewan, British Columbia,"
                            + " Newfoundland and"
                            + " Labrador, Ontario; C-24.2, r. 32 (Quebec)",
            edition = "texts read 2026-11-25",
            where =
                    "120 to 145 psi (828 to 1000 kPa); 105 to 135 psi (724 to 931 kPa); 105 to"
                            + " 125 psi; 145"
                            + " or 135 psi; 805 to 945 kPa",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}, {2}: {3}")
    @CsvSource({
        "CA-SK, ca-sk.governor-cut-out, 118 psi, NOT_MET, whole procedure, Saskatchewan: 120 to"
                + " 145 psi",
        "CA-SK, ca-sk.governor-cut-out, 813.6 kPa, NOT_MET, whole procedure, Saskatchewan: from"
                + " 828 kPa",
        "CA-BC, ca-bc.governor-cut-out, 118 psi, MET, page 218, British Columbia page 218",
        "CA-BC, ca-bc.governor-cut-out, 813.6 kPa, MET, page 218, British Columbia page 218",
        "CA-NL, ca-nl.governor-cut-out, 118 psi, MET, single unit, Newfoundland and Labrador",
        "CA-NL, ca-nl.governor-cut-out, 813.6 kPa, MET, single unit, Newfoundland and Labrador",
        "CA-QC, ca-qc.governor-cut-out, 118 psi, MET, section 38(2), Quebec s. 38(2)",
        "CA-QC, ca-qc.governor-cut-out, 813.6 kPa, MET, section 38(2), Quebec s. 38(2)",
        "CA-ON, ca-on.governor-cut-out, 118 psi, MET, 6-1-4, Ontario 6-1-4 and 6-1-6",
        "CA-ON, ca-on.governor-cut-out, 813.6 kPa, MET, 6-1-4, Ontario 6-1-4 and 6-1-6",
        "CA-BC, ca-bc.governor-cut-out, 140 psi, NOT_MET, page 218, British Columbia page 218",
        "CA-BC, ca-bc.governor-cut-out, 965.3 kPa, NOT_MET, page 218, British Columbia page 218",
        "CA-NL, ca-nl.governor-cut-out, 140 psi, NOT_MET, single unit, Newfoundland and Labrador",
        "CA-NL, ca-nl.governor-cut-out, 965.3 kPa, NOT_MET, single unit, Newfoundland and Labrador",
        "CA-QC, ca-qc.governor-cut-out, 140 psi, NOT_MET, section 38(2), Quebec s. 38(2)",
        "CA-QC, ca-qc.governor-cut-out, 965.3 kPa, NOT_MET, section 38(2), Quebec s. 38(2)",
        "CA-SK, ca-sk.governor-cut-out, 140 psi, MET, whole procedure, Saskatchewan: to 145 psi",
        "CA-SK, ca-sk.governor-cut-out, 965.3 kPa, MET, whole procedure, Saskatchewan: to 1000 kPa"
    })
    void cut_out_of_118_or_140_psi_passes_in_some_places_and_fails_in_others(
            String place,
            String rule,
            String reading,
            Status expected,
            String section,
            String where) {
        Finding finding = governor(place, "governor-cut-out", reading).finding(rule);

        CanadaFindings.require(finding, expected, reading, section);
        assertThat(finding.why().reason()).contains("Measured " + reading);
    }

    @Source(
            work = "Official Truck Handbook (Ontario), daily inspection test",
            edition = "text read 2026-11-25",
            where = "6-1-4 prints a range to 145 psi, 6-1-6 135 psi",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}")
    @CsvSource({"140 psi, 6-1-4 against 6-1-6", "965.3 kPa, 6-1-4 against 6-1-6"})
    void ontario_cut_out_between_the_two_printed_ceilings_is_not_decided(
            String reading, String where) {
        Judged judged = governor("CA-ON", "governor-cut-out", reading);
        Finding finding = judged.finding("ca-on.governor-cut-out");

        assertThat(finding.status()).isEqualTo(Status.UNDETERMINED);
        assertThat(finding.why().reason())
                .contains("Sources disagree")
                .contains("145 psi")
                .contains("135 psi")
                .contains("Measured " + reading);
        CanadaFindings.requireNoDefect(judged);
    }

    @Source(
            work = "Official Truck Handbook (Ontario), daily inspection test",
            edition = "text read 2026-11-25",
            where = "6-1-4 prints a range to 145 psi, 6-1-6 135 psi",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @Test
    void ontario_cut_out_that_both_pages_allow_or_refuse_is_decided() {
        Finding allowed =
                governor("CA-ON", "governor-cut-out", "135 psi").finding("ca-on.governor-cut-out");
        Finding refused =
                governor("CA-ON", "governor-cut-out", "146 psi").finding("ca-on.governor-cut-out");

        CanadaFindings.require(allowed, Status.MET, "135 psi", "6-1-4");
        CanadaFindings.require(refused, Status.NOT_MET, "146 psi", "6-1-4");
    }

    @Source(
            work =
                    "Air brake manuals and handbooks of Saskatchewan, Ontario, British Columbia,"
                            + " Newfoundland and Labrador; C-24.2, r. 32 (Quebec)",
            edition = "texts read 2026-11-25",
            where = "100 psi (690 kPa); 80 psi (552 kPa); 80 psi (552 kPa); about 80 psi; 550 kPa",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}, {2}: {3}")
    @CsvSource({
        "CA-SK, ca-sk.governor-cut-in, 95 psi, NOT_MET, whole procedure, Saskatchewan: 100 psi",
        "CA-ON, ca-on.governor-cut-in, 95 psi, MET, 6-1-4, Ontario 6-1-4: 80 psi",
        "CA-BC, ca-bc.governor-cut-in, 95 psi, MET, page 218, British Columbia page 218: 80 psi",
        "CA-NL, ca-nl.governor-cut-in, 95 psi, MET, single unit, Newfoundland: about 80 psi",
        "CA-QC, ca-qc.governor-cut-in, 655 kPa, MET, section 38(2), Quebec s. 38(2): 550 kPa"
    })
    void cut_in_of_95_psi_fails_saskatchewan_only(
            String place,
            String rule,
            String reading,
            Status expected,
            String section,
            String where) {
        Finding finding = governor(place, "governor-cut-in", reading).finding(rule);

        CanadaFindings.require(finding, expected, reading, section);
        assertThat(finding.why().reason()).contains("Measured " + reading);
    }

    @Source(
            work = "Air Brake Manual (Saskatchewan)",
            edition = "text read 2026-11-25",
            where =
                    "pre-trip procedure for an air combination unit: governor with spring"
                            + " brakes released",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "governor-cut-out, 125 psi, pre-trip procedure",
        "governor-cut-in, 105 psi, pre-trip procedure"
    })
    void saskatchewan_governor_tried_with_spring_brakes_on_says_nothing(
            String check, String reading, String where) {
        Judged judged = governor("CA-SK", check, "{ gauge: " + reading + ", parking-brake: set }");

        CanadaFindings.requireSpoiled(judged, "ca-sk." + check, "set");
    }

    @Source(
            work = "Driving Commercial Vehicles (British Columbia)",
            edition = "page read 2026-11-25",
            where =
                    "page 218: cut-in before the pressure is under 80 psi (552 kPa); 125 psi,"
                            + " pause at 100",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @Test
    void british_columbia_cut_in_first_seen_at_79_psi_fails() {
        Judged judged = governor("CA-BC", "governor-cut-in", "79 psi");

        CanadaFindings.require(
                judged.finding("ca-bc.governor-cut-in"), Status.NOT_MET, "79 psi", "page 218");
        CanadaFindings.requireDefect(judged, "ca-bc.governor-cut-in", Severity.MAJOR);
        assertThat(
                        judged.judgement()
                                .rules()
                                .byId("ca-bc.test-method.governor")
                                .orElseThrow()
                                .limit())
                .asString()
                .contains("80 % of the maximum", "125 to 100 psi");
    }

    private static Judged governor(String place, String check, String reading) {
        return Judged.inspection(
                place,
                TODAY,
                CanadaVehicles.TRACTOR_TRAILER,
                "readings:\n  " + check + ": " + reading + "\n");
    }
}
