package org.fandown.reference.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.fandown.reference.air.AirFigures.ROOM;
import static org.fandown.reference.air.AirFigures.TANK;
import static org.fandown.reference.air.AirFigures.atStepZero;
import static org.fandown.reference.air.AirFigures.psi;
import static org.fandown.reference.air.AirFigures.tankHole;

import java.util.function.DoubleUnaryOperator;
import org.fandown.air.AirNetwork;
import org.fandown.air.AirNetworkBuilder;
import org.fandown.air.AirNode;
import org.fandown.air.AirSource;
import org.fandown.air.AirState;
import org.fandown.air.AirStepper;
import org.fandown.air.Ambient;
import org.fandown.air.Restriction;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.units.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A tank of constant temperature is filled and emptied; the engine goes to the closed forms. */
class TankReferenceTest {
    /** Ratio at which an ideal nozzle chokes. */
    private static final double NOZZLE = 0.5282817877;

    /** Step from which the value at step zero is extrapolated, s. */
    private static final double STEP = 0.02;

    /** The expected values are printed to ten digits; extrapolation leaves some 1e-9 of them. */
    private static final double TEN_DIGITS_PERCENT = 1e-6;

    /** The expected values are printed to six digits. */
    private static final double SIX_DIGITS_PERCENT = 1e-3;

    /** The straight line of the flow law near equal pressures, 0.1 % of the supply, in psi. */
    private static final double STRAIGHT_LINE = 0.135;

    /** How far the ellipse is below the exact nozzle, at most. */
    private static final double ELLIPSE_PERCENT = 0.3;

    @Source(
            work = "Isothermal discharge of a tank while choked, closed form",
            edition = "time constant V / (Cd A K sqrt(R T)) = 68.67984992 s",
            where = "30 L, hole 2 mm, coefficient 0.7, from 120 psi, after 10 s",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25",
            note = "checked against a solver of differential equations")
    @Test
    void pressure_falls_exponentially_while_choked() {
        assertThat(atStepZero(step -> discharged(NOZZLE, 10, step), STEP))
                .isCloseTo(101.7487991, withinPercentage(TEN_DIGITS_PERCENT));
        assertThat(atStepZero(step -> discharged(NOZZLE, 108.330286, step), STEP))
                .isCloseTo(13.12244, withinPercentage(TEN_DIGITS_PERCENT * 10));
    }

    @Source(
            work = "Isothermal time constant of a tank, closed form",
            edition = "V / (C x density x R x T)",
            where = "30 L, hole 2 mm, coefficient 0.7, 293.15 K",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @Test
    void the_conductance_gives_the_time_constant() {
        double capacity = TANK.cubicMetres() / (Nozzle.GAS_CONSTANT * ROOM.kelvins());
        double density = 1.185;

        assertThat(capacity / (tankHole(NOZZLE).conductance() * density))
                .isCloseTo(68.67984992, withinPercentage(TEN_DIGITS_PERCENT));
    }

    @Source(
            work = "Isothermal charge of a tank through the ellipse of ISO 6358, closed form",
            edition = "r = b + (1 - b) sin((t - tc) / ((1 - b) tau)) after a straight rise",
            where = "30 L from 0 psi, supply of 120 psi, b 0.3, row by row",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25",
            note = "checked against a solver of differential equations")
    @ParameterizedTest(name = "{2}")
    @CsvSource({
        "5, 9.806074776, choked",
        "20, 39.17810305, on the ellipse",
        "30, 58.15931193, on the ellipse",
        "40, 75.74175059, on the ellipse"
    })
    void a_tank_fills_along_the_closed_form(double seconds, double expected, String where) {
        assertThat(atStepZero(step -> charged(0.3, seconds, step), STEP))
                .isCloseTo(expected, withinPercentage(TEN_DIGITS_PERCENT));
    }

    @Source(
            work = "Isothermal charge of a tank through the ellipse of ISO 6358, closed form",
            edition = "full at tc + (1 - b) tau pi / 2",
            where = "30 L from 0 psi, supply of 120 psi, b 0.3: full at 88.62810601 s",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @Test
    void a_tank_is_full_when_the_closed_form_says() {
        assertThat(charged(0.3, 88.62810601, STEP / 4)).isEqualTo(120, within(STRAIGHT_LINE));
        assertThat(charged(0.3, 80, STEP / 4)).isLessThan(120 - STRAIGHT_LINE);
    }

    @Source(
            work = "Isothermal discharge of a tank through the ellipse of ISO 6358, closed form",
            edition = "choked phase, then a logarithm of the half angle",
            where = "30 L from 120 psi, b 0.3: 5 psi after 69.46797458 + 66.67363291 s",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25",
            note = "checked by numerical integration")
    @Test
    void a_tank_empties_along_the_closed_form() {
        assertThat(atStepZero(step -> discharged(0.3, 136.1416075, step), STEP))
                .isCloseTo(5, withinPercentage(TEN_DIGITS_PERCENT));
        assertThat(discharged(0.3, 182.8055585, STEP)).isEqualTo(0, within(STRAIGHT_LINE));
    }

    @Source(
            work = "Tank behind an exact ideal nozzle, numerical integration",
            edition = "R 287.05, gamma 1.4",
            where = "30 L: 120 to 5 psi in 132.8875323 s; 0 to 100 and to 110 psi of 120 psi",
            kind = Kind.OTHER_PROGRAM,
            accessed = "2026-11-25")
    @Test
    void the_ellipse_takes_nearly_the_time_of_an_exact_nozzle() {
        double toFive = timeTo(step -> discharged(NOZZLE, step, 0.05), 5, 132.8875323);
        double toHundred = timeTo(step -> charged(NOZZLE, step, 0.05), 100, 53.22379461);
        double toHundredTen = timeTo(step -> charged(NOZZLE, step, 0.05), 110, 61.213788);

        assertThat(toFive).isCloseTo(132.8875323, withinPercentage(ELLIPSE_PERCENT));
        assertThat(toHundred).isCloseTo(53.22379461, withinPercentage(ELLIPSE_PERCENT));
        assertThat(toHundredTen).isCloseTo(61.213788, withinPercentage(ELLIPSE_PERCENT));
    }

    @Source(
            work = "Boyle's law",
            edition = "worked by hand",
            where = "2000 in3 at 110 psi joined with 1200 in3 at 60 psi",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @Test
    void joined_tanks_come_to_the_mean_pressure() {
        AirNetworkBuilder builder = AirNetwork.builder(Ambient.STANDARD);
        AirNode large = builder.addRigid("large", Volume.ofCubicInches(2000));
        AirNode small = builder.addRigid("small", Volume.ofCubicInches(1200));
        builder.orifice("between", large, small, new Restriction(1e-8, 0.3));
        AirState state = builder.build().stateAtRest();
        state.setPressure(large, psi(110));
        state.setPressure(small, psi(60));

        run(state, 100, 0.1);

        assertThat(state.gauge(large).inPsi()).isCloseTo(91.25, withinPercentage(1e-10));
        assertThat(state.gauge(small).inPsi()).isCloseTo(91.25, withinPercentage(1e-10));
    }

    @Source(
            work = "Leak through a hole, closed form",
            edition = "p = p0 exp(-t / tau), tau 4536.392138 s",
            where = "115 L at 100 psi, hole 0.5 mm, coefficient 0.65: 1.517 psi in a minute",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @Test
    void a_small_leak_loses_what_the_closed_form_says_in_a_minute() {
        Restriction hole = Restriction.ofHole(Length.ofMillimetres(0.5), 0.65);

        double after = atStepZero(step -> discharged(Volume.ofLitres(115), hole, 100, 60, step), 1);

        assertThat(after).isCloseTo(98.49297716, withinPercentage(TEN_DIGITS_PERCENT));
    }

    @Source(
            work = "Leak through a hole, closed form",
            edition = "flow = V / (R T) x rate of the pressure",
            where = "115 L at 100 psi: 3 psi a minute is 0.471129 g/s, a hole of 0.70313 mm",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @Test
    void a_leak_of_three_psi_a_minute_is_a_hole_of_known_size() {
        Restriction hole = Restriction.ofHole(Length.ofMillimetres(0.70313), 0.65);
        double seconds = 1e-3;

        double after = discharged(Volume.ofLitres(115), hole, 100, seconds, seconds);

        assertThat((100 - after) / seconds * 60).isCloseTo(3, withinPercentage(SIX_DIGITS_PERCENT));
        double capacity = 0.115 / (Nozzle.GAS_CONSTANT * ROOM.kelvins());
        assertThat(1000 * capacity * (100 - after) * AirFigures.PSI / seconds)
                .isCloseTo(0.471129, withinPercentage(SIX_DIGITS_PERCENT));
    }

    @Source(
            work = "40 CFR 1065.644, vacuum-decay leak rate, with the data of its example",
            edition = "inputs as read",
            where = "0.002 m3 from 25300 to 50600 Pa at 293.15 K in 70 s: 2.965704685e-4 mol/s",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "worked out from the inputs as read, with 8.314472 J/(mol K)")
    @Test
    void a_vacuum_fills_by_the_leak_of_the_worked_example() {
        double molarGasConstant = 8.314472;
        double kilogramsPerMole = molarGasConstant / Nozzle.GAS_CONSTANT;
        AirNetworkBuilder builder = AirNetwork.builder(Ambient.STANDARD);
        AirNode tank = builder.addRigid("tank", Volume.ofLitres(2));
        AirSource leak = builder.source("leak", tank, ROOM);
        AirState state = builder.build().stateAtRest();
        state.setPressure(tank, new GaugePressure(25_300 - AirFigures.ATMOSPHERE));
        state.setInflow(leak, 2.965704685e-4 * kilogramsPerMole);

        run(state, 70, 1);

        assertThat(state.pascals(tank)).isCloseTo(50_600, withinPercentage(TEN_DIGITS_PERCENT));
    }

    @Source(
            work = "Build-up by a constant flow of air, closed form",
            edition = "t = V dp / (efficiency x displacement flow x atmosphere)",
            where = "85 to 100 psi, 7000 in3, 13.2 cfm at efficiency 0.7: 26.84894409 s",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @Test
    void a_source_of_constant_flow_builds_pressure_evenly() {
        double cfm = 4.719474432e-4;
        double density = AirFigures.ATMOSPHERE / (Nozzle.GAS_CONSTANT * ROOM.kelvins());
        AirNetworkBuilder builder = AirNetwork.builder(Ambient.STANDARD);
        AirNode tank = builder.addRigid("tank", Volume.ofCubicInches(7000));
        AirSource pump = builder.source("pump", tank, ROOM);
        AirState state = builder.build().stateAtRest();
        state.setPressure(tank, psi(85));
        state.setInflow(pump, 0.7 * 13.2 * cfm * density);

        run(state, 26.84894409, 0.1);

        assertThat(state.gauge(tank).inPsi()).isCloseTo(100, withinPercentage(TEN_DIGITS_PERCENT));
    }

    private static double charged(double ratio, double seconds, double step) {
        AirNetworkBuilder builder = AirNetwork.builder(Ambient.STANDARD);
        AirNode tank = builder.addRigid("tank", TANK);
        AirNode supply = builder.addBoundary("supply", psi(120), ROOM);
        builder.orifice("hole", supply, tank, tankHole(ratio));
        AirState state = builder.build().stateAtRest();
        run(state, seconds, step);
        return state.gauge(tank).inPsi();
    }

    private static double discharged(double ratio, double seconds, double step) {
        return discharged(TANK, tankHole(ratio), 120, seconds, step);
    }

    private static double discharged(
            Volume volume, Restriction hole, double from, double seconds, double step) {
        AirNetworkBuilder builder = AirNetwork.builder(Ambient.STANDARD);
        AirNode tank = builder.addRigid("tank", volume);
        builder.orifice("hole", tank, builder.atmosphere(), hole);
        AirState state = builder.build().stateAtRest();
        state.setPressure(tank, psi(from));
        run(state, seconds, step);
        return state.gauge(tank).inPsi();
    }

    /** Takes whole steps of equal length, near the one given, that end at the moment. */
    private static void run(AirState state, double seconds, double step) {
        AirStepper stepper = new AirStepper(state.network());
        long steps = Math.round(seconds / step);
        for (long i = 0; i < steps; i++) {
            stepper.step(state, seconds / steps);
        }
    }

    /** The time at which a pressure is reached, by the secant through two times near a guess. */
    private static double timeTo(DoubleUnaryOperator pressureAt, double pressure, double guess) {
        double early = pressureAt.applyAsDouble(0.99 * guess);
        double late = pressureAt.applyAsDouble(1.01 * guess);
        return guess * (0.99 + 0.02 * (pressure - early) / (late - early));
    }
}
