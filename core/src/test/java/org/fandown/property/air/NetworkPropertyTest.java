package org.fandown.property.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.fandown.air.AirLink;
import org.fandown.air.AirNetwork;
import org.fandown.air.AirNetworkBuilder;
import org.fandown.air.AirNode;
import org.fandown.air.AirState;
import org.fandown.air.AirStepper;
import org.fandown.air.Ambient;
import org.fandown.air.Restriction;
import org.fandown.units.GaugePressure;
import org.fandown.units.Volume;

/** Networks drawn by lot, worked by lot, in steps from 0.1 ms to 1 s. */
class NetworkPropertyTest {
    /** Sums of many masses are rounded. */
    private static final double MASS = 1e-12;

    /** The stepper takes two pressures of a chamber as equal that differ by less, Pa. */
    private static final double SAME_PRESSURE = 0.1;

    private static final double ATMOSPHERE = 101_325;
    private static final int STEPS = 20;

    @Property(tries = 10_000)
    void no_air_is_lost_and_no_pressure_leaves_the_range_it_began_in(@ForAll long seed) {
        RandomNetwork random = new RandomNetwork(seed);
        AirState state = random.filled();
        AirStepper stepper = new AirStepper(random.network);
        double mass = mass(state);
        double lowest = ATMOSPHERE;
        double highest = ATMOSPHERE;
        for (AirNode node : random.volumes()) {
            lowest = Math.min(lowest, state.pascals(node));
            highest = Math.max(highest, state.pascals(node));
        }
        for (int i = 0; i < STEPS; i++) {
            random.operate(state);
            stepper.step(state, random.step());

            for (AirNode node : random.volumes()) {
                assertThat(state.pascals(node))
                        .as("pressure of %s", node.name())
                        .isBetween(lowest - SAME_PRESSURE, highest + SAME_PRESSURE);
                assertThat(state.kilograms(node)).isPositive();
                assertThat(state.temperature(node).kelvins()).isPositive();
            }
            assertThat(mass(state)).isEqualTo(mass, within(mass * MASS));
        }
    }

    @Property(tries = 1_000)
    void a_check_valve_never_flows_backwards_and_an_exhaust_never_sucks(@ForAll long seed) {
        RandomNetwork random = new RandomNetwork(seed);
        AirState state = random.filled();
        AirStepper stepper = new AirStepper(random.network);
        for (int i = 0; i < STEPS; i++) {
            random.operate(state);
            stepper.step(state, random.step());

            for (AirLink link : random.checks()) {
                assertThat(state.flow(link)).as(link.name()).isNotNegative();
            }
            for (AirLink link : random.valves()) {
                assertThat(state.exhaust(link)).as(link.name()).isNotNegative();
            }
        }
    }

    @Property(tries = 500)
    void the_same_steps_give_the_same_bits_also_from_a_copy_on_the_way(@ForAll long seed) {
        long whole = run(seed, -1);

        assertThat(run(seed, -1)).isEqualTo(whole);
        assertThat(run(seed, STEPS / 2)).isEqualTo(whole);
    }

    @Example
    void a_closed_network_keeps_its_air_through_a_million_steps() {
        AirNetworkBuilder builder = AirNetwork.builder(Ambient.STANDARD);
        AirNode large = builder.addRigid("large", Volume.ofLitres(30));
        AirNode line = builder.addRigid("line", Volume.ofCubicInches(8));
        AirNode small = builder.addRigid("small", Volume.ofLitres(1));
        AirLink tap = builder.orifice("tap", large, line, new Restriction(12e-8, 0.35));
        builder.orifice("hose", line, small, new Restriction(2e-9, 0.3));
        AirState state = builder.build().stateAtRest();
        state.setPressure(large, GaugePressure.ofPsi(120));
        AirStepper stepper = new AirStepper(state.network());
        double mass = mass(state);

        double step = 1e-4;
        for (int i = 0; i < 1_000_000; i++) {
            state.setOpening(tap, i % 3 == 0 ? 1 : 0.01);
            stepper.step(state, step);
            step = step > 0.5 ? 1e-4 : step * 1.01;
        }

        assertThat(mass(state)).isEqualTo(mass, within(mass * MASS));
        assertThat(state.gauge(small).inPsi()).isBetween(0.0, 120.0);
    }

    /** Runs to the end, on a copy with a stepper of its own from some step on. */
    private static long run(long seed, int copyAt) {
        RandomNetwork random = new RandomNetwork(seed);
        AirState state = random.filled();
        AirStepper stepper = new AirStepper(random.network);
        for (int i = 0; i < STEPS; i++) {
            if (i == copyAt) {
                AirState abandoned = state;
                state = state.copy();
                stepper.step(abandoned, 0.3);
                stepper = new AirStepper(random.network);
            }
            random.operate(state);
            stepper.step(state, random.step());
        }
        return state.fingerprint();
    }

    private static double mass(AirState state) {
        double mass = 0;
        for (AirNode node : state.network().nodes()) {
            mass += state.kilograms(node);
        }
        return mass;
    }
}
