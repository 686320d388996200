package org.fandown.reference.judgement;

import static org.fandown.reference.judgement.CanadaFindings.TODAY;

import org.fandown.check.Severity;
import org.fandown.judgement.Status;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tests last one minute, so the loss is the drop of the needle. */
class CanadaAirLossReferenceTest {
    private static final String CLASS_A = "ca-on.air-loss-applied.class-a";
    private static final String CLASS_D = "ca-on.air-loss-applied.class-d";
    private static final String NEWFOUNDLAND = "ca-nl.air-loss-applied";

    @Source(
            work = "Official Truck Handbook (Ontario), daily inspection test",
            edition = "text read 2026-11-25",
            where = "6-1-4 air system leaks: tractor-trailer, 28 kPa (4 psi) in one minute",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0} to {1}: {3}")
    @CsvSource({
        "110 psi, 106 psi, 4 psi, MET, '6-1-4: 4.0 psi'",
        "110 psi, 105.5 psi, 4.5 psi, NOT_MET, '6-1-4: 4.5 psi'",
        "758 kPa, 731 kPa, 27 kPa, MET, '6-1-4: 27 kPa'",
        "758 kPa, 730 kPa, 28 kPa, MET, '6-1-4: 28 kPa'",
        "758 kPa, 729 kPa, 29 kPa, NOT_MET, '6-1-4: 29 kPa'"
    })
    void ontario_tractor_trailer_may_lose_4_psi_after_the_first_drop(
            String start, String end, String loss, Status expected, String where) {
        Judged judged = ontario(CanadaVehicles.TRACTOR_TRAILER, start, end, "engine: off");

        CanadaFindings.require(judged.finding(CLASS_A), expected, loss, "6-1-4");
        requireMajorOrNone(judged, CLASS_A, expected);
    }

    @Source(
            work = "Official Truck Handbook (Ontario), daily inspection test",
            edition = "text read 2026-11-25",
            where =
                    "6-1-4: spring brakes released, pressure between cut-in and cut-out, engine"
                            + " off, key"
                            + " on, first drop disregarded",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{2}, from {0}")
    @CsvSource({
        "99 psi, 98 psi, engine: off, 99 psi, 6-1-4: below cut-in",
        "126 psi, 125 psi, engine: off, 126 psi, 6-1-4: above cut-out",
        "110 psi, 109 psi, engine: running, running, 6-1-4: engine off",
        "110 psi, 109 psi, key: off, key off, 6-1-4: key on",
        "110 psi, 109 psi, parking-brake: set, set, 6-1-4: spring brakes released",
        "110 psi, 109 psi, wheels: free, free, 6-1-4: chocked"
    })
    void ontario_loss_measured_otherwise_says_nothing(
            String start, String end, String noted, String named, String where) {
        Judged judged = ontario(CanadaVehicles.TRUCK, start, end, noted);

        CanadaFindings.requireSpoiled(judged, CLASS_D, named);
    }

    @Source(
            work =
                    "Official Truck Handbook (Ontario), daily inspection test; Air Brake Manual"
                            + " (Newfoundland and Labrador)",
            edition = "texts read 2026-11-25",
            where = "6-1-4, straight truck, 21 kPa (3 psi); single unit, less than 4 psi",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @Test
    void straight_truck_that_loses_3_5_psi_fails_ontario_and_passes_newfoundland() {
        Judged ontario = ontario(CanadaVehicles.TRUCK, "110 psi", "106.5 psi", "engine: off");
        Judged newfoundland = newfoundland("106.5 psi", "released");

        CanadaFindings.require(ontario.finding(CLASS_D), Status.NOT_MET, "3.5 psi", "6-1-4");
        CanadaFindings.requireDefect(ontario, CLASS_D, Severity.MAJOR);
        CanadaFindings.require(
                newfoundland.finding(NEWFOUNDLAND), Status.MET, "3.5 psi", "single unit");
        CanadaFindings.requireNoDefect(newfoundland);
    }

    @Source(
            work = "Air Brake Manual (Newfoundland and Labrador)",
            edition = "text read 2026-11-25",
            where = "single unit: less than 4 psi, parking brakes released",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @Test
    void newfoundland_truck_that_loses_exactly_4_psi_fails() {
        Judged judged = newfoundland("106 psi", "released");

        CanadaFindings.require(
                judged.finding(NEWFOUNDLAND), Status.NOT_MET, "4 psi", "single unit");
        CanadaFindings.requireDefect(judged, NEWFOUNDLAND, Severity.MAJOR);
        CanadaFindings.requireSpoiled(newfoundland("106 psi", "set"), NEWFOUNDLAND, "set");
    }

    @Source(
            work =
                    "Regulation respecting safety standards for road vehicles (Quebec), C-24.2,"
                            + " r. 32",
            edition = "version of 2024-11-26",
            where = "s. 166(5): over 40 kPa one vehicle, 48 kPa two, 62 kPa three",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0} vehicles, {2}: {3}")
    @CsvSource({
        "one, 760 kPa, 40 kPa, MET, s. 166(5)",
        "one, 759 kPa, 41 kPa, NOT_MET, s. 166(5)",
        "two, 752 kPa, 48 kPa, MET, s. 166(5)",
        "two, 751 kPa, 49 kPa, NOT_MET, s. 166(5)",
        "three, 738 kPa, 62 kPa, MET, s. 166(5)",
        "three, 737 kPa, 63 kPa, NOT_MET, s. 166(5)"
    })
    void quebec_loss_is_major_over_a_figure_for_one_two_or_three_vehicles(
            String vehicles, String end, String loss, Status expected, String where) {
        Judged judged = quebec(vehicles, end, "yes");
        String rule =
                "ca-qc.air-loss-applied."
                        + vehicles
                        + (vehicles.equals("one") ? "-vehicle" : "-vehicles");

        CanadaFindings.require(judged.finding(rule), expected, loss, "section 166(5)");
        requireMajorOrNone(judged, rule, expected);
    }

    @Source(
            work =
                    "Regulation respecting safety standards for road vehicles (Quebec), C-24.2,"
                            + " r. 32",
            edition = "French text read 2026-11-25",
            where = "s. 38(0.1): no leak that can be heard, brakes applied or not",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @Test
    void quebec_leak_that_can_be_heard_is_a_defect_whatever_the_loss() {
        Judged judged = quebec("two", "752 kPa", "no");

        CanadaFindings.require(
                judged.finding("ca-qc.air-loss-applied.two-vehicles"),
                Status.MET,
                "48 kPa",
                "section 166(5)");
        CanadaFindings.requireDefect(judged, "ca-qc.no-audible-leak", Severity.MINOR);
    }

    private static void requireMajorOrNone(Judged judged, String rule, Status expected) {
        if (expected == Status.NOT_MET) {
            CanadaFindings.requireDefect(judged, rule, Severity.MAJOR);
        } else {
            CanadaFindings.requireNoDefect(judged);
        }
    }

    private static Judged ontario(String vehicle, String start, String end, String noted) {
        String evidence =
                """
                readings:
                  governor-cut-in: 100 psi
                  governor-cut-out: 125 psi
                  air-loss-applied:
                    { start: %s, end: %s, time: 1 min, service-brake: applied, fully-applied: yes,
                      after-initial-drop: yes, %s }
                """;
        return Judged.inspection("CA-ON", TODAY, vehicle, evidence.formatted(start, end, noted));
    }

    private static Judged newfoundland(String end, String parkingBrake) {
        String evidence =
                """
                readings:
                  air-loss-applied:
                    { start: 110 psi, end: %s, time: 1 min, engine: off, parking-brake: %s }
                """;
        return Judged.inspection(
                "CA-NL", TODAY, CanadaVehicles.TRUCK, evidence.formatted(end, parkingBrake));
    }

    private static Judged quebec(String vehicles, String end, String quiet) {
        String vehicle =
                switch (vehicles) {
                    case "one" -> CanadaVehicles.TRUCK;
                    case "two" -> CanadaVehicles.TRACTOR_TRAILER;
                    default -> CanadaVehicles.DOUBLES;
                };
        String evidence =
                """
                readings:
                  no-audible-leak: %s
                  air-loss-applied: { start: 800 kPa, end: %s, time: 1 min, engine: off }
                """;
        return Judged.inspection("CA-QC", TODAY, vehicle, evidence.formatted(quiet, end));
    }
}
