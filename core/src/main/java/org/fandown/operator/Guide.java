package org.fandown.operator;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.evidence.Observations;
import org.fandown.evidence.Statement;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.RunEntry;
import org.fandown.practice.RunWatcher;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Need;
import org.fandown.procedure.Plan;
import org.fandown.procedure.PlannedStep;
import org.fandown.procedure.WorkStep;

/**
 * Leads a learner through a plan: tells which step is next and whether what it needs holds, notices
 * when it is done, and shows a step if asked to.
 *
 * <p>What is done is told by what the learner does, writes down, and could see or hear; nothing
 * here looks into the air system or at what is wrong with the truck.
 */
public final class Guide implements RunWatcher {
    private final Plan plan;
    private final Person person;
    private final Performer performer;
    private final Follower follower;
    private Observations noted = Observations.NONE;
    private int done;
    private double since;
    private boolean again;

    /**
     * One thing that has to hold before a step.
     *
     * @param need what
     * @param holds whether it does now
     */
    public record Held(Need need, boolean holds) {}

    private Guide(Plan plan, PracticeTruck truck) {
        this.plan = plan;
        person = new Person(truck, plan.problem().course().durations());
        performer = new Performer(person);
        follower = new Follower(person);
    }

    /**
     * Makes a guide through a plan.
     *
     * @param plan a plan for the truck's vehicle
     * @param truck a truck that nobody has touched yet; what is done to it is told to this guide
     */
    public static Guide of(Plan plan, PracticeTruck truck) {
        Guide guide = new Guide(plan, truck);
        guide.go();
        return guide;
    }

    /** Returns the step that is next, empty if all are done. */
    public Optional<PlannedStep> now() {
        return done < plan.steps().size() ? Optional.of(plan.steps().get(done)) : Optional.empty();
    }

    /** Returns what the next step needs, and whether it holds. */
    public List<Held> needs() {
        List<Held> needs = new ArrayList<>();
        now().ifPresent(
                        planned ->
                                planned.step()
                                        .needs()
                                        .forEach(need -> needs.add(new Held(need, holds(need)))));
        return needs;
    }

    private boolean holds(Need need) {
        return performer.amends().holds(need);
    }

    /** Returns which checks of the next step are still to be written down. */
    public List<Check> open() {
        return now().map(PlannedStep::step)
                .filter(CheckStep.class::isInstance)
                .map(step -> Written.open((CheckStep) step, noted))
                .orElse(List.of());
    }

    /**
     * Goes on, or back, to a step whatever was done. One that is done already is done again, or
     * left by going on.
     *
     * @param number its number, from 1; one more than there are for the end
     */
    public void goTo(int number) {
        stepTo(number);
        again = now().map(this::isDone).orElse(false);
    }

    private void stepTo(int number) {
        again = false;
        done = Math.max(0, Math.min(plan.steps().size(), number - 1));
        since = person.time();
    }

    /** Sees what the learner did or said. */
    @Override
    public void after(PracticeTruck truck, RunEntry entry, boolean refused) {
        if (entry instanceof RunEntry.Act act && !refused) {
            follower.saw(act.action());
        } else if (entry instanceof RunEntry.Stated said
                && said.statement() instanceof Statement.Record written) {
            noted = noted.then(written.observations());
        }
        go();
    }

    /** Looks at needles, lamps and knobs while time passes. */
    @Override
    public void tick(PracticeTruck truck) {
        follower.look();
        go();
    }

    /** Goes on past every step that is done. */
    private void go() {
        again &= now().map(this::isDone).orElse(false);
        while (!again && now().map(this::isDone).orElse(false)) {
            stepTo(done + 2);
        }
    }

    private boolean isDone(PlannedStep planned) {
        if (planned.step() instanceof CheckStep check) {
            return Written.open(check, noted).isEmpty() && !Written.of(check).isEmpty();
        }
        return Shows.done((WorkStep) planned.step(), person, follower, since);
    }

    /**
     * Performs the next step while the learner looks on, and goes on to the one after it.
     *
     * @param onlooker called after each tenth of a second
     * @return what stood in the way, empty if it was done
     */
    public Optional<String> show(Runnable onlooker) {
        PlannedStep planned =
                now().orElseThrow(() -> new IllegalStateException("Every step is done already."));
        person.takeOver();
        person.watchedBy(Optional.of(onlooker));
        int before = performer.observed().notDone().size();
        try {
            performer.perform(planned);
        } finally {
            person.watchedBy(Optional.empty());
        }
        noted = noted.then(performer.observed().noted());
        List<NotDone> trouble = performer.observed().notDone();
        stepTo(done + 2);
        go();
        return trouble.size() > before
                ? Optional.of(trouble.get(trouble.size() - 1).why())
                : Optional.empty();
    }
}
