package org.fandown.reference.air;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.fandown.air.InCab;
import org.fandown.generated.Generated;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.reference.air.HealthyVehicle.Timed;
import org.fandown.vehicle.BuildStandard;
import org.fandown.vehicle.UnitKind;
import org.fandown.vehicle.VehicleUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each example vehicle, sound and with the default governor, passes what the United States and
 * Canada ask for. Rows give the figure, the least and the most that is allowed, the number of units
 * they hold for (0 for any), and where they stand.
 */
class HealthyVehiclesReferenceTest {
    private static final String CFR = "49 CFR 571.121 (FMVSS 121)";
    private static final String EDITION = "as amended to 78 FR 21853 (2013)";
    private static final String READ = "2026-11-25";
    private static final Path MODEL = Path.of("..", "docs", "model.md");

    private static List<HealthyVehicle> vehicles = List.of();

    @BeforeAll
    static void read() throws IOException {
        vehicles = HealthyVehicle.all();
    }

    @Source(
            work = "Commercial driver licence manual, air brake section, as states reprint it",
            edition = "2013 and 2020 reprints",
            where = "checks made in the cab, row by row",
            kind = Kind.HANDBOOK,
            accessed = READ)
    @ParameterizedTest(name = "{0}: {4}")
    @CsvSource({
        "BUILD_UP, 5, 45, 0, '5.3.3: 85 to 100 psi within 45 s'",
        "LOW_AIR, 60, 80, 0, page 5-4: on before 60 psi",
        "PARKING_POP, 20, 45, 0, '5.3.3: between 20 and 45 psi'",
        "TRAILER_POP, 20, 45, 0, '5.3.3: between 20 and 45 psi'",
        "LOSS_RELEASED, 0, 1.99, 1, 'less than 2 psi, single'",
        "LOSS_RELEASED, 0, 2.99, 2, 'less than 3 psi, combination'",
        "LOSS_RELEASED, 0, 2.99, 4, 'less than 3 psi, combination'",
        "LOSS_APPLIED, 0, 3, 1, 'at most 3 psi, single'",
        "LOSS_APPLIED, 0, 4, 2, 'at most 4 psi, combination'",
        "LOSS_APPLIED, 0, 4, 4, 'at most 4 psi, combination'"
    })
    void manual_of_the_states(Figure figure, double least, double most, int units, String where) {
        requireAll(figure, least, most, units, where);
    }

    @Source(
            work = "Driver handbooks of Georgia and North Carolina",
            edition = "2023 to 2025, and undated",
            where = "11M.1.2; page 149",
            kind = Kind.HANDBOOK,
            accessed = READ)
    @ParameterizedTest(name = "{0}: {4}")
    @CsvSource({
        "CUT_OUT, 120, 140, 0, '11M.1.2 and p. 149: 120 to 140 psi'",
        "LOW_AIR, 55, 80, 0, '11M.1.2 and p. 149: before 55 psi'"
    })
    void handbooks_of_georgia_and_north_carolina(
            Figure figure, double least, double most, int units, String where) {
        requireAll(figure, least, most, units, where);
    }

    @Source(
            work = "California commercial driver handbook and California vehicle code",
            edition = "posted January 2013; code as read in 2026",
            where = "pages 88, 92 and 99; 26502(a)",
            kind = Kind.HANDBOOK,
            accessed = READ)
    @ParameterizedTest(name = "{0}: {4}")
    @CsvSource({
        "CUT_OUT, 100, 129.9, 0, p. 88: before 130 psi",
        "CUT_IN, 85, 120, 0, p. 99: not below 85 psi",
        "LOW_AIR, 55, 75, 0, p. 99: between 55 and 75 psi",
        "PARKING_POP, 20, 45, 0, p. 92: 20 to 45 psi",
        "LOSS_APPLIED, 0, 3, 1, p. 88: single",
        "LOSS_APPLIED, 0, 4, 2, p. 88: two units",
        "LOSS_APPLIED, 0, 6, 4, p. 88: three or more",
        "CHAMBERS, 90, 100, 0, 26502(a): 90 percent of the reservoir"
    })
    void handbook_and_code_of_california(
            Figure figure, double least, double most, int units, String where) {
        requireAll(figure, least, most, units, where);
    }

    @Source(
            work = CFR,
            edition = EDITION,
            where = "S5.1.1.1, S5.1.5, S5.1.7",
            kind = Kind.REGULATION,
            accessed = READ)
    @ParameterizedTest(name = "{0}: {4}")
    @CsvSource({
        "CUT_IN, 100, 115, 0, S5.1.1.1: truck at least 100 psi",
        "LOW_AIR, 60, 80, 0, S5.1.5: on below 60 psi",
        "STOP_LAMPS, 0, 6, 0, S5.1.7: at 6 psi or less"
    })
    void standard_for_new_vehicles(
            Figure figure, double least, double most, int units, String where) {
        requireAll(figure, least, most, units, where);
    }

    @Source(
            work = "49 CFR 393.50(a)",
            edition = "older wording, excerpt",
            where = "70 percent left after a full application with the engine stopped",
            kind = Kind.REGULATION,
            accessed = READ)
    @Test
    void reserve_after_a_full_application() {
        requireAll(Figure.LEFT, 70, 99, 0, "393.50(a)");
    }

    @Source(
            work = "British Columbia, Driving Commercial Vehicles manual",
            edition = "as read online",
            where = "page 218 of the online copy",
            kind = Kind.HANDBOOK,
            accessed = READ)
    @ParameterizedTest(name = "{0}: {4}")
    @CsvSource({
        "FROM_50, 10, 180, 0, 50 to 90 psi within 3 min",
        "CUT_OUT, 105, 135, 0, 105 to 135 psi",
        "CUT_IN, 80, 115, 0, before 80 psi",
        "LOW_AIR, 60, 80, 0, 60 psi or more",
        "TRAILER_POP, 20, 45, 0, highest gauge 20 to 45 psi"
    })
    void manual_of_british_columbia(
            Figure figure, double least, double most, int units, String where) {
        requireAll(figure, least, most, units, where);
    }

    @Source(
            work = "Alberta commercial driver's guide, trip air brake page",
            edition = "as read online",
            where = "steps 2 to 4",
            kind = Kind.HANDBOOK,
            accessed = READ)
    @ParameterizedTest(name = "{0}: {4}")
    @CsvSource({
        "LOW_AIR, 60, 80, 0, step 2: on by 60 psi",
        "KEPT, 40, 110, 0, 'step 2: pops at 40 to 60 psi or higher, both lines apart'",
        "PARKING_POP, 20, 45, 0, step 3: 20 to 45 psi",
        "FROM_50, 10, 180, 0, step 4: 50 to 90 psi within 3 min"
    })
    void guide_of_alberta(Figure figure, double least, double most, int units, String where) {
        requireAll(figure, least, most, units, where);
    }

    @Source(
            work = "Saskatchewan air brake manual, pre-trip of an air combination unit",
            edition = "as read online",
            where = "pre-trip procedure",
            kind = Kind.HANDBOOK,
            accessed = READ)
    @ParameterizedTest(name = "{0}: {4}")
    @CsvSource({
        "CUT_OUT, 120, 145, 0, 120 to 145 psi",
        "CUT_IN, 100, 115, 0, at least 100 psi",
        "LOSS_APPLIED, 0, 4, 2, 4 psi in 1 min",
        "KEPT, 20, 100, 0, stops at 20 psi or more"
    })
    void manual_of_saskatchewan(Figure figure, double least, double most, int units, String where) {
        requireAll(figure, least, most, units, where);
    }

    @Source(
            work = "Ontario driver's, truck and air brake handbooks",
            edition = "as read online",
            where = "sections on air brake operation, 6-1-3 and 6-1-4",
            kind = Kind.HANDBOOK,
            accessed = READ)
    @ParameterizedTest(name = "{0}: {4}")
    @CsvSource({
        "LOW_AIR, 55, 80, 0, 55 psi or more",
        "BUILD_UP_AT_600, 10, 120, 0, '6-1-3: within 2 min at 600 rpm'",
        "BUILD_UP_AT_900, 10, 120, 0, '6-1-3: within 2 min at 900 rpm'",
        "LOSS_APPLIED, 0, 3, 1, '6-1-4: 3 psi, straight truck'",
        "LOSS_APPLIED, 0, 4, 2, '6-1-4: 4 psi, tractor and trailer'",
        "CUT_IN, 80, 120, 0, '6-1-4: 80 psi or more'",
        "CUT_OUT, 100, 135, 0, '6-1-6: 135 psi; 6-1-4 has 145'"
    })
    void handbooks_of_ontario(Figure figure, double least, double most, int units, String where) {
        requireAll(figure, least, most, units, where);
    }

    @Source(
            work = "Quebec, C-24.2, r. 32, sections 38 and 166",
            edition = "as read in French",
            where = "row by row; kilopascals as printed in psi",
            kind = Kind.REGULATION,
            accessed = READ)
    @ParameterizedTest(name = "{0}: {4}")
    @CsvSource({
        "FROM_50, 10, 179, 0, '38(1): 350 to 620 kPa in less than 3 min'",
        "CUT_IN, 79.8, 120, 0, 38(2): before 550 kPa",
        "CUT_OUT, 116.8, 137.1, 0, 38(2): 805 to 945 kPa",
        "LOW_AIR, 55.1, 80, 0, 38(3): under 380 kPa",
        "LOSS_APPLIED, 0, 5.8, 1, 166(5): 40 kPa",
        "LOSS_APPLIED, 0, 7.0, 2, 166(5): 48 kPa",
        "LOSS_APPLIED, 0, 9.0, 4, 166(5): 62 kPa",
        "KEPT, 60.9, 110, 0, 38(7): keeps 420 kPa"
    })
    void regulation_of_quebec(Figure figure, double least, double most, int units, String where) {
        requireAll(figure, least, most, units, where);
    }

    @Source(
            work = "Newfoundland and Labrador air brake manual",
            edition = "as read online",
            where = "single unit, combination unit",
            kind = Kind.HANDBOOK,
            accessed = READ)
    @ParameterizedTest(name = "{0}: {4}")
    @CsvSource({
        "FROM_50, 10, 300, 0, 50 to 90 psi within 5 min",
        "CUT_OUT, 105, 125, 0, 105 to 125 psi",
        "CUT_IN, 80, 120, 0, about 80 psi",
        "LOSS_APPLIED, 0, 3.99, 0, less than 4 psi",
        "PARKING_POP, 20, 45, 0, 45 to 20 psi",
        "KEPT, 20, 100, 0, stops at 45 to 20 psi"
    })
    void manual_of_newfoundland(Figure figure, double least, double most, int units, String where) {
        requireAll(figure, least, most, units, where);
    }

    @Source(
            work = CFR,
            edition = EDITION,
            where = "S5.1.1: 25 s x actual / required volume of the reservoirs",
            kind = Kind.REGULATION,
            accessed = READ,
            note = "2000 rpm stands for the highest speed recommended")
    @Test
    void new_powered_units_build_up_by_the_reservoir_formula() {
        for (HealthyVehicle vehicle : vehicles) {
            double ratio = HealthyVehicle.reservoirRatio(vehicle.vehicle.powerUnit());
            double most = 25 * Math.max(1, ratio / 12);

            assertThat(vehicle.buildUpAlone(2000)).as(vehicle.name).isBetween(3.0, most);
        }
    }

    @Source(
            work = CFR,
            edition = EDITION,
            where = "S5.1.2.1: 12 times; S5.2.1.1: 8 times the chambers of Table V",
            kind = Kind.REGULATION,
            accessed = READ,
            note = "units built to the standard of another place left out")
    @Test
    void reservoirs_hold_twelve_and_eight_times_the_chambers() {
        for (HealthyVehicle vehicle : vehicles) {
            for (VehicleUnit unit : vehicle.vehicle.unitsWithAirBrakes()) {
                boolean here =
                        unit.standards().isEmpty()
                                || unit.standards().contains(BuildStandard.FMVSS_121);
                double ratio = HealthyVehicle.reservoirRatio(unit);
                double least = unit.kind().isPowered() ? 12 : 8;
                if (here && ratio > 0) {
                    assertThat(ratio).as(unit.id()).isGreaterThanOrEqualTo(least);
                }
            }
        }
    }

    @Source(
            work = CFR,
            edition = EDITION,
            where = "S5.3.3.1(a) and S5.3.4.1(a)",
            kind = Kind.REGULATION,
            accessed = READ,
            note =
                    "towed units are timed from the pedal of the example's own powered unit, which"
                            + " is stricter than the rig of the standard")
    @ParameterizedTest(name = "{4}")
    @CsvSource({
        "truck, false, 0.45, 0.55, 'S5.3.3.1(a), S5.3.4.1(a): truck, bus or tractor'",
        "trailer, true, 0.50, 1.00, 'S5.3.3.1(a), S5.3.4.1(a): trailer that tows'",
        "dolly, false, 0.55, 1.10, 'S5.3.3.1(a), S5.3.4.1(a): converter dolly'",
        "trailer, false, 0.60, 1.20, 'S5.3.3.1(a), S5.3.4.1(a): other trailer'"
    })
    void chambers_fill_to_60_psi_and_empty_to_5_psi_in_time(
            String kind, boolean tows, double apply, double release, String where) {
        int seen = 0;
        for (HealthyVehicle vehicle : vehicles) {
            for (Timed unit : vehicle.timed()) {
                boolean same = kind.equals("truck") || kind.equals("dolly") || tows == unit.tows();
                if (kind.equals(kindOf(unit.kind())) && same && unit.apply() > 0) {
                    seen++;
                    assertThat(unit.apply()).as(unit.what()).isBetween(0.05, apply);
                    assertThat(unit.release()).as(unit.what()).isBetween(0.05, release);
                }
            }
        }
        assertThat(seen).as(where).isPositive();
    }

    private static String kindOf(UnitKind kind) {
        if (kind.isPowered()) {
            return "truck";
        }
        return kind == UnitKind.DOLLY ? "dolly" : "trailer";
    }

    private static void requireAll(
            Figure figure, double least, double most, int units, String where) {
        int seen = 0;
        for (HealthyVehicle vehicle : vehicles) {
            boolean meant = units == 0 || units == Math.max(1, vehicle.units());
            if (meant && figure.appliesTo(vehicle)) {
                seen++;
                assertThat(vehicle.found(figure))
                        .as("%s of %s: %s", figure, vehicle, where)
                        .isNotEqualTo(InCab.NEVER)
                        .isBetween(least, most);
            }
        }
        assertThat(seen).as("vehicles for %s", where).isPositive();
    }

    /** Writes what was found into the documents. */
    @Source(
            work = "The limits of the tests of this class",
            edition = "as named at each",
            where = "tables of docs/model.md",
            kind = Kind.HANDBOOK,
            accessed = READ)
    @Test
    void the_tables_of_the_documents_are_what_was_found() throws IOException {
        StringBuilder table = new StringBuilder("| vehicle |");
        for (Figure figure : Figure.values()) {
            table.append(' ').append(figure.label).append(" |");
        }
        table.append("\n|---|").append("---|".repeat(Figure.values().length)).append('\n');
        for (HealthyVehicle vehicle : vehicles) {
            table.append("| ").append(vehicle).append(" |");
            for (Figure figure : Figure.values()) {
                table.append(' ').append(cell(vehicle, figure)).append(" |");
            }
            table.append('\n');
        }
        Generated.check(MODEL, "healthy-vehicles", table.toString());
        Generated.check(MODEL, "healthy-timings", timings());
    }

    private static String timings() {
        StringBuilder table =
                new StringBuilder("| vehicle | unit | to 60 psi, s | to 5 psi, s |\n");
        table.append("|---|---|---|---|\n");
        for (HealthyVehicle vehicle : vehicles) {
            for (Timed unit : vehicle.timed()) {
                table.append("| ").append(vehicle).append(" | ");
                table.append(unit.kind().name().toLowerCase(Locale.ROOT));
                table.append(' ').append(unit.what()).append(" | ");
                table.append(String.format(Locale.ROOT, "%.2f | ", unit.apply()));
                table.append(String.format(Locale.ROOT, "%.2f |\n", unit.release()));
            }
        }
        return table.toString();
    }

    private static String cell(HealthyVehicle vehicle, Figure figure) {
        String format = "%." + figure.decimals + "f";
        return figure.appliesTo(vehicle)
                ? String.format(Locale.ROOT, format, vehicle.found(figure))
                : "-";
    }
}
