package org.fandown.reference.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.fandown.reference.air.AirFigures.ROOM;
import static org.fandown.reference.air.AirFigures.absolute;
import static org.fandown.reference.air.AirFigures.pascals;

import org.fandown.air.Flow;
import org.fandown.air.Gas;
import org.fandown.air.Restriction;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.units.AbsolutePressure;
import org.fandown.units.Length;
import org.fandown.units.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FlowReferenceTest {
    /** The expected values are printed to ten digits. */
    private static final double TEN_DIGITS_PERCENT = 1e-7;

    /** The expected values are printed to seven digits. */
    private static final double SEVEN_DIGITS_PERCENT = 2e-5;

    /** The expected values are printed to six digits. */
    private static final double SIX_DIGITS_PERCENT = 1e-3;

    /** The tables print four digits, and ratios of 0.99 leave three of them. */
    private static final double TABLE_PERCENT = 0.05;

    /** How far the ellipse of ISO 6358 is below the exact nozzle, at most. */
    private static final double ELLIPSE_PERCENT = 0.3;

    /** The handbook prints three digits, computed for air of 70 F with a constant of its own. */
    private static final double HANDBOOK_PERCENT = 0.8;

    private static final double SQUARE_MILLIMETRE = 1e-6;
    private static final double HOLE_1_MM = Math.PI / 4 * SQUARE_MILLIMETRE;

    /** One cubic foot a minute in m3/s. */
    private static final double CFM = 4.719474432e-4;

    /** Atmosphere of the handbook table, 14.696 psi. */
    private static final double HANDBOOK_ATMOSPHERE = 14.696 * AirFigures.PSI;

    private static final Temperature HANDBOOK_AIR = Temperature.ofFahrenheit(70);

    @Source(
            work = "Ideal nozzle, closed form",
            edition = "gamma 1.4",
            where = "critical ratio (2/(gamma+1))^(gamma/(gamma-1)) and choked flow function",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @Test
    void an_ideal_nozzle_chokes_at_its_critical_ratio() {
        assertThat(Restriction.ofHole(Length.ofMillimetres(1), 1).criticalRatio())
                .isCloseTo(0.5282817877, withinPercentage(TEN_DIGITS_PERCENT));
        assertThat(Nozzle.criticalRatio())
                .isCloseTo(0.5282817877, withinPercentage(TEN_DIGITS_PERCENT));
        assertThat(Nozzle.choked()).isCloseTo(0.6847314564, withinPercentage(TEN_DIGITS_PERCENT));
    }

    @Source(
            work = "Ideal nozzle, closed form",
            edition = "gamma 1.4",
            where = "flow function at four ratios of the pressures, row by row",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{2}")
    @CsvSource({
        "0.8, 0.5606610192, ratio 0.8",
        "0.9, 0.4225808638, ratio 0.9",
        "0.95, 0.3076411004, ratio 0.95",
        "0.99, 0.1406617026, ratio 0.99"
    })
    void the_nozzle_of_the_tests_gives_the_flow_function_and_the_ellipse_is_near(
            double ratio, double expected, String where) {
        assertThat(Nozzle.flowFunction(ratio))
                .isCloseTo(expected, withinPercentage(TEN_DIGITS_PERCENT));

        double flow = nozzleLike(1).flow(1e6, 1e6 * ratio);
        double choked = nozzleLike(1).flow(1e6, 0);
        assertThat(flow / choked * 0.6847314564)
                .isCloseTo(expected, withinPercentage(ELLIPSE_PERCENT));
    }

    @Source(
            work = "NACA TN 1592, tables of isentropic flow (Burcher)",
            edition = "1948, by way of textbook tables that agree",
            where = "p/p0 and A/A* at Mach 0.1, 0.5 and 1, row by row",
            kind = Kind.AGENCY,
            accessed = "2026-11-25",
            note = "four digits were seen in print, the others computed")
    @ParameterizedTest(name = "{3}")
    @CsvSource({
        "0.1, 0.993031, 5.821829, Mach 0.1",
        "0.5, 0.8430191754, 1.33984375, Mach 0.5",
        "1.0, 0.528282, 1.0, Mach 1"
    })
    void the_nozzle_of_the_tests_agrees_with_isentropic_tables(
            double mach, double ratio, double area, String where) {
        assertThat(Nozzle.pressureRatio(mach))
                .isCloseTo(ratio, withinPercentage(SIX_DIGITS_PERCENT));
        assertThat(Nozzle.choked() / Nozzle.flowFunction(ratio))
                .isCloseTo(area, withinPercentage(TABLE_PERCENT));
    }

    @Source(
            work = "Ideal nozzle, closed form",
            edition = "R 287.05, gamma 1.4",
            where = "hole of 1 mm from 100 psi to the atmosphere, coefficients 1 and 0.65",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{2}")
    @CsvSource({"1, 1.466065917e-3, coefficient 1", "0.65, 9.529428e-4, coefficient 0.65"})
    void a_hole_passes_the_choked_flow_of_a_nozzle(
            double discharge, double expected, String where) {
        Restriction hole = Restriction.ofHole(Length.ofMillimetres(1), discharge);

        assertThat(Flow.massFlow(hole, absolute(100), absolute(0), ROOM))
                .isCloseTo(expected, withinPercentage(SEVEN_DIGITS_PERCENT));
        assertThat(Nozzle.massFlow(discharge * HOLE_1_MM, pascals(100), pascals(0), 293.15))
                .isCloseTo(expected, withinPercentage(SEVEN_DIGITS_PERCENT));
    }

    @Source(
            work = "Ideal nozzle, closed form",
            edition = "R 287.05, gamma 1.4",
            where = "hole of 1 mm, coefficient 1, from 110 to 100 psi",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @Test
    void a_hole_passes_nearly_the_flow_of_a_nozzle_between_near_pressures() {
        Restriction hole = Restriction.ofHole(Length.ofMillimetres(1), 1);

        assertThat(Nozzle.massFlow(HOLE_1_MM, pascals(110), pascals(100), 293.15))
                .isCloseTo(8.912910e-4, withinPercentage(SEVEN_DIGITS_PERCENT));
        assertThat(Flow.massFlow(hole, absolute(110), absolute(100), ROOM))
                .isCloseTo(8.912910e-4, withinPercentage(ELLIPSE_PERCENT));
    }

    @Source(
            work = "Handbook table of the discharge of air through orifices, coefficient 1",
            edition = "undated",
            where = "rows of 1/4, 1/16, 1/8 and 1/64 in, free air in cubic feet a minute",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{3}")
    @CsvSource({
        "1/4 in, 1, 7.18, 1/4 in at 1 psi",
        "1/4 in, 5, 15.9, 1/4 in at 5 psi",
        "1/4 in, 15, 26.9, 1/4 in at 15 psi",
        "1/4 in, 60, 67.6, 1/4 in at 60 psi",
        "1/16 in, 100, 6.49, 1/16 in at 100 psi",
        "1/16 in, 120, 7.62, 1/16 in at 120 psi",
        "1/8 in, 45, 13.5, 1/8 in at 45 psi",
        "1/64 in, 125, 0.494, 1/64 in at 125 psi"
    })
    void holes_discharge_what_the_handbook_prints(
            String diameter, double gauge, double cfm, String where) {
        Restriction hole = Restriction.ofHole(Length.parse(diameter), 1);
        AbsolutePressure inside =
                new AbsolutePressure(gauge * AirFigures.PSI + HANDBOOK_ATMOSPHERE);
        AbsolutePressure outside = new AbsolutePressure(HANDBOOK_ATMOSPHERE);

        double flow = Flow.massFlow(hole, inside, outside, HANDBOOK_AIR);

        double density = HANDBOOK_ATMOSPHERE / (Nozzle.GAS_CONSTANT * HANDBOOK_AIR.kelvins());
        assertThat(flow / density / CFM).isCloseTo(cfm, withinPercentage(HANDBOOK_PERCENT));
    }

    @Source(
            work = "ISO 6358, choked mass flow, worked number of a component library",
            edition = "undated, reference density 1.185 kg/m3",
            where = "C 1e-8 m3/(s Pa), b 0.35, from 700 to 100 kPa",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25",
            note = "the standard itself was not read")
    @Test
    void choked_flow_is_conductance_times_density_times_pressure() {
        Restriction way = new Restriction(1e-8, 0.35);

        assertThat(flow(way, 700e3, 100e3))
                .isCloseTo(0.008295, withinPercentage(SIX_DIGITS_PERCENT));
    }

    @Source(
            work = "ISO 6358 flow with its ellipse, closed form",
            edition = "straight line from a ratio of 0.999",
            where = "row by row",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{5}")
    @CsvSource({
        "2e-8, 0.3, 800e3, 600e3, 0.01452309631, on the ellipse",
        "12e-8, 0.35, 800e3, 200e3, 0.11376, choked",
        "12e-8, 0.35, 800e3, 792e3, 0.01987792657, ratio 0.99",
        "12e-8, 0.35, 800e3, 799.2e3, 0.006307841939, ratio 0.999",
        "12e-8, 0.35, 800e3, 799.95e3, 3.942401212e-4, on the straight line"
    })
    void flow_follows_the_ellipse_and_the_straight_line(
            double c, double b, double from, double to, double expected, String where) {
        assertThat(flow(new Restriction(c, b), from, to))
                .isCloseTo(expected, withinPercentage(TEN_DIGITS_PERCENT));
    }

    @Source(
            work = "ISO 6358 conductance of an ideal nozzle, closed form",
            edition = "reference density 1.185 kg/m3 at 293.15 K",
            where = "C = area x choked flow function / (density x sqrt(R T))",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @Test
    void the_conductance_of_a_nozzle_is_in_proportion_to_its_area() {
        assertThat(Restriction.ofNozzle(1e-4, 0.5).conductance() / 1e-4)
                .isCloseTo(0.001991948952, withinPercentage(TEN_DIGITS_PERCENT));
    }

    @Source(
            work = "Ideal nozzle, closed form",
            edition = "R 287.05, gamma 1.4, 100 psi at 293.15 K",
            where = "holes that pass or fail an air loss test, row by row",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{3}")
    @CsvSource({
        "0.4572, 1, 0.3064544562, 0.018 in",
        "0.4572, 0.65, 0.1991953965, 0.018 in with a sharp edge",
        "0.70313, 0.65, 0.471129, 3 psi a minute from 115 L"
    })
    void small_holes_leak_as_much_as_nozzles(
            double millimetres, double discharge, double gramsPerSecond, String where) {
        Restriction hole = Restriction.ofHole(Length.ofMillimetres(millimetres), discharge);

        assertThat(1000 * Flow.massFlow(hole, absolute(100), absolute(0), ROOM))
                .isCloseTo(gramsPerSecond, withinPercentage(SIX_DIGITS_PERCENT));
    }

    @Source(
            work = "Speed of sound of an ideal gas, closed form",
            edition = "R 287.05, gamma 1.4",
            where = "60 ft and 15 m at 293.15 K",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @Test
    void pressure_travels_at_the_speed_of_sound() {
        assertThat(Gas.travelTime(Length.ofFeet(60), ROOM).seconds())
                .isCloseTo(0.05328174876, withinPercentage(TEN_DIGITS_PERCENT));
        assertThat(Gas.travelTime(Length.ofMetres(15), ROOM).seconds())
                .isCloseTo(0.04370, withinPercentage(TABLE_PERCENT));
    }

    private static Passage nozzleLike(double squareMillimetres) {
        double area = squareMillimetres * SQUARE_MILLIMETRE;
        return (from, to) -> flow(Restriction.ofNozzle(area, 0.5282817877), from, to);
    }

    private static double flow(Restriction way, double from, double to) {
        return Flow.massFlow(way, new AbsolutePressure(from), new AbsolutePressure(to), ROOM);
    }

    private interface Passage {
        double flow(double from, double to);
    }
}
