package org.fandown.reference.procedure;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.files.RulePacks;
import org.fandown.check.Check;
import org.fandown.check.PlaceCode;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Durations;
import org.fandown.procedure.Examination;
import org.fandown.procedure.Order;
import org.fandown.procedure.OrderExaminer;
import org.fandown.procedure.Plan;
import org.fandown.procedure.PlanRequest;
import org.fandown.procedure.PlannedStep;
import org.fandown.procedure.Planner;
import org.fandown.procedure.Scope;
import org.fandown.procedure.Step;
import org.fandown.procedure.StepSet;
import org.fandown.procedure.Steps;
import org.fandown.procedure.VehicleDurations;
import org.fandown.procedure.Violation;
import org.fandown.procedure.Weight;
import org.fandown.rulebook.RulesInForce;
import org.fandown.vehicle.VehicleReader;

/** The checks of one vehicle in one place, planned and examined. */
record Ordered(StepSet set, Durations durations) {
    static final String TRACTOR = "tractor-box-trailer";
    static final String TRUCK = "straight-truck";
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    static Ordered of(String place, String vehicle) {
        PlaceCode code = new PlaceCode(place);
        Path file = Path.of("../examples/vehicles/" + vehicle + ".yaml");
        RulesInForce rules =
                RulePacks.builtIn()
                        .rulebookFor(code)
                        .orElseThrow()
                        .inForce(code, VehicleReader.read(DocumentFiles.read(file)), DAY);
        Durations durations = VehicleDurations.of(rules.vehicle());
        return new Ordered(Steps.of(rules, durations, Scope.ASKED), durations);
    }

    Plan plan(boolean asPrinted) {
        PlanRequest request = new PlanRequest(0, PlanRequest.Goal.QUICKEST, List.of(), asPrinted);
        return new Planner(set, durations).plan(request).orElseThrow();
    }

    /** The checks of a plan in turn. */
    static List<Check> checks(Plan plan) {
        List<Check> checks = new ArrayList<>();
        for (PlannedStep planned : plan.steps()) {
            if (planned.step() instanceof CheckStep check) {
                checks.add(check.check());
            }
        }
        return checks;
    }

    /** The plan with one check made right after another instead. */
    Order with(Plan plan, Check moved, Check after) {
        List<Step> steps = new ArrayList<>();
        plan.steps().forEach(planned -> steps.add(planned.step()));
        Step step = steps.stream().filter(s -> is(s, moved)).findFirst().orElseThrow();
        steps.remove(step);
        int at = 0;
        while (!is(steps.get(at), after)) {
            at++;
        }
        steps.add(at + 1, step);
        return new Order("", 0, steps);
    }

    private static boolean is(Step step, Check check) {
        return step instanceof CheckStep made && made.check() == check;
    }

    Examination examine(Order order) {
        return new OrderExaminer(set, durations).examine(order);
    }

    /** What an order breaks of the orders that the place asks for. */
    List<Violation> breaches(Order order) {
        return examine(order).violations().stream()
                .filter(v -> v.order().isPresent() && v.need().weight() == Weight.RULE)
                .toList();
    }
}
