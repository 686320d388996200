package org.fandown.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.fandown.air.AirControls.Knob;
import org.fandown.units.RotationalSpeed;
import org.fandown.vehicle.WheelId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FaultTest {
    /** Less than this on a pressure nobody would notice, psi. */
    private static final double NOTICED = 0.5;

    private static AirSetup with(Fault fault) {
        return faultCase(fault).in(AirSetup.SOUND);
    }

    private static FaultCase faultCase(Fault fault) {
        return fault.atWheel() ? FaultCase.at(fault, "2L") : FaultCase.of(fault);
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
        List<double[]> sound = readings(AirSetup.SOUND);
        List<double[]> faulty = readings(with(fault));

        double most = 0;
        for (int i = 0; i < sound.size(); i++) {
            for (int j = 0; j < sound.get(i).length; j++) {
                most = Math.max(most, Math.abs(sound.get(i)[j] - faulty.get(i)[j]));
            }
        }
        assertThat(most).as(fault.id()).isGreaterThan(NOTICED);
    }

    /** A round through everything that shows a fault, read every second. */
    private static List<double[]> readings(AirSetup setup) {
        List<double[]> readings = new ArrayList<>();
        AirSystem system = cab(setup).charged(110);
        AirControls engine = AirControls.NONE.withEngine(RotationalSpeed.ofRpm(1500));
        watch(system, engine, 50, readings);
        watch(system, AirControls.NONE, 30, readings);
        system.control(AirControls.NONE.withFoot(0.4));
        for (int i = 0; i < 10; i++) {
            system.advance(0.1);
            readings.add(read(system));
        }
        watch(system, AirControls.NONE.withFoot(1), 20, readings);
        watch(system, AirControls.NONE.withTrailer(Knob.PULLED).withFoot(1), 4, readings);
        watch(system, AirControls.NONE.withParking(Knob.PULLED), 4, readings);
        watch(system, AirControls.NONE.withParking(Knob.PULLED).withFoot(1), 4, readings);
        watch(
                system,
                AirControls.NONE.withParking(Knob.PUSHED).withTrailer(Knob.PUSHED),
                10,
                readings);
        watch(system, AirControls.NONE.withDrains(Set.of("supply")), 60, readings);
        for (int i = 0; i < 40; i++) {
            watch(system, AirControls.NONE.withFoot(1), 1, readings);
            watch(system, AirControls.NONE, 1, readings);
        }
        watch(system, AirControls.NONE.withDrains(Set.of("primary")), 20, readings);
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
            system.pressure("discharge").inPsi(),
            system.pressure("supply").inPsi(),
            system.pressure("unit2.reservoir").inPsi(),
            system.pressure("2L.service").inPsi(),
            system.pressure("2L.spring").inPsi(),
            system.pressure("4L.service").inPsi(),
            system.pressure("4L.spring").inPsi(),
            system.pressure("control-line-1").inPsi(),
            inches(system, "2L"),
            inches(system, "4L")
        };
    }

    /** A tenth of an inch counts as much as a psi. */
    private static double inches(AirSystem system, String wheel) {
        return 10 * system.pushRod(WheelId.parse(wheel)).orElseThrow().inInches();
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
