package org.fandown.reference.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.fandown.reference.air.AirFigures.ROOM;
import static org.fandown.reference.air.AirFigures.TANK;
import static org.fandown.reference.air.AirFigures.atStepZero;
import static org.fandown.reference.air.AirFigures.psi;
import static org.fandown.reference.air.AirFigures.tankHole;

import org.fandown.air.AirNetwork;
import org.fandown.air.AirNetworkBuilder;
import org.fandown.air.AirNode;
import org.fandown.air.AirState;
import org.fandown.air.AirStepper;
import org.fandown.air.Ambient;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.units.Temperature;
import org.fandown.units.TimeSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The gas of a reservoir warms when filled, cools when emptied, and settles to its wall. */
class ReservoirHeatReferenceTest {
    private static final double NOZZLE = 0.5282817877;

    /** A wall that gives no heat in the time of a test. */
    private static final TimeSpan INSULATED = new TimeSpan(1e10);

    private static final double STEP = 0.02;

    /** The expected values are printed to ten digits; extrapolation leaves some 1e-9 of them. */
    private static final double TEN_DIGITS_PERCENT = 1e-6;

    /** Energy is balanced in each step, so the law of a fill holds at any step. */
    private static final double ANY_STEP_PERCENT = 1e-6;

    /** The expected values are printed to hundredths. */
    private static final double PRINTED_TO_HUNDREDTHS = 0.005;

    @Source(
            work = "Adiabatic discharge of a tank while choked, closed form",
            edition = "p = p0 (1 + (gamma - 1)/2 t/tau)^(-2 gamma/(gamma - 1))",
            where = "30 L, hole 2 mm, coefficient 0.7, from 120 psi at 293.15 K, after 10 s",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25",
            note = "checked against a solver of differential equations")
    @Test
    void an_insulated_tank_cools_as_it_empties() {
        assertThat(atStepZero(step -> emptied(10, step).gaugePsi(), STEP))
                .isCloseTo(95.48095545, withinPercentage(TEN_DIGITS_PERCENT));
        assertThat(atStepZero(step -> emptied(10, step).kelvins(), STEP))
                .isCloseTo(276.7944234, withinPercentage(TEN_DIGITS_PERCENT));
    }

    @Source(
            work = "Adiabatic drop, closed form",
            edition = "T = T0 (p/p0)^((gamma - 1)/gamma)",
            where = "120 to 100 psi from 293.15 K",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @Test
    void the_temperature_after_an_adiabatic_drop_depends_on_the_pressures_alone() {
        assertThat(atStepZero(step -> temperatureAt(100, step), STEP))
                .isCloseTo(279.9917255, withinPercentage(TEN_DIGITS_PERCENT));
    }

    @Source(
            work = "Adiabatic charge of a tank, closed form",
            edition = "T = p / (p0/T0 + (p - p0)/(gamma Ts))",
            where = "from a supply at 293.15 K, row by row",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{2}")
    @CsvSource({"0, 393.2479352, 0 to 120 psi", "100, 306.1374497, 100 to 120 psi"})
    void an_insulated_tank_warms_as_it_fills(double from, double kelvins, String where) {
        AirNetworkBuilder builder = AirNetwork.builder(Ambient.STANDARD);
        AirNode tank = builder.addReservoir("tank", TANK, INSULATED);
        AirNode supply = builder.addBoundary("supply", psi(150), ROOM);
        builder.orifice("hole", supply, tank, tankHole(NOZZLE));
        AirState state = builder.build().stateAtRest();
        state.setPressure(tank, psi(from));

        assertThat(crossing(state, tank, 120, 0.001))
                .isCloseTo(kelvins, withinPercentage(ANY_STEP_PERCENT));
    }

    @Source(
            work = "Ideal gas at constant volume, closed form",
            edition = "p / T is constant",
            where = "back to 293.15 K after a fill or a drop, row by row",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{3}")
    @CsvSource({
        "120, 393.2479352, 85.71428571, filled from 0 psi",
        "120, 306.1374497, 114.2857143, filled from 100 psi",
        "100, 279.9917255, 105.3901621, fallen from 120 psi"
    })
    void pressure_settles_when_the_gas_takes_on_the_temperature_of_the_wall(
            double gauge, double kelvins, double settled, String where) {
        Tank tank = new Tank(TimeSpan.ofSeconds(20), gauge, kelvins);

        tank.run(1000, 0.5);

        assertThat(tank.gaugePsi()).isCloseTo(settled, withinPercentage(ANY_STEP_PERCENT));
        assertThat(tank.kelvins()).isCloseTo(293.15, withinPercentage(ANY_STEP_PERCENT));
    }

    @Source(
            work = "Settling of a warm gas, closed form",
            edition = "excess pressure falls exponentially with the time constant of the wall",
            where = "30 L filled from 100 to 120 psi: false leak in psi a minute, row by row",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{3}")
    @CsvSource({
        "40, 0, 8.57, time constant 40 s at once",
        "40, 120, 0.43, time constant 40 s after two minutes",
        "20, 0, 17.1, time constant 20 s at once",
        "20, 120, 0.04, time constant 20 s after two minutes"
    })
    void a_fast_fill_shows_a_leak_that_is_none(
            double wall, double wait, double psiPerMinute, String where) {
        Tank tank = new Tank(TimeSpan.ofSeconds(wall), 120, 306.1374497);
        tank.run(wait, 0.01);
        double before = tank.gaugePsi();

        tank.run(0.1, 0.001);

        double tenth = psiPerMinute > 10 ? 10 * PRINTED_TO_HUNDREDTHS : PRINTED_TO_HUNDREDTHS;
        double rounding = tenth + psiPerMinute * 0.1 / wall;
        assertThat((before - tank.gaugePsi()) * 600).isEqualTo(psiPerMinute, within(rounding));
    }

    @Source(
            work = "Ideal gas at constant volume, closed form",
            edition = "dp = absolute pressure x dT / T",
            where =
                    "100 psi at 293.15 K for one kelvin and one degree F; 120 psi from 80 F to 20 F",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{4}")
    @CsvSource({
        "100, 293.15, 294.15, 100.3912534505, one kelvin more",
        "100, 293.15, 293.70555555555556, 100.217363028, one degree F more",
        "120, 299.81666666666667, 266.48333333333333, 105.0246318, from 80 F to 20 F overnight"
    })
    void the_pressure_of_a_parked_vehicle_follows_the_weather(
            double gauge, double before, double after, double expected, String where) {
        Ambient weather = new Ambient(Ambient.STANDARD.pressure(), new Temperature(after));
        AirNetworkBuilder builder = AirNetwork.builder(weather);
        AirNode tank = builder.addReservoir("tank", TANK, TimeSpan.ofSeconds(20));
        AirState state = builder.build().stateAtRest();
        state.setPressure(tank, psi(gauge));
        state.setTemperature(tank, new Temperature(before));
        AirStepper stepper = new AirStepper(state.network());
        for (int i = 0; i < 2000; i++) {
            stepper.step(state, 0.5);
        }

        assertThat(state.gauge(tank).inPsi())
                .isCloseTo(expected, withinPercentage(ANY_STEP_PERCENT));
    }

    private static Tank emptied(double seconds, double step) {
        Tank tank = new Tank(INSULATED, 120, ROOM.kelvins());
        tank.run(seconds, step);
        return tank;
    }

    private static double temperatureAt(double gauge, double step) {
        Tank tank = new Tank(INSULATED, 120, ROOM.kelvins());
        return crossing(tank.state, tank.node, gauge, step);
    }

    /** Temperature where the pressure crosses a value, by a straight line within the step. */
    private static double crossing(AirState state, AirNode node, double gauge, double step) {
        AirStepper stepper = new AirStepper(state.network());
        double side = Math.signum(gauge - state.gauge(node).inPsi());
        double pressure = state.gauge(node).inPsi();
        double temperature = state.temperature(node).kelvins();
        while (side * (gauge - state.gauge(node).inPsi()) > 0) {
            pressure = state.gauge(node).inPsi();
            temperature = state.temperature(node).kelvins();
            stepper.step(state, step);
        }
        double part = (gauge - pressure) / (state.gauge(node).inPsi() - pressure);
        return temperature + part * (state.temperature(node).kelvins() - temperature);
    }

    /** The tank of the charge and discharge cases; closed unless insulated. */
    private static final class Tank {
        private final AirState state;
        private final AirNode node;

        private Tank(TimeSpan wall, double gauge, double kelvins) {
            AirNetworkBuilder builder = AirNetwork.builder(Ambient.STANDARD);
            node = builder.addReservoir("tank", TANK, wall);
            if (wall.equals(INSULATED)) {
                builder.orifice("hole", node, builder.atmosphere(), tankHole(NOZZLE));
            }
            state = builder.build().stateAtRest();
            state.setPressure(node, psi(gauge));
            state.setTemperature(node, new Temperature(kelvins));
        }

        private void run(double seconds, double step) {
            AirStepper stepper = new AirStepper(state.network());
            long steps = Math.round(seconds / step);
            for (long i = 0; i < steps; i++) {
                stepper.step(state, seconds / steps);
            }
        }

        private double gaugePsi() {
            return state.gauge(node).inPsi();
        }

        private double kelvins() {
            return state.temperature(node).kelvins();
        }
    }
}
