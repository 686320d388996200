package org.fandown.app.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.fandown.check.PlaceCode;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Course;
import org.fandown.procedure.Durations;
import org.fandown.procedure.Need;
import org.fandown.procedure.Plan;
import org.fandown.procedure.PlanRequest;
import org.fandown.procedure.PlannedStep;
import org.fandown.procedure.Planner;
import org.fandown.procedure.Problem;
import org.fandown.procedure.Scope;
import org.fandown.procedure.Situation;
import org.fandown.procedure.Spot;
import org.fandown.procedure.StepSet;
import org.fandown.procedure.Steps;
import org.fandown.procedure.VehicleDurations;
import org.fandown.procedure.Work;
import org.fandown.procedure.WorkStep;
import org.fandown.rulebook.RulesInForce;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of every plan, for every place and every example vehicle. */
class PlanPropertyTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private static RulesInForce rules(PlaceCode place, String vehicle) {
        Vehicle read = VehicleReader.read(Examples.vehicle(vehicle));
        return Examples.rulebook(place).inForce(place, read, DAY);
    }

    @Property(tries = 25)
    void no_order_of_few_checks_is_quicker_than_the_plan(
            @ForAll("places") PlaceCode place,
            @ForAll("vehicles") String vehicle,
            @ForAll Scope scope,
            @ForAll @IntRange(min = 1, max = 5) int count,
            @ForAll @IntRange(min = 0, max = 120) int psi,
            @ForAll Random random) {
        RulesInForce rules = rules(place, vehicle);
        Durations durations = VehicleDurations.of(rules.vehicle());
        StepSet all = Steps.of(rules, durations, scope);
        List<CheckStep> few = new ArrayList<>(all.checks());
        Collections.shuffle(few, random);
        few = few.subList(0, Math.min(count, few.size()));
        Planner planner = new Planner(new StepSet(rules, scope, few, List.of()), durations);
        PlanRequest request = new PlanRequest(psi, PlanRequest.Goal.QUICKEST, List.of());

        Optional<Plan> plan = planner.plan(request);

        OptionalInt quickest = ExhaustiveOrders.quickest(planner.problem(request));
        assertThat(plan.isPresent()).isEqualTo(quickest.isPresent());
        plan.ifPresent(p -> assertThat(afterOpening(p)).isEqualTo(quickest.getAsInt()));
    }

    /** Time from the opening to the driver's seat, tenths of a second. */
    private static int afterOpening(Plan plan) {
        Problem problem = plan.problem();
        Situation now = problem.start();
        int opening = 0;
        for (WorkStep work : problem.opening()) {
            Course.Outcome outcome = problem.course().take(now, work);
            opening += outcome.all();
            now = outcome.after();
        }
        return plan.tenths() - opening;
    }

    @Provide
    Arbitrary<PlaceCode> places() {
        return Arbitraries.of(Examples.PLACES);
    }

    @Provide
    Arbitrary<String> vehicles() {
        return Arbitraries.of(Examples.VEHICLES.keySet());
    }

    static Stream<String> vehicleNames() {
        return Examples.VEHICLES.keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("vehicleNames")
    void every_place_has_a_plan_that_makes_each_check_safely_and_unspoiled(String vehicle) {
        Map<String, Boolean> seen = new TreeMap<>();
        for (PlaceCode place : Examples.PLACES) {
            RulesInForce rules = rules(place, vehicle);
            Durations durations = VehicleDurations.of(rules.vehicle());
            StepSet set = Steps.of(rules, durations, Scope.ASKED);
            String key = key(set);
            if (seen.putIfAbsent(key, true) == null) {
                Optional<Plan> plan = new Planner(set, durations).plan(PlanRequest.QUICKEST);
                assertThat(plan).as("%s in %s", vehicle, place).isPresent();
                assertSound(plan.get(), vehicle + " in " + place);
            }
        }
    }

    private static String key(StepSet set) {
        StringBuilder key = new StringBuilder();
        for (CheckStep step : set.checks()) {
            key.append(step.text()).append(step.change()).append(step.manner());
            step.needs().forEach(need -> key.append(need.aspect()).append(need.asked()));
        }
        return key.toString();
    }

    private static void assertSound(Plan plan, String where) {
        List<String> made = new ArrayList<>();
        boolean chocked = false;
        boolean parked = true;
        for (PlannedStep planned : plan.steps()) {
            for (Need need : planned.step().needs()) {
                assertThat(need.isMetBy(planned.before()))
                        .as("%s: %s needs %s", where, planned.step().text(), need.asked())
                        .isTrue();
            }
            if (planned.step() instanceof WorkStep work) {
                boolean outside = work.work().spot() != Spot.CAB && work.work() != Work.CHOCK;
                assertThat(chocked || parked || !outside).as(where).isTrue();
                chocked = work.work() == Work.CHOCK || (chocked && work.work() != Work.UNCHOCK);
                parked =
                        work.work() == Work.SET_PARKING
                                || (parked && work.work() != Work.RELEASE_PARKING);
            } else if (planned.step() instanceof CheckStep check) {
                boolean outside = check.manner().spot() != Spot.CAB;
                assertThat(chocked || !outside)
                        .as("%s: nobody is at the vehicle without chocks", where)
                        .isTrue();
                made.add(check.text());
            }
        }
        assertThat(made)
                .as(where)
                .containsExactlyInAnyOrderElementsOf(
                        plan.set().checks().stream().map(CheckStep::text).toList());
    }
}
