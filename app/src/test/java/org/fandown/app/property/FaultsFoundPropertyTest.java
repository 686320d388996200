package org.fandown.app.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fandown.air.Fault;
import org.fandown.air.FaultCase;
import org.fandown.check.PlaceCode;
import org.fandown.operator.Operator;
import org.fandown.practice.FaultFit;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Scope;
import org.fandown.procedure.StepSet;
import org.fandown.vehicle.BrakeKind;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;
import org.fandown.vehicle.WheelId;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A thorough plan, performed by the perfect operator, finds each fault at its usual size by
 * needles, lamps, ears, eyes and rule alone, and finds nothing on a sound vehicle.
 *
 * <p>The planner and the judge share the rulebook and nothing else, so that a check which one
 * leaves out or the other cannot judge shows here.
 */
class FaultsFoundPropertyTest {
    /** Each with the place whose rules it is inspected by. */
    private static final List<List<String>> TRIED =
            List.of(
                    List.of("tractor-box-trailer", "US-GA"),
                    List.of("city-bus", "CA-ON"),
                    List.of("doubles-with-dolly", "CA-BC"),
                    List.of("truck-full-trailer", "GB"),
                    List.of("air-over-hydraulic-truck", "US"));

    /** On how many of them, at most; on all with the system property {@code fandown.everywhere}. */
    private static final int EACH = Boolean.getBoolean("fandown.everywhere") ? TRIED.size() : 1;

    /**
     * Faults that nobody can find so. A safety valve stuck shut stays shut as well on a sound
     * vehicle: as long as the governor works the pressure never gets to where it should open.
     */
    private static final Set<Fault> HIDDEN = EnumSet.of(Fault.SAFETY_VALVE_STUCK);

    @ParameterizedTest
    @EnumSource(Fault.class)
    void perfect_operator_finds_each_fault(Fault fault) {
        int tried = 0;
        for (List<String> pair : TRIED) {
            PerfectOperator operator = PerfectOperator.with(pair.get(0), pair.get(1));
            Optional<FaultCase> fits = on(operator.vehicle(), fault);
            if (fits.isEmpty() || tried == EACH) {
                continue;
            }
            tried++;
            PerfectOperator.Result result = operator.on(fits.get());
            assertThat(operator.finds(fault, result))
                    .as(
                            "%s on %s: abnormal %s, not met %s, not done %s",
                            fault.id(),
                            pair,
                            result.performance().abnormal(),
                            result.notMet(),
                            result.performance().notDone())
                    .isEqualTo(!HIDDEN.contains(fault));
        }
        assertThat(tried).as("vehicles that can have " + fault.id()).isPositive();
    }

    /** The fault where a rule can reach it, empty if the vehicle cannot have it there. */
    private static Optional<FaultCase> on(Vehicle vehicle, Fault fault) {
        if (!FaultFit.of(vehicle).contains(fault)) {
            return Optional.empty();
        }
        List<FaultCase> all = new ArrayList<>();
        if (fault.atWheel()) {
            for (WheelId wheel : vehicle.wheels()) {
                if (vehicle.wheel(wheel).brake() == BrakeKind.DRUM) {
                    all.add(FaultCase.at(fault, wheel.toString()));
                }
            }
        } else {
            all.add(FaultCase.of(fault));
            for (int unit = 2; fault.atUnit() && unit <= vehicle.units().size(); unit++) {
                all.add(FaultCase.at(fault, "unit" + unit));
            }
        }
        return all.stream().filter(one -> one.refusal(vehicle).isEmpty()).findFirst();
    }

    static Stream<List<String>> places() {
        return Stream.concat(
                TRIED.stream(),
                Stream.of(
                        List.of("straight-truck", "US-CA"),
                        List.of("artic-disc", "NZ"),
                        List.of("artic-tri-axle", "AU"),
                        List.of("motor-coach-disc", "CA-QC"),
                        List.of("gravel-truck-manual-adjusters", "CA-SK")));
    }

    @ParameterizedTest
    @MethodSource("places")
    void perfect_operator_names_nothing_abnormal_on_a_sound_vehicle(List<String> pair) {
        PerfectOperator operator = PerfectOperator.with(pair.get(0), pair.get(1));

        assertThat(operator.sound().performance().abnormal()).isEmpty();
        assertThat(operator.sound().performance().notDone()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void every_check_that_can_be_planned_is_performed_by_somebody(String vehicle) {
        Vehicle read = VehicleReader.read(Examples.vehicle(vehicle));
        for (PlaceCode place : Examples.PLACES) {
            StepSet set = Performed.steps(Performed.rules(place, read), Scope.THOROUGH);
            for (CheckStep step : set.checks()) {
                assertThat(Operator.performs(step.check())).as(step.text()).isTrue();
            }
        }
    }

    static Stream<String> vehicles() {
        return Examples.VEHICLES.keySet().stream();
    }
}
