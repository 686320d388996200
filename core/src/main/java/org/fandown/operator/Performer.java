package org.fandown.operator;

import java.util.Optional;
import org.fandown.evidence.Observations;
import org.fandown.evidence.Statement;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.PlannedStep;
import org.fandown.procedure.Spot;
import org.fandown.procedure.Work;
import org.fandown.procedure.WorkStep;

/** Performs one planned step after the other, and keeps what was written down. */
final class Performer {
    private static final double TENTHS = 10;

    private final Person person;
    private final Works works;
    private final Amends amends;
    private final Performings performings = new Performings();
    private final Observed observed = new Observed();

    Performer(Person person) {
        this.person = person;
        works = new Works(person);
        amends = new Amends(person, works);
    }

    /** What was written down so far. */
    Observed observed() {
        return observed;
    }

    Amends amends() {
        return amends;
    }

    void perform(PlannedStep planned) {
        if (planned.step() instanceof CheckStep check) {
            check(planned, check);
        } else {
            work(planned, (WorkStep) planned.step());
        }
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
