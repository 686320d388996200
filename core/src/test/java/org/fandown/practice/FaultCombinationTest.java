package org.fandown.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.fandown.air.AirSetup;
import org.fandown.air.AirVehicles;
import org.fandown.air.Fault;
import org.fandown.air.FaultCase;
import org.fandown.air.UsualFaults;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.practice.Procedures.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Several faults at once on one combination. */
class FaultCombinationTest {
    static Stream<List<Fault>> combinations() {
        return Stream.of(
                List.of(Fault.COMPRESSOR_WORN, Fault.LOW_AIR_SET_LOW),
                List.of(
                        Fault.PRIMARY_LEAK,
                        Fault.SERVICE_DIAPHRAGM_LEAK,
                        Fault.STOP_LAMP_SWITCH_DEAD),
                List.of(Fault.GOVERNOR_HIGH, Fault.CUT_IN_LOW, Fault.SECONDARY_GAUGE_OFF),
                List.of(Fault.SPRING_BROKEN, Fault.RELAY_SEAT_LEAK),
                List.of(Fault.TRAILER_KNOB_POPS_EARLY, Fault.PARKING_POPS_LATE, Fault.HOSE_NARROW),
                List.of(Fault.WATER_IN_PRIMARY, Fault.PRIMARY_CHECK_OPEN, Fault.BRAKE_TOO_TIGHT),
                List.of(
                        Fault.PROTECTION_STUCK_OPEN,
                        Fault.TRAILER_CHECK_OPEN,
                        Fault.ABS_LAMP_DEAD));
    }

    private static Trial trial(List<Fault> faults) {
        List<FaultCase> cases = faults.stream().map(UsualFaults::of).toList();
        return new Trial(AirVehicles.tractorTrailer(), FaultCase.all(AirSetup.SOUND, cases));
    }

    private static boolean met(Check check, Fault... faults) {
        return Procedures.CHECKS.get(check).of(trial(List.of(faults))).met();
    }

    @ParameterizedTest
    @MethodSource("combinations")
    void each_fault_of_a_combination_keeps_its_own_sign(List<Fault> faults) {
        Trial trial = trial(faults);
        for (Fault fault : faults) {
            for (Named each : Procedures.meant(fault)) {
                assertThat(each.procedure().of(trial).met())
                        .as("%s by %s", fault.id(), each.name())
                        .isFalse();
            }
        }
    }

    @Test
    void a_gauge_that_reads_high_hides_a_governor_that_is_set_low() {
        assertThat(met(Check.GOVERNOR_CUT_OUT, Fault.GOVERNOR_LOW)).isFalse();
        assertThat(met(Check.GOVERNOR_CUT_OUT, Fault.GOVERNOR_LOW, Fault.PRIMARY_GAUGE_OFF))
                .isTrue();
        assertThat(met(Check.GAUGE_ERROR, Fault.GOVERNOR_LOW, Fault.PRIMARY_GAUGE_OFF)).isFalse();
    }

    @Test
    void a_brake_out_of_adjustment_hides_its_broken_spring() {
        Procedure look = Procedures.PARTS.get(Component.PARKING_BRAKE);

        assertThat(look.of(trial(List.of(Fault.SPRING_BROKEN))).met()).isFalse();
        assertThat(look.of(trial(List.of(Fault.SPRING_BROKEN, Fault.ADJUSTER_OUT))).met()).isTrue();
        assertThat(met(Check.PUSHROD_FREE_STROKE, Fault.SPRING_BROKEN, Fault.ADJUSTER_OUT))
                .isFalse();
    }

    @Test
    void with_shut_off_valves_shut_a_leaking_trailer_is_not_heard() {
        FaultCase shut = FaultCase.at(Fault.SHUT_OFF_SHUT, "unit2");
        FaultCase leak = FaultCase.of(Fault.SUPPLY_LINE_LEAK);
        Trial leaking =
                new Trial(
                        AirVehicles.tractorTrailer(), FaultCase.all(AirSetup.SOUND, List.of(leak)));
        Trial both =
                new Trial(
                        AirVehicles.tractorTrailer(),
                        FaultCase.all(AirSetup.SOUND, List.of(shut, leak)));
        Procedure loss = Procedures.CHECKS.get(Check.AIR_LOSS_RELEASED);

        assertThat(loss.of(leaking).met()).isFalse();
        assertThat(loss.of(both).met()).isTrue();
        assertThat(Procedures.CHECKS.get(Check.AIR_REACHES_TRAILERS).of(both).met()).isFalse();
    }
}
