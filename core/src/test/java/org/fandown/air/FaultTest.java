package org.fandown.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.fandown.air.AirControls.Knob;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.units.RotationalSpeed;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FaultTest {
    private static final Map<String, List<double[]>> SOUND = new LinkedHashMap<>();

    /** Less than this on a pressure nobody would notice, psi. */
    private static final double NOTICED = 0.5;

    /** What the air knows nothing of, or what shows only when something else is wrong too. */
    private static final Set<Fault> NOT_IN_THE_AIR =
            Set.of(
                    Fault.ABS_LAMP_DEAD,
                    Fault.ABS_LAMP_STAYS_ON,
                    Fault.TRAILER_ABS_LAMP_DEAD,
                    Fault.TRAILER_ABS_LAMP_STAYS_ON,
                    Fault.SAFETY_VALVE_STUCK);

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
    @EnumSource(Fault.class)
    void each_changes_what_can_be_read_somewhere(Fault fault) {
        Vehicle vehicle = UsualFaults.vehicle(fault);
        List<double[]> sound =
                SOUND.computeIfAbsent(vehicle.name(), name -> readings(vehicle, AirSetup.SOUND));
        List<double[]> faulty = readings(vehicle, with(fault));

        double most = 0;
        for (int i = 0; i < sound.size(); i++) {
            for (int j = 0; j < sound.get(i).length; j++) {
                most = Math.max(most, Math.abs(sound.get(i)[j] - faulty.get(i)[j]));
            }
        }
        if (NOT_IN_THE_AIR.contains(fault)) {
            assertThat(most).as(fault.id()).isZero();
        } else {
            assertThat(most).as(fault.id()).isGreaterThan(NOTICED);
        }
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

    /** A round through everything that shows a fault, read every second. */
    private static List<double[]> readings(Vehicle vehicle, AirSetup setup) {
        List<double[]> readings = new ArrayList<>();
        AirSystem system = new InCab(vehicle, setup).charged(110);
        AirControls engine = AirControls.NONE.withEngine(RotationalSpeed.ofRpm(1500));
        watch(system, engine, 50, readings);
        watch(system, AirControls.NONE, 30, readings);
        system.control(AirControls.NONE.withFoot(0.4));
        for (int i = 0; i < 10; i++) {
            system.advance(0.1);
            readings.add(read(system));
        }
        watch(system, AirControls.NONE.withFoot(1), 20, readings);
        watch(system, AirControls.NONE.withHand(1), 3, readings);
        watch(system, AirControls.NONE.withTrailer(Knob.PULLED).withFoot(1), 4, readings);
        watch(system, AirControls.NONE.withParking(Knob.PULLED), 4, readings);
        watch(system, AirControls.NONE.withParking(Knob.PULLED).withFoot(1), 4, readings);
        watch(
                system,
                AirControls.NONE.withParking(Knob.PUSHED).withTrailer(Knob.PUSHED),
                10,
                readings);
        watch(system, AirControls.NONE.withDrains(Set.of("supply")), 60, readings);
        watch(system, AirControls.NONE.withDrains(Set.of("primary")), 20, readings);
        watch(system, AirControls.NONE.withFoot(0.6), 3, readings);
        for (int i = 0; i < 40; i++) {
            watch(system, AirControls.NONE.withFoot(1), 1, readings);
            watch(system, AirControls.NONE, 1, readings);
        }
        watch(system, AirControls.NONE.withDrains(Set.of("secondary")), 20, readings);
        watch(system, AirControls.NONE.withDrains(Set.of("unit2.reservoir")), 20, readings);
        return readings;
    }

    private static void watch(
            AirSystem system, AirControls controls, int seconds, List<double[]> readings) {
        system.control(controls);
        for (int i = 0; i < seconds; i++) {
            system.advance(1);
            readings.add(read(system));
        }
    }

    private static double[] read(AirSystem system) {
        return new double[] {
            system.primaryNeedle().inPsi(),
            system.secondaryNeedle().inPsi(),
            lit(system.lowAirLamp()),
            lit(system.lowAirBuzzer()),
            lit(system.stopLamps()),
            lit(system.parkingKnobIn().orElse(false)),
            lit(system.trailerKnobIn().orElse(false)),
            lit(system.compressorLoaded()),
            psi(system, "discharge"),
            psi(system, "supply"),
            psi(system, "parking"),
            psi(system, "primary-booster"),
            psi(system, "unit2.reservoir"),
            psi(system, "unit3.reservoir"),
            psi(system, "1L.service"),
            psi(system, "2L.service"),
            psi(system, "2L.spring"),
            psi(system, "4L.service"),
            psi(system, "4L.spring"),
            psi(system, "control-line-1"),
            inches(system, "2L"),
            inches(system, "4L")
        };
    }

    private static double psi(AirSystem system, String volume) {
        return system.find(volume).map(GaugePressure::inPsi).orElse(0.0);
    }

    /** A tenth of an inch counts as much as a psi. */
    private static double inches(AirSystem system, String wheel) {
        return 10 * system.pushRod(WheelId.parse(wheel)).map(Length::inInches).orElse(0.0);
    }

    private static double lit(boolean lamp) {
        return lamp ? 1 : 0;
    }

    private static void measured(
            Fault fault, ToDoubleFunction<InCab> test, double least, double most) {
        assertThat(test.applyAsDouble(cab(AirSetup.SOUND))).as("sound").isBetween(least, most);
        double faulty = test.applyAsDouble(cab(with(fault)));
        assertThat(faulty < least || faulty > most)
                .as("%s gives %s, within %s to %s", fault.id(), faulty, least, most)
                .isTrue();
    }

    @Test
    void the_test_of_the_governor_finds_a_wrong_one() {
        measured(Fault.GOVERNOR_HIGH, InCab::cutOut, 120, 135);
        measured(Fault.GOVERNOR_LOW, InCab::cutOut, 120, 135);
        measured(Fault.GOVERNOR_STUCK_LOADED, InCab::cutOut, 120, 135);
        measured(Fault.CUT_IN_LOW, InCab::cutIn, 100, 110);
    }

    @Test
    void the_build_up_test_finds_a_weak_supply() {
        measured(Fault.COMPRESSOR_WORN, c -> c.buildUp(1300), 5, 45);
        measured(Fault.COMPRESSOR_SLIPPING, c -> c.buildUp(1300), 5, 45);
        measured(Fault.PURGE_STUCK_OPEN, c -> c.buildUp(1300), 5, 45);
        measured(Fault.GOVERNOR_STUCK_UNLOADED, c -> c.buildUp(1300), 5, 45);
        measured(Fault.PRIMARY_CHECK_SHUT, c -> c.buildUp(1300), 5, 45);
        measured(Fault.SECONDARY_CHECK_SHUT, c -> c.buildUp(1300), 5, 45);
        measured(Fault.DRYER_BLOCKED, c -> c.buildUp(1300), 5, 45);
    }

    @Test
    void the_fan_down_finds_wrong_warnings_and_knobs() {
        measured(Fault.LOW_AIR_SET_LOW, InCab::lowAirLamp, 55, 75);
        measured(Fault.LOW_AIR_SWITCH_DEAD, InCab::lowAirLamp, 55, 75);
        measured(Fault.LOW_AIR_LAMP_DEAD, InCab::lowAirLamp, 55, 75);
        measured(Fault.LOW_AIR_BUZZER_DEAD, InCab::lowAirBuzzer, 55, 75);
        measured(Fault.PARKING_POPS_EARLY, InCab::parkingPop, 20, 45);
        measured(Fault.PARKING_POPS_LATE, InCab::parkingPop, 20, 45);
        measured(Fault.PARKING_KNOB_STICKS, InCab::parkingPop, 20, 45);
        measured(Fault.TRAILER_KNOB_POPS_EARLY, InCab::trailerPop, 20, 45);
        measured(Fault.TRAILER_KNOB_POPS_LATE, InCab::trailerPop, 20, 45);
        measured(Fault.TRAILER_KNOB_STICKS, InCab::trailerPop, 20, 45);
    }

    @Test
    void the_released_leak_test_finds_leaks() {
        measured(Fault.PRIMARY_LEAK, InCab::lossReleased, -1, 3);
        measured(Fault.SECONDARY_LEAK, InCab::lossReleased, -1, 3);
        measured(Fault.FOOT_VALVE_SEAT_LEAK, InCab::lossReleased, -1, 3);
    }

    @Test
    void the_applied_leak_test_finds_leaks_behind_the_pedal() {
        measured(Fault.SERVICE_DIAPHRAGM_LEAK, InCab::lossApplied, -1, 4);
        measured(Fault.RELAY_APPLIED_LEAK, InCab::lossApplied, -1, 4);
        measured(Fault.FOOT_VALVE_APPLIED_LEAK, InCab::lossApplied, -1, 4);
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
