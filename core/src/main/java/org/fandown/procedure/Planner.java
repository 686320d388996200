package org.fandown.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fandown.rulebook.RulesInForce;

/**
 * Finds the order of work that proves a vehicle in the least time on the clock.
 *
 * <p>It is the quickest under the model of {@link Course} and {@link Durations}: no order of the
 * same checks, with whatever work between them, is quicker. House rule beside the needs of the
 * steps: chocks come before anything else.
 */
public final class Planner {
    private static final int A_START_MORE = 1_000_000;
    private static final String LEFT = "the vehicle is left ready to drive";

    private final StepSet set;
    private final Rig rig;
    private final WorkNeeds works;

    /** A planner for these checks on the vehicle of their rules. */
    public Planner(StepSet set, Durations durations) {
        this.set = set;
        this.rig = new Rig(set.rules().vehicle(), durations);
        this.works = new WorkNeeds(rig);
    }

    /** The plan of a place's rules for a vehicle, with durations from the vehicle file. */
    public static Optional<Plan> plan(RulesInForce rules, Scope scope, PlanRequest request) {
        Durations durations = VehicleDurations.of(rules.vehicle());
        return new Planner(Steps.of(rules, durations, scope), durations).plan(request);
    }

    /** The plan, empty if no order can make all the checks as asked. */
    public Optional<Plan> plan(PlanRequest request) {
        Problem problem = problem(request);
        return new Relaxations(problem)
                .quickest()
                .map(steps -> new Plan(set, request, problem, Timeline.of(problem, steps)));
    }

    /** What has to be solved. */
    public Problem problem(PlanRequest request) {
        Situation found = Situation.found(request.startPsi());
        Course course = new Course(rig.durations());
        boolean fewest = request.goal() == PlanRequest.Goal.FEWEST_STARTS;
        List<Need> finish = finish();
        List<Precedence> printed = printed(request);
        boolean follows = !request.followed().isEmpty();
        return new Problem(
                course,
                set.checks(),
                works(finish, follows || !printed.isEmpty()),
                PrintedOrders.precedences(set, printed, follows),
                request.followed(),
                governed(found),
                opening(),
                finish,
                fewest ? A_START_MORE : 0);
    }

    private List<Precedence> printed(PlanRequest request) {
        return request.asPrinted()
                ? PlaceOrders.printed(set).map(PlaceOrders.Printed::precedences).orElse(List.of())
                : List.of();
    }

    /** Chocks before anything else, wherever some check needs them. */
    private List<WorkStep> opening() {
        return asks(Aspect.CHOCKS, 1) ? List.of(works.step(Work.CHOCK, 0)) : List.of();
    }

    /** The governor of a vehicle found with full reservoirs rests. */
    private Situation governed(Situation found) {
        boolean full = found.psi() > rig.durations().cutIn();
        return found.with(Aspect.COMPRESSOR, full ? 0 : 1);
    }

    private List<Need> finish() {
        List<Need> finish = new ArrayList<>();
        finish.add(Need.is(Aspect.CHOCKS, 0, Weight.POSSIBLE, LEFT));
        finish.add(Need.is(Aspect.ENGINE, 1, Weight.POSSIBLE, LEFT));
        finish.add(Need.atLeast(Math.min(100, rig.durations().cutIn()), Weight.POSSIBLE, LEFT));
        if (rig.tows()) {
            finish.add(Need.is(Aspect.LINES, Lines.COUPLED, Weight.POSSIBLE, LEFT));
            finish.add(Need.is(Aspect.TRAILER_SUPPLY, 1, Weight.POSSIBLE, LEFT));
        }
        return finish;
    }

    /** The works that some check, or the end, can need. */
    private List<WorkStep> works(List<Need> finish, boolean follows) {
        List<WorkStep> list = new ArrayList<>();
        for (Work work : Work.values()) {
            boolean again = work == Work.CHOCK && follows;
            if (work.amount() == Work.Amount.NONE && (again || isOfUse(work))) {
                list.add(works.step(work, 0));
            }
        }
        Set<Integer> up = new TreeSet<>();
        Set<Integer> down = new TreeSet<>();
        levels(finish, up, down);
        set.checks().forEach(check -> levels(check.needs(), up, down));
        list.forEach(work -> levels(work.needs(), up, down));
        down.add(rig.durations().cutIn());
        up.add(rig.durations().cutOut());
        up.removeIf(psi -> psi > rig.durations().cutOut() || psi <= 0);
        down.removeIf(psi -> psi >= rig.durations().cutOut() || psi < Course.SUPPLY_POPS);
        up.forEach(psi -> list.add(works.step(Work.PUMP_UP, psi)));
        down.forEach(psi -> list.add(works.step(Work.FAN_DOWN, psi)));
        list.add(works.step(Work.WAIT, rig.durations().settling() / 10));
        return list;
    }

    private static void levels(List<Need> needs, Set<Integer> up, Set<Integer> down) {
        for (Need need : needs) {
            if (need.aspect() == Aspect.PRESSURE) {
                up.add(Levels.up(need));
                down.add(need.most());
            }
        }
    }

    private boolean isOfUse(Work work) {
        return switch (work) {
            case CHOCK -> false;
            case OPEN_TRAILER_SUPPLY, CLOSE_TRAILER_SUPPLY -> rig.tows();
            case PART_SERVICE_LINE -> lines(Lines.SERVICE_PARTED);
            case PART_SUPPLY_LINE -> lines(Lines.SUPPLY_PARTED);
            case PART_LINES -> lines(Lines.BOTH_PARTED);
            case COUPLE_LINES ->
                    lines(Lines.SERVICE_PARTED)
                            || lines(Lines.SUPPLY_PARTED)
                            || lines(Lines.BOTH_PARTED);
            case DRAIN_SUPPLY -> asks(Aspect.SUPPLY_RESERVOIR, 0);
            case KEY_ON -> asks(Aspect.KEY, 1);
            default -> true;
        };
    }

    private boolean lines(int value) {
        return asks(Aspect.LINES, value);
    }

    private boolean asks(Aspect aspect, int value) {
        return set.checks().stream()
                .flatMap(check -> check.needs().stream())
                .anyMatch(n -> n.aspect() == aspect && n.least() == value && n.most() == value);
    }
}
