package org.fandown.reference.judgement;

import static org.fandown.reference.judgement.CanadaFindings.TODAY;

import org.fandown.check.Severity;
import org.fandown.judgement.Status;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CanadaValvesReferenceTest {
    private static final String BC = "ca-bc.trailer-supply-closing";
    private static final String AB_SUPPLY = "ca-ab.trailer-supply-closing";
    private static final String AB_PARK = "ca-ab.parking-valve-closing";
    private static final String QC_KEEPS = "ca-qc.tractor-protection";
    private static final String QC_MAJOR = "ca-qc.tractor-protection.major";

    @Source(
            work = "Driving Commercial Vehicles (British Columbia)",
            edition = "page read 2026-11-25",
            where = "page 218: trailer supply valve closes at 20 to 45 psi on the highest gauge",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource(
            delimiter = ';',
            value = {
                "[38 psi, 46 psi]; 46 psi; NOT_MET; page 218: the highest gauge rules",
                "[46 psi, 38 psi]; 46 psi; NOT_MET; page 218: the highest gauge rules",
                "[38 psi, 45 psi]; 45 psi; MET; page 218: to 45 psi",
                "[15 psi, 20 psi]; 20 psi; MET; page 218: the highest gauge rules",
                "45 psi; 45 psi; MET; page 218: to 45 psi",
                "20 psi; 20 psi; MET; page 218: from 20 psi",
                "19 psi; 19 psi; NOT_MET; page 218: from 20 psi"
            })
    void british_columbia_supply_valve_closes_at_20_to_45_psi_on_the_highest_gauge(
            String gauges, String counted, Status expected, String where) {
        Judged judged = judged("CA-BC", "trailer-supply-closing: { gauge: " + gauges + " }");

        CanadaFindings.require(judged.finding(BC), expected, counted, "page 218");
        requireMajorOrNone(judged, BC, expected);
    }

    @Source(
            work = "Commercial Driver's Guide (Alberta), trip air brake",
            edition = "page read 2026-11-25",
            where =
                    "step 2: pops at 40 to 60 psi (276 to 414 kPa) or higher, both lines"
                            + " disconnected",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "45 psi, MET, step 2: 40 to 60 psi or higher",
        "38 psi, NOT_MET, step 2: from 40 psi",
        "65 psi, MET, step 2: or higher"
    })
    void alberta_supply_valve_pops_at_40_psi_or_higher_with_both_lines_open(
            String psi, Status expected, String where) {
        Judged judged = alberta(psi, "disconnected", "set");

        CanadaFindings.require(judged.finding(AB_SUPPLY), expected, psi, "step 2");
        requireMajorOrNone(judged, AB_SUPPLY, expected);
    }

    @Source(
            work = "Commercial Driver's Guide (Alberta), trip air brake",
            edition = "page read 2026-11-25",
            where = "step 2: park control pulled, both trailer lines disconnected",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "lines {0}, parking brake {1}")
    @CsvSource({
        "service-disconnected, set, service disconnected, step 2: both lines",
        "supply-disconnected, set, supply disconnected, step 2: both lines",
        "connected, set, connected, step 2: both lines",
        "disconnected, released, released, step 2: park control pulled"
    })
    void alberta_supply_valve_tried_otherwise_says_nothing(
            String lines, String parkingBrake, String named, String where) {
        CanadaFindings.requireSpoiled(alberta("38 psi", lines, parkingBrake), AB_SUPPLY, named);
    }

    @Source(
            work = "Commercial Driver's Guide (Alberta), trip air brake",
            edition = "page read 2026-11-25",
            where = "step 3: park control valve pops at 20 to 45 psi (138 to 311 kPa)",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "46 psi, NOT_MET, step 3: to 45 psi",
        "45 psi, MET, step 3: to 45 psi",
        "20 psi, MET, step 3: from 20 psi",
        "311 kPa, MET, step 3: to 311 kPa"
    })
    void alberta_park_valve_pops_at_20_to_45_psi(String reading, Status expected, String where) {
        Judged judged = judged("CA-AB", "parking-valve-closing: " + reading);

        CanadaFindings.require(judged.finding(AB_PARK), expected, reading, "step 3");
        requireMajorOrNone(judged, AB_PARK, expected);
    }

    @Source(
            work =
                    "Regulation respecting safety standards for road vehicles (Quebec), C-24.2,"
                            + " r. 32",
            edition = "versions read 2026-11-25",
            where = "s. 38(7), the tractor keeps 420 kPa; s. 166(6), major under 138 kPa",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void quebec_tractor_that_keeps_300_kpa_has_a_minor_defect_and_130_kpa_a_major_one() {
        Judged some = quebec("300 kPa");
        Judged little = quebec("130 kPa");

        CanadaFindings.require(some.finding(QC_KEEPS), Status.NOT_MET, "300 kPa", "section 38(7)");
        CanadaFindings.require(some.finding(QC_MAJOR), Status.MET, "300 kPa", "section 166(6)");
        CanadaFindings.requireDefect(some, QC_KEEPS, Severity.MINOR);
        CanadaFindings.require(
                little.finding(QC_MAJOR), Status.NOT_MET, "130 kPa", "section 166(6)");
        CanadaFindings.requireDefect(little, QC_MAJOR, Severity.MAJOR);
    }

    private static void requireMajorOrNone(Judged judged, String rule, Status expected) {
        if (expected == Status.NOT_MET) {
            CanadaFindings.requireDefect(judged, rule, Severity.MAJOR);
        } else {
            CanadaFindings.requireNoDefect(judged);
        }
    }

    private static Judged alberta(String psi, String lines, String parkingBrake) {
        String reading =
                "trailer-supply-closing: { gauge: %s, trailer-lines: %s, parking-brake: %s,"
                        + " engine: off,"
                        + " key: on, trailer-supply: open }";
        return judged("CA-AB", reading.formatted(psi, lines, parkingBrake));
    }

    private static Judged quebec(String kept) {
        return judged(
                "CA-QC",
                "tractor-protection: { gauge: " + kept + ", trailer-lines: disconnected }");
    }

    private static Judged judged(String place, String reading) {
        return Judged.inspection(
                place, TODAY, CanadaVehicles.TRACTOR_TRAILER, "readings:\n  " + reading + "\n");
    }
}
