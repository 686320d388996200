package org.fandown.app.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fandown.air.Fault;
import org.fandown.air.FaultCase;
import org.fandown.check.PlaceCode;
import org.fandown.check.Verdict;
import org.fandown.judgement.Judgement;
import org.fandown.operator.Abnormal;
import org.fandown.operator.Performance;
import org.fandown.practice.FaultChecks;
import org.fandown.practice.FaultFit;
import org.fandown.practice.Scenario;
import org.fandown.procedure.Plan;
import org.fandown.procedure.Scope;
import org.fandown.vehicle.Vehicle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each fault, at its usual size, is found by the perfect operator with a thorough plan in the
 * United States: by the verdict, or by naming what the check or the part shows that is meant to
 * find it. One fault in eight is tried; with the system property {@code fandown.everywhere} set to
 * {@code true} all of them, which takes minutes.
 */
class OperatorFaultsTest {
    private static final boolean ALL = Boolean.getBoolean("fandown.everywhere");
    private static final int ONE_IN = 8;
    private static final PlaceCode PLACE = new PlaceCode("US");

    /** The first of these that can have a fault is tried. */
    private static final List<String> VEHICLES =
            List.of(
                    "tractor-box-trailer",
                    "doubles-with-dolly",
                    "city-bus",
                    "air-over-hydraulic-truck");

    /** What no order of work asks for, with the reason. */
    private static final Map<Fault, String> NOT_TRIED = notTried();

    private static final Map<String, Vehicle> READ = Performed.vehicles();
    private static final Map<String, Plan> PLANS = new TreeMap<>();

    private static Map<Fault, String> notTried() {
        Map<Fault, String> reasons = new EnumMap<>(Fault.class);
        reasons.put(
                Fault.SAFETY_VALVE_STUCK,
                "the safety valve is tried in a workshop, with the governor held");
        return reasons;
    }

    static Stream<Fault> faults() {
        List<Fault> all = List.of(Fault.values());
        return IntStream.range(0, all.size())
                .filter(i -> ALL || i % ONE_IN == 0)
                .mapToObj(i -> all.get(i));
    }

    private static String vehicle(Fault fault) {
        return VEHICLES.stream()
                .filter(name -> FaultFit.of(vehicle(name)).contains(fault))
                .findFirst()
                .orElseThrow();
    }

    private static Vehicle vehicle(String name) {
        Vehicle vehicle = READ.get(name);
        if (vehicle == null) {
            throw new IllegalStateException("There is no vehicle " + name + ".");
        }
        return vehicle;
    }

    private static synchronized Plan plan(String vehicle) {
        return PLANS.computeIfAbsent(
                vehicle,
                name ->
                        Performed.plan(
                                Performed.steps(
                                        Performed.rules(PLACE, vehicle(name)), Scope.THOROUGH)));
    }

    private static FaultCase usual(Fault fault) {
        if (fault == Fault.SHUT_OFF_SHUT) {
            return FaultCase.at(fault, "unit3");
        }
        return fault.atWheel() ? FaultCase.at(fault, "2L") : FaultCase.of(fault);
    }

    @Test
    void a_sound_truck_is_fit_and_nothing_about_it_is_abnormal() {
        Plan plan = plan(VEHICLES.get(0));
        Performance sound = Performed.on(plan, Scenario.of(vehicle(VEHICLES.get(0))));

        assertThat(sound.abnormal()).isEmpty();
        assertThat(sound.notDone()).isEmpty();
        assertThat(Performed.judged(plan.set().rules(), sound).verdict())
                .isEqualTo(Verdict.FIT_TO_MOVE);
    }

    @ParameterizedTest
    @MethodSource("faults")
    void the_operator_finds_each_fault(Fault fault) {
        String vehicle = vehicle(fault);
        Plan plan = plan(vehicle);
        Scenario scenario = Scenario.of(vehicle(vehicle)).with(usual(fault));
        Performance performance = Performed.on(plan, scenario);
        Judgement judgement = Performed.judged(plan.set().rules(), performance);

        boolean named = performance.abnormal().stream().anyMatch(it -> isMeant(it, fault));
        boolean found = named || judgement.verdict() != Verdict.FIT_TO_MOVE;
        assertThat(found)
                .as("%s: %s, %s", fault.id(), judgement.verdict(), performance.abnormal())
                .isEqualTo(!NOT_TRIED.containsKey(fault));
    }

    private static boolean isMeant(Abnormal abnormal, Fault fault) {
        return abnormal.check().map(FaultChecks.checks(fault)::contains).orElse(false)
                || abnormal.part().map(FaultChecks.parts(fault)::contains).orElse(false);
    }
}
