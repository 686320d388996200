package org.fandown.reference.judgement;

import static org.fandown.reference.judgement.CanadaFindings.TODAY;

import org.fandown.check.Severity;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which defects the schedules call minor and which major. */
class CanadaScheduleReferenceTest {
    @Source(
            work = "National Safety Code Standard 13, Schedule 1, as adopted in O. Reg. 199/07",
            edition = "table read 2026-11-25",
            where = "Part 1, air brake: minor (a) and (b), major (a) to (e)",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{3}: {1}")
    @CsvSource(
            delimiter = ';',
            value = {
                "readings: { no-audible-leak: no }; ca.no-audible-leak; MINOR; minor (a), a"
                        + " leak heard",
                "parts: { air-system: { condition: slow-build-up } };"
                        + " ca.component-condition.slow-build-up; MINOR; minor (b), slow build-up",
                "wheels: { 2L: { applied: 52 mm } };"
                        + " ca.pushrod-applied-stroke; MAJOR; major (a), stroke of any brake"
                        + " over its limit",
                "parts: { air-system: { condition: excessive-air-loss } };"
                        + " ca.component-condition.air-loss; MAJOR; major (b), air loss rate",
                "parts: { air-system: { condition: dead-tractor-protection } };"
                        + " ca.component-condition.tractor-protection; MAJOR; major (c),"
                        + " protection",
                "readings: { low-air-warning-works: no };"
                        + " ca.low-air-warning-works; MAJOR; major (d), low-air warning fails",
                "parts: { low-pressure-signal: { condition: active-low-air-warning } };"
                        + " ca.component-condition.warning-active; MAJOR; major (d), warning is"
                        + " active",
                "readings: { service-brake-response: no };"
                        + " ca.service-brake-response; MAJOR; major (e), service brake",
                "readings: { parking-brake-hold: no };"
                        + " ca.parking-brake-hold; MAJOR; major (e), parking brake",
                "parts: { air-system: { condition: dead-emergency-brake } };"
                        + " ca.component-condition.emergency-brake; MAJOR; major (e), emergency"
                        + " brake"
            })
    void national_schedule_parts_minor_from_major(
            String evidence, String rule, Severity severity, String where) {
        CanadaFindings.requireDefect(judged("CA", evidence), rule, severity);
    }

    @Source(
            work = "Official Truck Handbook (Ontario), daily inspection test; notes on Schedule 1",
            edition = "text read 2026-11-25; 2015",
            where =
                    "6-1-4, a leak heard is minor; 6-1-6, air from the service coupler is"
                            + " major; parking"
                            + " brake moved from minor to major",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25",
            note = "the change of 2015 was read at second hand")
    @ParameterizedTest(name = "{3}: {1}")
    @CsvSource(
            delimiter = ';',
            value = {
                "no-audible-leak: no; ca-on.no-audible-leak; MINOR; 6-1-4",
                "service-line-tight: no; ca-on.service-line-tight; MAJOR; 6-1-6",
                "parking-brake-hold: no; ca-on.parking-brake-hold; MAJOR; Schedule 1 from 2015"
            })
    void ontario_handbook_parts_minor_from_major(
            String reading, String rule, Severity severity, String where) {
        CanadaFindings.requireDefect(
                judged("CA-ON", "readings: { " + reading + " }"), rule, severity);
    }

    @Source(
            work =
                    "Regulation respecting safety standards for road vehicles (Quebec), C-24.2,"
                            + " r. 32",
            edition = "version of 2024-11-26",
            where = "s. 166(1) to (4), (6) and (7)",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{2}: {1}")
    @CsvSource(
            delimiter = ';',
            value = {
                "parts: { air-lines: { condition: bulging-air-line } };"
                        + " ca-qc.component-condition.line-bulging; s. 166(1) to (3)",
                "parts: { air-lines: { condition: tube-worn-to-second-layer-or-braid } };"
                        + " ca-qc.component-condition.tube-worn; s. 166(1) to (3)",
                "parts: { air-lines: { condition: wrong-fitting } };"
                        + " ca-qc.component-condition.wrong-fitting; s. 166(1) to (3)",
                "parts: { compressor: { condition: cut-compressor-belt } };"
                        + " ca-qc.component-condition.compressor-belt; s. 166(1) to (3)",
                "parts: { compressor: { condition: loose-compressor } };"
                        + " ca-qc.component-condition.compressor-loose; s. 166(4)",
                "parts: { compressor: { condition: cracked-compressor-pulley } };"
                        + " ca-qc.component-condition.compressor-pulley; s. 166(4)",
                "readings: { compressor-idle-pressure: 619 kPa };"
                        + " ca-qc.compressor-idle-pressure; s. 166(4), 620 kPa",
                "readings: { tractor-protection-fitted: no };"
                        + " ca-qc.tractor-protection-fitted; s. 166(6), absent",
                "wheels: { 2L: { cam-angle: 121 deg } }; ca-qc.cam-angle; s. 166(7), over 120"
                        + " degrees"
            })
    void quebec_section_166_lists_major_defects(String evidence, String rule, String where) {
        CanadaFindings.requireDefect(judged("CA-QC", evidence), rule, Severity.MAJOR);
    }

    @Source(
            work =
                    "Regulation respecting safety standards for road vehicles (Quebec), C-24.2,"
                            + " r. 32",
            edition = "version of 2024-11-26",
            where = "s. 166(8): chambers of different size on an active steering axle",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void quebec_chambers_that_differ_are_a_major_defect_on_the_steering_axle_only() {
        Judged steering =
                Judged.inspection("CA-QC", TODAY, CanadaVehicles.TRUCK_WITH_ODD_STEER_CHAMBER, "");
        Judged drive =
                Judged.inspection("CA-QC", TODAY, CanadaVehicles.TRUCK_WITH_ODD_DRIVE_CHAMBER, "");

        CanadaFindings.requireDefect(steering, "ca-qc.chamber-match", Severity.MAJOR);
        CanadaFindings.requireNoDefect(drive);
    }

    private static Judged judged(String place, String evidence) {
        return Judged.inspection(place, TODAY, CanadaVehicles.TRACTOR_TRAILER, evidence + "\n");
    }
}
