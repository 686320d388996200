package org.fandown.operator;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.fandown.check.Check;
import org.fandown.evidence.Report;
import org.fandown.practice.PracticeTruck;
import org.fandown.procedure.Plan;
import org.fandown.procedure.PlannedStep;

/**
 * Performs a plan on a practice truck as a perfect operator would, step by step, waiting for what
 * needles, lamps and ears tell.
 *
 * <p>Where the vehicle does not stand as the plan expects, what a check needs is made to hold
 * first; a check that cannot be made is left out, with the reason.
 */
public final class Operator {
    private final Plan plan;
    private final Person person;
    private final Performer performer;
    private final List<StepTime> times = new ArrayList<>();

    private Operator(Plan plan, PracticeTruck truck) {
        this.plan = plan;
        person = new Person(truck, plan.problem().course().durations());
        performer = new Performer(person);
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
            performer.perform(planned);
            times.add(new StepTime(planned, begin, person.time()));
        }
        // Whether its gauge is stuck or its reservoir does not fill cannot be told from the seat.
        person.cab()
                .stuckNeedle()
                .ifPresent(
                        why ->
                                performer
                                        .observed()
                                        .abnormal(Check.GAUGE_WORKS, why)
                                        .abnormal(Check.BUILD_UP, why));
        return new Performance(plan, plan.set().rules().vehicle(), performer.observed(), times);
    }
}
