package org.fandown.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.fandown.units.RotationalSpeed;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FaultTest {
    private static AirSetup with(Fault fault) {
        return UsualFaults.of(fault).in(AirSetup.SOUND);
    }

    private static InCab cab(AirSetup setup) {
        return new InCab(AirVehicles.tractorTrailer(), setup);
    }

    @Test
    void there_are_forty_or_more_each_with_its_own_name() {
        Set<String> ids = new LinkedHashSet<>();
        for (Fault fault : Fault.values()) {
            ids.add(fault.id());
            assertThat(fault.id()).matches("[a-z]+(-[a-z]+)*");
            assertThat(fault.title()).isNotBlank();
            assertThat(fault.shows()).endsWith(".");
        }
        assertThat(ids).hasSameSizeAs(Fault.values()).hasSizeGreaterThanOrEqualTo(40);
    }

    @ParameterizedTest
    @EnumSource(
            value = Fault.class,
            names = {
                "ABS_LAMP_STAYS_ON",
                "ABS_LAMP_DEAD",
                "TRAILER_ABS_LAMP_STAYS_ON",
                "TRAILER_ABS_LAMP_DEAD"
            })
    void the_lamp_of_anti_lock_brakes_changes_nothing_of_the_air(Fault fault) {
        assertThat(afterBraking(with(fault))).isEqualTo(afterBraking(AirSetup.SOUND));
    }

    private static long afterBraking(AirSetup setup) {
        AirSystem system = cab(setup).charged(110);
        system.control(AirControls.NONE.withEngine(RotationalSpeed.ofRpm(1500)).withFoot(0.5));
        system.advance(5);
        return system.state().fingerprint();
    }

    @Test
    void holes_in_one_place_add_up_and_hot_drums_lengthen_any_stroke() {
        FaultCase torn = FaultCase.at(Fault.SERVICE_DIAPHRAGM_LEAK, "2L");
        FaultCase chafed = FaultCase.at(Fault.HOSE_LEAK, "2L");
        AirSetup both = FaultCase.all(AirSetup.SOUND, List.of(torn, chafed));
        double one = torn.in(AirSetup.SOUND).leaks().get("2L.service");
        double other = chafed.in(AirSetup.SOUND).leaks().get("2L.service");
        assertThat(both.leaks().get("2L.service")).isCloseTo(one + other, within(1e-12));

        FaultCase out = FaultCase.at(Fault.ADJUSTER_OUT, "2L");
        AirSetup hot = FaultCase.of(Fault.HOT_DRUMS).in(out.in(AirSetup.SOUND));
        AirSystem system = AirSystem.of(AirVehicles.tractor(), hot);
        WheelId wheel = WheelId.parse("2L");
        assertThat(system.freeStroke(wheel).orElseThrow().inInches())
                .isCloseTo(1.3 + 0.4, within(1e-9));
    }

    @Test
    void a_smaller_chamber_takes_less_air_and_its_reservoirs_stay_the_same() {
        AirSetup unequal = FaultCase.at(Fault.CHAMBER_UNEQUAL, "2L").in(AirSetup.SOUND);
        AirSystem sound = new InCab(AirVehicles.integratedTruck(), AirSetup.SOUND).charged(100);
        AirSystem odd = new InCab(AirVehicles.integratedTruck(), unequal).charged(100);
        AirNode primary = sound.state().network().node("primary").orElseThrow();
        assertThat(odd.state().kilograms(primary))
                .isCloseTo(sound.state().kilograms(primary), within(1e-6));
        AirControls full = AirControls.NONE.withFoot(1);
        sound.control(full);
        odd.control(full);
        sound.advance(3);
        odd.advance(3);

        AirNode chamber = sound.state().network().node("2L.service").orElseThrow();
        assertThat(odd.state().kilograms(chamber))
                .isLessThan(0.9 * sound.state().kilograms(chamber));
        assertThatThrownBy(() -> new FaultCase(Fault.CHAMBER_UNEQUAL, 25, "2L"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("25");
        assertThat(new FaultCase(Fault.CHAMBER_UNEQUAL, 30, "2L").refusal(AirVehicles.tractor()))
                .hasValueSatisfying(why -> assertThat(why).contains("already"));
    }

    @Test
    void a_sticking_governor_acts_late_and_later_at_a_higher_engine_speed() {
        double slow = cutOutAt(700);
        double fast = cutOutAt(1800);

        assertThat(slow).isGreaterThan(128);
        assertThat(fast).isGreaterThan(slow + 5);
    }

    private static double cutOutAt(double rpm) {
        AirSetup sticking = new FaultCase(Fault.GOVERNOR_STICKING, 30, "").in(AirSetup.SOUND);
        AirSystem system = cab(sticking).charged(120);
        system.control(AirControls.NONE.withEngine(RotationalSpeed.ofRpm(rpm)));
        for (int i = 0; i < 3000 && system.compressorLoaded(); i++) {
            system.advance(0.1);
        }
        return system.pressure("supply").inPsi();
    }

    @ParameterizedTest
    @EnumSource(Fault.class)
    void each_fits_every_vehicle_or_says_what_the_vehicle_has_not(Fault fault) {
        assertThat(UsualFaults.of(fault).refusal(UsualFaults.vehicle(fault))).isEmpty();
        for (Vehicle vehicle : AirVehicles.all()) {
            UsualFaults.of(fault)
                    .refusal(vehicle)
                    .ifPresent(why -> assertThat(why).startsWith(fault.title() + ": This vehicle"));
        }
    }

    @Test
    void a_fault_of_a_part_the_vehicle_has_not_is_refused() {
        Vehicle tractor = AirVehicles.tractor();
        Vehicle hydraulic = AirVehicles.hydraulicTruck();
        for (Fault fault : Fault.values()) {
            if (fault.atUnit()) {
                assertThat(FaultCase.of(fault).refusal(tractor)).as(fault.id()).isPresent();
            }
            if (fault.atWheel() || fault.group() == FaultGroup.PARKING) {
                assertThat(UsualFaults.of(fault).refusal(hydraulic)).as(fault.id()).isPresent();
            }
        }
        assertThat(FaultCase.of(Fault.TRAILER_KNOB_STICKS).refusal(AirVehicles.bus())).isPresent();
        assertThat(FaultCase.of(Fault.NO_MODULATION).refusal(tractor)).isPresent();
        assertThat(FaultCase.of(Fault.HOT_DRUMS).refusal(hydraulic)).isPresent();
        assertThat(FaultCase.of(Fault.TRAILER_ABS_LAMP_DEAD).refusal(tractor)).isPresent();
        assertThat(FaultCase.of(Fault.WATER_IN_SUPPLY).refusal(AirVehicles.integratedTruck()))
                .hasValueSatisfying(why -> assertThat(why).contains("no reservoir 'supply'"));
        assertThat(FaultCase.at(Fault.SPRING_CAGED, "1L").refusal(tractor))
                .hasValueSatisfying(why -> assertThat(why).contains("no spring brake at 1L"));
    }

    @Test
    void a_towed_unit_can_be_chosen() {
        FaultCase third = FaultCase.at(Fault.TRAILER_RESERVOIR_LEAK, "unit4");

        assertThat(third.in(AirSetup.SOUND).leaks()).containsOnlyKeys("unit4.reservoir");
        assertThat(third.refusal(AirVehicles.doubles())).isEmpty();
        assertThat(third.refusal(AirVehicles.tractorTrailer())).isPresent();
        assertThat(FaultCase.of(Fault.LINES_CROSSED).in(AirSetup.SOUND).jams())
                .containsKey("crossed-supply-1");
        assertThatThrownBy(() -> FaultCase.at(Fault.TRAILER_RESERVOIR_LEAK, "2L"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("unit2");
    }

    @Test
    void a_size_out_of_range_or_a_missing_wheel_is_refused() {
        assertThatThrownBy(() -> new FaultCase(Fault.GOVERNOR_HIGH, 90, ""))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("136");
        assertThatThrownBy(() -> FaultCase.of(Fault.SPRING_BROKEN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("wheel");
    }

    @Test
    void faults_add_up() {
        AirSetup both =
                FaultCase.all(
                        AirSetup.SOUND,
                        List.of(
                                FaultCase.of(Fault.COMPRESSOR_WORN),
                                FaultCase.of(Fault.LOW_AIR_SET_LOW)));

        assertThat(cab(both).buildUp(1300)).isGreaterThan(45);
        assertThat(cab(both).lowAirLamp()).isLessThan(55);
    }
}
