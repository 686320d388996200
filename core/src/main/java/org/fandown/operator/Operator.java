package org.fandown.operator;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.evidence.Observations;
import org.fandown.evidence.Report;
import org.fandown.evidence.Statement;
import org.fandown.practice.PracticeTruck;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Durations;
import org.fandown.procedure.Plan;
import org.fandown.procedure.PlannedStep;
import org.fandown.procedure.Spot;
import org.fandown.procedure.Work;
import org.fandown.procedure.WorkStep;

/**
 * Performs a plan on a practice truck as a perfect operator would, step by step, waiting for what
 * needles, lamps and ears tell.
 *
 * <p>Where the vehicle does not stand as the plan expects, what a check needs is made to hold
 * first; a check that cannot be made is left out, with the reason.
 */
public final class Operator {
    private static final double TENTHS = 10;

    private final Plan plan;
    private final Person person;
    private final Works works;
    private final Amends amends;
    private final Performings performings = new Performings();
    private final Observed observed = new Observed();
    private final List<StepTime> times = new ArrayList<>();

    private Operator(Plan plan, PracticeTruck truck) {
        this.plan = plan;
        Durations durations = plan.problem().course().durations();
        person = new Person(truck, durations);
        works = new Works(person);
        amends = new Amends(person, works);
    }

    /**
     * Performs a plan.
     *
     * @param plan a plan for the truck's vehicle
     * @param truck a truck that nobody has touched yet, standing before it
     * @throws IllegalArgumentException if the plan is for another vehicle, or time has passed
     */
    public static Performance perform(Plan plan, PracticeTruck truck) {
        if (!plan.set().rules().vehicle().equals(truck.vehicle())) {
            throw new IllegalArgumentException(
                    "The plan is for '"
                            + plan.set().rules().vehicle().name()
                            + "', the truck is '"
                            + truck.vehicle().name()
                            + "'. Make a plan for this truck.");
        }
        if (truck.time() != 0) {
            throw new IllegalArgumentException(
                    "Somebody has worked on the truck already. Take it as it is found.");
        }
        return new Operator(plan, truck).perform();
    }

    /**
     * Performs a plan and concludes: says which verdict and which defects follow.
     *
     * @param plan a plan for the truck's vehicle
     * @param truck a truck that nobody has touched yet, standing before it
     * @param moment when the inspection is dated
     * @param report what the written report holds besides, such as plate and inspector
     * @throws IllegalArgumentException if the plan is for another vehicle, or time has passed
     */
    public static Performance perform(
            Plan plan, PracticeTruck truck, OffsetDateTime moment, Report report) {
        Performance performance = perform(plan, truck);
        truck.state(Conclusion.of(performance, performance.inspection(moment, report)));
        return performance;
    }

    /** Returns whether it is written down how a check is made that gives a step its name. */
    public static boolean performs(Check check) {
        return new Performings().of(check).isPresent();
    }

    private Performance perform() {
        for (PlannedStep planned : plan.steps()) {
            double begin = person.time();
            if (planned.step() instanceof CheckStep check) {
                check(planned, check);
            } else {
                work(planned, (WorkStep) planned.step());
            }
            times.add(new StepTime(planned, begin, person.time()));
        }
        // Whether its gauge is stuck or its reservoir does not fill cannot be told from the seat.
        person.cab()
                .stuckNeedle()
                .ifPresent(
                        why ->
                                observed.abnormal(Check.GAUGE_WORKS, why)
                                        .abnormal(Check.BUILD_UP, why));
        return new Performance(plan, plan.set().rules().vehicle(), observed, times);
    }

    private void goTo(PlannedStep planned, Spot spot) {
        if (person.spot() != spot) {
            double way = Math.max(planned.walk(), person.durations().walk(person.spot(), spot));
            person.pass(way / TENTHS);
        }
        person.stand(spot);
    }

    private void work(PlannedStep planned, WorkStep step) {
        goTo(planned, step.work() == Work.WAIT ? person.spot() : step.work().spot());
        Optional<String> unsafe = amends.ready(step, person.spot());
        if (unsafe.isPresent()) {
            observed.notDone(step.text(), unsafe.get());
            return;
        }
        double begin = person.time();
        works.doIt(step.work(), step.amount()).ifPresent(why -> observed.notDone(step.text(), why));
        if (hasItsTime(step.work())) {
            person.passUntil(begin + planned.tenths() / TENTHS);
        }
    }

    /** Whether a work takes the time that hands need, whatever the air does. */
    private static boolean hasItsTime(Work work) {
        return work != Work.PUMP_UP && work != Work.FAN_DOWN && work != Work.WAIT;
    }

    private void check(PlannedStep planned, CheckStep step) {
        goTo(planned, step.manner().spot());
        Optional<Performing> way = performings.of(step.check());
        if (way.isEmpty()) {
            observed.notDone(step.check(), "nobody has written down how it is performed");
            return;
        }
        Optional<String> missing = amends.ready(step, step.manner().spot());
        if (missing.isPresent()) {
            observed.notDone(step.check(), missing.get());
            return;
        }
        step.checks().forEach(check -> person.state(new Statement.Begin(check)));
        Observed found = way.get().perform(step, person);
        person.helper(false);
        if (!found.noted().equals(Observations.NONE)) {
            person.state(new Statement.Record(found.noted()));
        }
        observed.add(found);
    }
}
