package org.fandown.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.fandown.air.AirSetup;
import org.fandown.air.AirVehicles;
import org.fandown.air.Fault;
import org.fandown.air.UsualFaults;
import org.fandown.practice.Procedures.Named;
import org.fandown.vehicle.Vehicle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every fault is found by the check that is meant to find it; a sound vehicle passes them all. */
class FaultChecksTest {
    static List<Vehicle> vehicles() {
        return List.of(
                AirVehicles.tractorTrailer(),
                AirVehicles.doubles(),
                AirVehicles.bus(),
                AirVehicles.hydraulicTruck());
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void a_sound_vehicle_passes_every_check(Vehicle vehicle) {
        Trial sound = new Trial(vehicle, AirSetup.SOUND);
        List<String> failed = new ArrayList<>();
        for (Named each : Procedures.all()) {
            Outcome outcome = each.procedure().of(sound);
            if (!outcome.met()) {
                failed.add(each.name() + ": " + outcome.words());
            }
        }
        assertThat(failed).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Fault.class)
    void each_fault_fails_each_check_that_is_meant_to_find_it(Fault fault) {
        AirSetup setup = UsualFaults.of(fault).in(AirSetup.SOUND);
        Trial trial = new Trial(UsualFaults.vehicle(fault), setup);

        assertThat(Procedures.meant(fault)).as(fault.id()).isNotEmpty();
        for (Named each : Procedures.meant(fault)) {
            assertThat(each.procedure().of(trial))
                    .as("%s by %s", fault.id(), each.name())
                    .matches(outcome -> !outcome.met());
        }
    }
}
