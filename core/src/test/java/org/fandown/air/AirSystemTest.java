package org.fandown.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.fandown.air.AirControls.Coupling;
import org.fandown.air.AirControls.Knob;
import org.fandown.air.AirSetup.Defect;
import org.fandown.units.RotationalSpeed;
import org.fandown.vehicle.WheelId;
import org.junit.jupiter.api.Test;

class AirSystemTest {
    private final InCab combination = new InCab(AirVehicles.tractorTrailer(), AirSetup.SOUND);

    private static double psi(AirSystem system, String volume) {
        return system.pressure(volume).inPsi();
    }

    @Test
    void a_sound_system_loses_less_than_a_psi_in_a_minute() {
        assertThat(combination.lossReleased()).isBetween(0.0, 1.0);
        assertThat(combination.lossApplied()).isBetween(-0.5, 1.0);
    }

    @Test
    void pumping_stops_at_the_cut_out_and_the_dryer_sneezes() {
        AirSystem system = combination.charged(120);
        system.control(AirControls.NONE.withEngine(RotationalSpeed.ofRpm(1200)));
        double purge = 0;
        for (int i = 0; i < 3000 && system.compressorLoaded(); i++) {
            system.advance(0.1);
        }
        for (int i = 0; i < 20; i++) {
            system.advance(0.1);
            purge = Math.max(purge, system.purgeFlow());
        }

        assertThat(psi(system, "supply")).isBetween(123.0, 126.0);
        assertThat(purge).isGreaterThan(0.001);
        system.advance(60);
        assertThat(psi(system, "discharge")).isLessThan(2);
        assertThat(psi(system, "primary")).isGreaterThan(115);
    }

    @Test
    void pressure_follows_the_pedal_and_the_lag_of_the_valves() {
        AirSystem system = combination.charged(110);
        system.control(system.controls().withFoot(0.4));
        system.advance(5);
        double asked = 4 + (130 - 4) * (0.4 - 0.08) / 0.92;

        assertThat(psi(system, "primary-delivery")).isBetween(asked - 0.5, asked + 1.5);
        assertThat(psi(system, "secondary-delivery")).isBetween(asked - 2.5, asked);
        assertThat(psi(system, "2L.service")).isBetween(asked - 4, asked);
        assertThat(psi(system, "4L.service")).isBetween(asked - 5, asked);
    }

    @Test
    void a_knob_pushed_in_without_air_comes_out_when_let_go() {
        AirSystem system = combination.charged(50);
        assertThat(system.parkingKnobIn()).contains(false);
        system.control(AirControls.NONE.withParking(Knob.PUSHED));
        system.advance(1);
        assertThat(system.parkingKnobIn()).contains(true);
        system.control(AirControls.NONE);

        assertThat(system.parkingKnobIn()).contains(false);
    }

    @Test
    void the_parking_knob_takes_the_trailer_supply_knob_with_it() {
        AirSystem system = combination.charged(100);
        system.control(AirControls.NONE.withParking(Knob.PULLED));
        system.control(AirControls.NONE);
        system.advance(3);

        assertThat(system.trailerKnobIn()).contains(false);
        assertThat(system.pushRod(WheelId.parse("2L")).orElseThrow().inInches()).isGreaterThan(0.8);
        assertThat(system.pushRod(WheelId.parse("4R")).orElseThrow().inInches()).isGreaterThan(0.8);
        assertThat(system.pushRod(WheelId.parse("1L")).orElseThrow().inInches()).isLessThan(0.01);
    }

    @Test
    void the_hand_valve_works_the_trailer_alone() {
        AirSystem system = combination.charged(100);
        system.control(AirControls.NONE.withHand(1));
        system.advance(2);

        assertThat(psi(system, "4L.service")).isGreaterThan(80);
        assertThat(psi(system, "2L.service")).isLessThan(1);
    }

    @Test
    void with_the_trailer_knob_out_the_pedal_sends_nothing_to_the_coupling() {
        AirSystem system = combination.charged(100);
        system.control(AirControls.NONE.withTrailer(Knob.PULLED));
        system.advance(3);
        system.control(AirControls.NONE.withFoot(1));
        system.advance(2);

        assertThat(psi(system, "control-line-1")).isLessThan(1);
        assertThat(psi(system, "2L.service")).isGreaterThan(80);
    }

    @Test
    void a_control_line_apart_costs_air_only_while_braking() {
        AirSystem system = combination.charged(100);
        system.control(AirControls.NONE.withCoupling(1, Coupling.CONTROL_OPEN));
        system.advance(30);
        assertThat(psi(system, "primary")).isGreaterThan(98);
        system.control(system.controls().withFoot(1));
        system.advance(10);

        assertThat(psi(system, "primary")).isLessThan(85);
    }

    @Test
    void a_drained_supply_reservoir_leaves_the_others_full() {
        AirSystem system = combination.charged(100);
        system.control(AirControls.NONE.withDrains(java.util.Set.of("supply")));
        system.advance(120);

        assertThat(psi(system, "supply")).isLessThan(5);
        assertThat(psi(system, "primary")).isGreaterThan(98);
        assertThat(psi(system, "secondary")).isGreaterThan(98);
    }

    @Test
    void a_trailer_without_spring_brakes_applies_its_service_brakes_when_its_line_is_gone() {
        InCab truck = new InCab(AirVehicles.truckFullTrailer(), AirSetup.SOUND);
        AirSystem system = truck.charged(100);
        system.control(AirControls.NONE.withTrailer(Knob.PULLED));
        system.advance(3);

        assertThat(psi(system, "3L.service")).isGreaterThan(70);
    }

    @Test
    void with_the_primary_circuit_gone_the_pedal_lets_the_springs_on() {
        AirSystem system = new InCab(AirVehicles.integratedTruck(), AirSetup.SOUND).charged(100);
        system.control(AirControls.NONE.withDrains(java.util.Set.of("primary")));
        system.advance(120);
        assertThat(psi(system, "primary")).isLessThan(5);
        assertThat(psi(system, "2L.spring")).isGreaterThan(70);
        system.control(system.controls().withFoot(0.6));
        system.advance(3);

        assertThat(psi(system, "2L.spring")).isLessThan(45);
        assertThat(psi(system, "1L.service")).isGreaterThan(40);
    }

    @Test
    void service_air_holds_the_springs_off_where_both_would_add_up() {
        AirSystem system = combination.charged(100);
        system.control(AirControls.NONE.withParking(Knob.PULLED));
        system.advance(3);
        system.control(AirControls.NONE.withFoot(1));
        system.advance(3);
        assertThat(psi(system, "2L.spring")).isGreaterThan(70);

        AirSystem other =
                new InCab(
                                AirVehicles.tractorTrailer(),
                                AirSetup.SOUND.with(Defect.NO_ANTI_COMPOUND))
                        .charged(100);
        other.control(AirControls.NONE.withParking(Knob.PULLED));
        other.advance(3);
        other.control(AirControls.NONE.withFoot(1));
        other.advance(3);
        assertThat(psi(other, "2L.spring")).isLessThan(5);
    }

    @Test
    void a_truck_with_an_integrated_unit_builds_up_from_nothing() {
        AirSystem system = AirSystem.of(AirVehicles.integratedTruck(), AirSetup.SOUND);
        system.control(AirControls.NONE.withEngine(RotationalSpeed.ofRpm(1200)));
        for (int i = 0; i < 9000 && system.compressorLoaded(); i++) {
            system.advance(0.1);
        }

        assertThat(psi(system, "primary")).isGreaterThan(115);
        assertThat(psi(system, "secondary")).isGreaterThan(115);
        assertThat(system.lowAirLamp()).isFalse();
    }

    @Test
    void the_boosters_of_air_over_hydraulic_brakes_follow_the_pedal() {
        AirSystem system = new InCab(AirVehicles.hydraulicTruck(), AirSetup.SOUND).charged(100);
        assertThat(system.parkingKnobIn()).isEmpty();
        system.control(AirControls.NONE.withFoot(1));
        system.advance(2);

        assertThat(psi(system, "primary-booster")).isBetween(80.0, 99.0);
    }

    @Test
    void the_same_calls_give_the_same_bits() {
        assertThat(aRun().state().fingerprint()).isEqualTo(aRun().state().fingerprint());
    }

    private AirSystem aRun() {
        AirSystem system = combination.charged(100);
        system.control(AirControls.NONE.withEngine(RotationalSpeed.ofRpm(900)).withFoot(0.7));
        system.advance(7);
        system.control(AirControls.NONE);
        system.advance(5);
        return system;
    }

    @Test
    void a_setup_that_names_what_is_not_there_is_refused() {
        assertThatThrownBy(
                        () ->
                                AirSystem.of(
                                        AirVehicles.tractor(),
                                        AirSetup.SOUND.withLeak("unit2.reservoir", 1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no volume 'unit2.reservoir'");
        assertThatThrownBy(() -> combination.charged(100).pressure("tertiary"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("tertiary");
        assertThatThrownBy(() -> AirSetup.SOUND.withWater("primary", 1.2))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
