package org.fandown.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.units.Temperature;
import org.fandown.units.TimeSpan;
import org.fandown.units.Volume;
import org.junit.jupiter.api.Test;

class AirNetworkTest {
    private static final double ROUNDING = 1e-12;
    private static final Restriction WAY = new Restriction(1e-8, 0.3);
    private static final LappingValve VALVE = new LappingValve(WAY, WAY, psi(2), psi(1));

    private final AirNetworkBuilder builder = AirNetwork.builder(Ambient.STANDARD);
    private final AirNode tank = builder.addRigid("tank", Volume.ofLitres(10));
    private final AirNode chamber = builder.addChamber("chamber", law(0.5));

    @Test
    void names_lead_to_volumes_and_links() {
        AirLink hose = builder.orifice("hose", tank, chamber, WAY);
        AirNetwork network = builder.build();

        assertThat(network.node("tank")).contains(tank);
        assertThat(network.node("atmosphere")).contains(builder.atmosphere());
        assertThat(network.link("hose")).contains(hose);
        assertThat(network.node("nowhere")).isEmpty();
        assertThat(network.nodes()).containsExactly(builder.atmosphere(), tank, chamber);
        assertThat(network.law(chamber)).contains(law(0.5));
        assertThat(network.law(tank)).isEmpty();
    }

    @Test
    void names_must_be_new_and_not_blank() {
        builder.orifice("hose", tank, chamber, WAY);
        builder.source("pump", tank, Temperature.ofCelsius(40));
        builder.memory("knob", 0);

        refused(() -> builder.addRigid("tank", Volume.ofLitres(1)), "'tank'");
        refused(() -> builder.addRigid(" ", Volume.ofLitres(1)), "blank");
        refused(() -> builder.orifice("hose", tank, chamber, WAY), "'hose'");
        refused(() -> builder.source("pump", tank, Temperature.ofCelsius(40)), "'pump'");
        refused(() -> builder.memory("knob", 1), "'knob'");
    }

    @Test
    void links_must_join_two_volumes_of_the_network() {
        AirNode foreign =
                AirNetwork.builder(Ambient.STANDARD).addRigid("foreign", Volume.ofLitres(1));

        refused(() -> builder.orifice("loop", tank, tank, WAY), "Both ends");
        refused(() -> builder.orifice("abroad", tank, foreign, WAY), "foreign");
        refused(() -> builder.lapping("out", tank, builder.atmosphere(), VALVE), "atmosphere");
        refused(() -> builder.check("check", tank, chamber, WAY, psi(-1)), "0 or more");
        refused(() -> builder.source("up", builder.atmosphere(), Temperature.ofCelsius(9)), "up");
    }

    @Test
    void volumes_must_be_possible() {
        refused(() -> builder.addRigid("none", new Volume(0)), "0.1 cm3");
        refused(
                () -> builder.addReservoir("cold", Volume.ofLitres(1), new TimeSpan(0)),
                "time constant");
        refused(() -> builder.addBoundary("zero", psi(1), new Temperature(0)), "0 K");
        assertThatThrownBy(() -> AirNetwork.builder(Ambient.STANDARD).build())
                .isInstanceOf(IllegalStateException.class);
    }

    @Test
    void a_state_begins_at_rest_and_keeps_what_it_is_told() {
        AirLink hose = builder.orifice("hose", tank, chamber, WAY);
        AirSource pump = builder.source("pump", tank, Temperature.ofCelsius(40));
        AirMemory knob = builder.memory("knob", 7);
        AirState state = builder.build().stateAtRest();

        assertThat(state.time()).isZero();
        assertThat(state.gauge(tank).pascals()).isZero();
        assertThat(state.opening(hose)).isEqualTo(1);
        assertThat(state.recall(knob)).isEqualTo(7);
        assertThat(state.inflow(pump)).isZero();

        state.setOpening(hose, 0.25);
        state.setCommand(hose, 3e5);
        state.setInflow(pump, 0.01);
        state.remember(knob, 8);
        AirState copy = state.copy();
        state.remember(knob, 9);

        assertThat(copy.opening(hose)).isEqualTo(0.25);
        assertThat(copy.command(hose)).isEqualTo(3e5);
        assertThat(copy.inflow(pump)).isEqualTo(0.01);
        assertThat(copy.recall(knob)).isEqualTo(8);
        assertThat(copy.fingerprint()).isNotEqualTo(state.fingerprint());
    }

    @Test
    void a_state_refuses_what_cannot_be() {
        AirLink hose = builder.orifice("hose", tank, chamber, WAY);
        AirSource pump = builder.source("pump", tank, Temperature.ofCelsius(40));
        AirState state = builder.build().stateAtRest();

        refused(() -> state.setOpening(hose, 1.1), "hose");
        refused(() -> state.setOpening(hose, Double.NaN), "hose");
        refused(() -> state.setCommand(hose, Double.NaN), "hose");
        refused(() -> state.setInflow(pump, -1), "pump");
        refused(() -> state.setPressure(tank, new GaugePressure(-101_325)), "tank");
        refused(() -> state.setTemperature(tank, new Temperature(300)), "tank");
    }

    @Test
    void a_chamber_whose_law_changes_keeps_its_air() {
        builder.orifice("hose", tank, chamber, WAY);
        AirNetwork network = builder.build();
        AirState state = network.stateAtRest();
        state.setPressure(chamber, psi(60));
        AirNetwork slack = network.withLaw(chamber, law(1.5));

        AirState moved = state.movedTo(slack);

        assertThat(moved.kilograms(chamber)).isEqualTo(state.kilograms(chamber));
        assertThat(moved.pascals(chamber)).isLessThan(state.pascals(chamber));
        assertThat(moved.strokeMetres(chamber)).isGreaterThan(state.strokeMetres(chamber));
        assertThat(moved.strokeMetres(tank)).isZero();
        assertThat(moved.pascals(tank)).isEqualTo(state.pascals(tank), within(ROUNDING));
        refused(() -> network.withLaw(tank, law(1)), "tank");
        refused(() -> state.movedTo(new TractorTrailer().network), "different");
    }

    @Test
    void a_boundary_counts_what_flows_into_it() {
        builder.orifice("hole", tank, builder.atmosphere(), WAY);
        AirState state = builder.build().stateAtRest();
        state.setPressure(tank, psi(100));
        double before = state.kilograms(tank);

        new AirStepper(state.network()).step(state, 1);

        assertThat(state.kilograms(builder.atmosphere()))
                .isEqualTo(before - state.kilograms(tank), within(ROUNDING));
    }

    private static ChamberLaw law(double free) {
        PushRodStroke stroke =
                new PushRodStroke(
                        psi(5), psi(8), Length.ofInches(free), 0.0105, Length.ofInches(2.5));
        return ChamberLaw.service(Volume.ofCubicInches(14), 30, stroke);
    }

    private static GaugePressure psi(double psi) {
        return GaugePressure.ofPsi(psi);
    }

    private static void refused(ThrowingCallable call, String part) {
        assertThatThrownBy(call)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(part);
    }
}
