package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fandown.reference.judgement.CanadaFindings.TODAY;

import org.fandown.check.Severity;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Status;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CanadaBuildUpReferenceTest {
    private static final String ONTARIO = "ca-on.build-up.combination";
    private static final String QUEBEC = "ca-qc.build-up";

    @Source(
            work = "Official Truck Handbook (Ontario), daily inspection test",
            edition = "text read 2026-11-25",
            where = "6-1-3 build-up: 85 to 100 psi, longer than 2 minutes is a minor defect",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "119 s, MET, 6-1-3: 1 min 59 s",
        "120 s, MET, 6-1-3: not longer than 2 minutes",
        "121 s, NOT_MET, 6-1-3: longer than 2 minutes is a minor defect"
    })
    void ontario_build_up_may_take_2_minutes_at_750_rpm(
            String time, Status expected, String where) {
        Judged judged =
                ontario(
                        time,
                        "engine-speed: 750 rpm, start-pressure: 78 psi, trailer-supply: closed");

        CanadaFindings.require(judged.finding(ONTARIO), expected, time, "6-1-3");
        if (expected == Status.NOT_MET) {
            CanadaFindings.requireDefect(judged, ONTARIO, Severity.MINOR);
        } else {
            CanadaFindings.requireNoDefect(judged);
        }
    }

    @Source(
            work = "Official Truck Handbook (Ontario), daily inspection test",
            edition = "text read 2026-11-25",
            where =
                    "6-1-3 build-up: trailer supply valve pulled, parking brake released, from"
                            + " 80 psi"
                            + " (552 kPa) or less, engine at 600 to 900 rpm",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = ';',
            value = {
                "engine-speed: 1000 rpm; 1000 rpm; engine at 600 to 900 rpm",
                "engine-speed: 901 rpm; 901 rpm; engine at 600 to 900 rpm",
                "engine-speed: 599 rpm; 599 rpm; engine at 600 to 900 rpm",
                "engine-speed: 750 rpm, start-pressure: 81 psi; 81 psi; from 80 psi or less",
                "engine-speed: 750 rpm, trailer-supply: open; open; trailer supply valve pulled",
                "engine-speed: 750 rpm, parking-brake: set; set; parking brake released"
            })
    void ontario_build_up_timed_otherwise_says_nothing(String noted, String named, String where) {
        CanadaFindings.requireSpoiled(ontario("119 s", noted), ONTARIO, named);
    }

    @Source(
            work =
                    "Regulation respecting safety standards for road vehicles (Quebec), C-24.2,"
                            + " r. 32",
            edition = "French text read 2026-11-25",
            where = "s. 38(1): 350 to 620 kPa in less than 3 minutes, average of 1200 rpm at most",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "180 s, NOT_MET, s. 38(1): less than 3 minutes",
        "179 s, MET, s. 38(1): less than 3 minutes"
    })
    void quebec_build_up_takes_less_than_3_minutes(String time, Status expected, String where) {
        Judged judged = quebec(time, "1150 rpm");

        CanadaFindings.require(judged.finding(QUEBEC), expected, time, "section 38(1)");
        if (expected == Status.NOT_MET) {
            CanadaFindings.requireDefect(judged, QUEBEC, Severity.MINOR);
        } else {
            CanadaFindings.requireNoDefect(judged);
        }
    }

    @Source(
            work =
                    "Regulation respecting safety standards for road vehicles (Quebec), C-24.2,"
                            + " r. 32",
            edition = "French text read 2026-11-25",
            where = "s. 38(1): average engine speed of 1200 rpm at most",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}")
    @CsvSource({"1300 rpm, s. 38(1)", "1201 rpm, s. 38(1)"})
    void quebec_build_up_timed_above_1200_rpm_says_nothing(String speed, String where) {
        CanadaFindings.requireSpoiled(quebec("179 s", speed), QUEBEC, speed);
    }

    @Source(
            work =
                    "Air Brake Manual (Newfoundland and Labrador); Driving Commercial Vehicles"
                            + " (British"
                            + " Columbia); Commercial Driver's Guide (Alberta); C-24.2, r. 32"
                            + " (Quebec)",
            edition = "texts read 2026-11-25",
            where = "build-up from 50 to 90 psi: 5 min; page 218, 3 min; step 4, 3 min; s. 38(1)",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource({
        "CA-NL, ca-nl.build-up, MET, single unit, Newfoundland and Labrador: 5 min",
        "CA-BC, ca-bc.build-up, NOT_MET, page 218, British Columbia page 218: 3 min",
        "CA-AB, ca-ab.build-up, NOT_MET, step 4, Alberta step 4: 3 min",
        "CA-QC, ca-qc.build-up, NOT_MET, section 38(1), Quebec: 350 to 620 kPa in less than 3 min"
    })
    void build_up_of_4_minutes_passes_newfoundland_only(
            String place, String rule, Status expected, String section, String where) {
        Judged judged =
                Judged.inspection(
                        place,
                        TODAY,
                        CanadaVehicles.TRUCK,
                        """
                        readings:
                          build-up: { from: 50 psi, to: 90 psi, time: 4 min }
                        """);

        Finding finding = judged.finding(rule);
        assertThat(finding.status()).as(finding.why().reason()).isEqualTo(expected);
        assertThat(Judged.section(finding)).contains(section);
    }

    private static Judged ontario(String time, String noted) {
        String evidence =
                """
                readings:
                  build-up: { from: 85 psi, to: 100 psi, time: %s, %s }
                """;
        return Judged.inspection(
                "CA-ON", TODAY, CanadaVehicles.TRACTOR_TRAILER, evidence.formatted(time, noted));
    }

    private static Judged quebec(String time, String speed) {
        String evidence =
                """
                readings:
                  build-up: { from: 350 kPa, to: 620 kPa, time: %s, engine-speed: %s }
                """;
        return Judged.inspection(
                "CA-QC", TODAY, CanadaVehicles.TRUCK, evidence.formatted(time, speed));
    }
}
