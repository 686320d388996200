package org.fandown.reference.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.fandown.reference.air.AirFigures.PSI;
import static org.fandown.reference.air.AirFigures.ROOM;
import static org.fandown.reference.air.AirFigures.pascals;
import static org.fandown.reference.air.AirFigures.psi;

import org.fandown.air.AirLink;
import org.fandown.air.AirNetwork;
import org.fandown.air.AirNetworkBuilder;
import org.fandown.air.AirNode;
import org.fandown.air.AirState;
import org.fandown.air.AirStepper;
import org.fandown.air.Ambient;
import org.fandown.air.LappingValve;
import org.fandown.air.Restriction;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.units.GaugePressure;
import org.fandown.units.Volume;
import org.junit.jupiter.api.Test;

/** One step of the engine against a step worked by hand. */
class StepReferenceTest {
    /** The expected values are printed to ten digits. */
    private static final double TEN_DIGITS_PERCENT = 1e-6;

    private static final double DENSITY = 1.185;

    @Source(
            work = "Implicit Euler step of two tanks, worked by hand",
            edition = "p' = mean + half difference / (1 + 2 h G R T / V)",
            where = "10 L at 900 and 500 kPa, 293.15 K, G 1e-6 kg/(s Pa), step 0.1 s",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @Test
    void one_step_between_two_tanks_is_implicit() {
        AirNetworkBuilder builder = AirNetwork.builder(Ambient.STANDARD);
        AirNode high = builder.addRigid("high", Volume.ofLitres(10));
        AirNode low = builder.addRigid("low", Volume.ofLitres(10));
        double flow = 1e-6 * (900e3 - 500e3);
        double chokedConductance = flow / (DENSITY * 900e3);
        builder.orifice("way", high, low, new Restriction(chokedConductance, 0.6));
        AirState state = builder.build().stateAtRest();
        state.setPressure(high, new GaugePressure(900e3 - AirFigures.ATMOSPHERE));
        state.setPressure(low, new GaugePressure(500e3 - AirFigures.ATMOSPHERE));

        new AirStepper(state.network()).step(state, 0.1);

        assertThat(state.pascals(high)).isCloseTo(774_544.1398, percent());
        assertThat(state.pascals(low)).isCloseTo(625_455.8602, percent());
    }

    @Source(
            work = "Step of a self-lapping valve, worked by hand",
            edition = "p' = (capacity x p + h F / w x command) / (capacity + h F / w)",
            where = "30 in3 at 79 psi, command 80 psi, band 2 psi, 0.05 kg/s, step 5 ms",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25",
            note = "a valve that stayed open would carry the pressure to 85.20649016 psi")
    @Test
    void a_lapping_valve_does_not_carry_its_delivery_over_the_command() {
        double supply = 60e6;
        double conductance = 0.05 / (DENSITY * (supply + AirFigures.ATMOSPHERE));

        assertThat(filled(conductance, supply, true))
                .isCloseTo(79.75629045, withinPercentage(TEN_DIGITS_PERCENT));
        assertThat(filled(conductance, supply, false))
                .isCloseTo(85.20649016, withinPercentage(0.01));
    }

    private static double filled(double conductance, double supplyGauge, boolean laps) {
        Restriction way = new Restriction(conductance, 0.5);
        AirNetworkBuilder builder = AirNetwork.builder(Ambient.STANDARD);
        AirNode line = builder.addRigid("line", Volume.ofCubicInches(30));
        AirNode supply = builder.addBoundary("supply", new GaugePressure(supplyGauge), ROOM);
        LappingValve valve = new LappingValve(way, way, new GaugePressure(2 * PSI), psi(1));
        AirLink link =
                laps
                        ? builder.lapping("valve", supply, line, valve)
                        : builder.orifice("hole", supply, line, way);
        AirState state = builder.build().stateAtRest();
        state.setPressure(line, psi(79));
        state.setCommand(link, pascals(80));

        new AirStepper(state.network()).step(state, 0.005);

        return state.gauge(line).inPsi();
    }

    private static org.assertj.core.data.Percentage percent() {
        return withinPercentage(TEN_DIGITS_PERCENT);
    }
}
