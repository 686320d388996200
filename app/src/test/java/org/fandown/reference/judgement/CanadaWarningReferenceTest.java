package org.fandown.reference.judgement;

import static org.fandown.reference.judgement.CanadaFindings.TODAY;

import org.fandown.check.Severity;
import org.fandown.judgement.Status;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CanadaWarningReferenceTest {
    private static final String ONTARIO = "ca-on.low-air-warning";

    @Source(
            work = "Official Air Brake Handbook (Ontario); O. Reg. 199/07",
            edition = "texts read 2026-11-25",
            where =
                    "inspecting air brake system operation, low-air warning: started above 90"
                            + " psi, on at"
                            + " 55 psi (380 kPa) or more; Schedule 1, Part 1, major (d)",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "54 psi, NOT_MET, low-air warning at 55 psi or more",
        "55 psi, MET, low-air warning at 55 psi or more",
        "57 psi, MET, low-air warning at 55 psi or more"
    })
    void ontario_warning_started_at_95_psi_has_to_act_at_55_psi(
            String psi, Status expected, String where) {
        Judged judged = ontario(psi, "start-pressure: 95 psi, key: on");

        CanadaFindings.require(judged.finding(ONTARIO), expected, psi, "low-air warning");
        if (expected == Status.NOT_MET) {
            CanadaFindings.requireDefect(judged, ONTARIO, Severity.MAJOR);
        } else {
            CanadaFindings.requireNoDefect(judged);
        }
    }

    @Source(
            work = "Official Air Brake Handbook (Ontario)",
            edition = "text read 2026-11-25",
            where =
                    "inspecting air brake system operation, low-air warning: above 90 psi,"
                            + " ignition on",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = ';',
            value = {
                "start-pressure: 90 psi, key: on; 90 psi; started at 90 psi, not above it",
                "start-pressure: 621 kPa, key: on; 621 kPa; started at 621 kPa, not above it",
                "start-pressure: 95 psi, key: off; key off; ignition on"
            })
    void ontario_warning_test_started_too_low_or_with_the_ignition_off_says_nothing(
            String noted, String named, String where) {
        CanadaFindings.requireSpoiled(ontario("54 psi", noted), ONTARIO, named);
    }

    @Source(
            work =
                    "Driving Commercial Vehicles (British Columbia); Commercial Driver's Guide"
                            + " (Alberta)",
            edition = "pages read 2026-11-25",
            where =
                    "page 218, 60 psi (414 kPa) or more; trip air brake, step 2, on by 60 psi"
                            + " (414 kPa)",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "CA-BC, ca-bc.low-air-warning, page 218, British Columbia page 218",
        "CA-AB, ca-ab.low-air-warning, step 2, Alberta step 2"
    })
    void warning_at_57_psi_that_passes_ontario_fails_british_columbia_and_alberta(
            String place, String rule, String section, String where) {
        Judged judged =
                Judged.inspection(
                        place,
                        TODAY,
                        CanadaVehicles.TRUCK,
                        """
                        readings:
                          low-air-warning: 57 psi
                        """);

        CanadaFindings.require(judged.finding(rule), Status.NOT_MET, "57 psi", section);
        CanadaFindings.requireDefect(judged, rule, Severity.MAJOR);
    }

    @Source(
            work =
                    "Regulation respecting safety standards for road vehicles (Quebec), C-24.2,"
                            + " r. 32",
            edition = "versions read 2026-11-25",
            where = "s. 38(3), works under 380 kPa; s. 166(10), major only if no device works",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void quebec_warning_that_comes_on_too_late_is_minor_and_none_at_all_is_major() {
        Judged late = quebec("low-air-warning: 379 kPa");
        Judged none = quebec("low-air-warning-works: no");

        CanadaFindings.require(
                late.finding("ca-qc.low-air-warning"), Status.NOT_MET, "379 kPa", "section 38(3)");
        CanadaFindings.requireDefect(late, "ca-qc.low-air-warning", Severity.MINOR);
        CanadaFindings.requireDefect(none, "ca-qc.low-air-warning-works", Severity.MAJOR);
    }

    private static Judged ontario(String psi, String noted) {
        String evidence =
                """
                readings:
                  low-air-warning: { gauge: %s, %s }
                """;
        return Judged.inspection(
                "CA-ON", TODAY, CanadaVehicles.TRUCK, evidence.formatted(psi, noted));
    }

    private static Judged quebec(String reading) {
        return Judged.inspection(
                "CA-QC", TODAY, CanadaVehicles.TRUCK, "readings:\n  " + reading + "\n");
    }
}
