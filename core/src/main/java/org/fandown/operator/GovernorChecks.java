package org.fandown.operator;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.evidence.Reading;
import org.fandown.evidence.Sample;
import org.fandown.procedure.Aspect;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Need;
import org.fandown.units.Num;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/** Build-up, cut-out and cut-in. */
final class GovernorChecks {
    /** No climb for so long: the compressor does not build up, s. */
    private static final double STALLS = 90;

    /** Spring brakes that were released are full by then, s (assumption). */
    private static final double FILLS = 30;

    /** So far below a figure a needle is seen passing it, psi. */
    private static final int CLEARLY = 4;

    private GovernorChecks() {}

    static void addTo(Map<Check, Performing> all) {
        all.put(Check.BUILD_UP, GovernorChecks::buildUp);
        all.put(Check.GOVERNOR_CUT_OUT, GovernorChecks::cutOut);
        all.put(Check.GOVERNOR_CUT_IN, GovernorChecks::cutIn);
    }

    private static int rpm(CheckStep step) {
        return step.manner().rpm() == 0 ? Air.FAST_IDLE : step.manner().rpm();
    }

    /** Reads the lower needle every second while it climbs through the window. */
    private static Observed buildUp(CheckStep step, Person person) {
        Observed observed = new Observed();
        Cab cab = person.cab();
        int to = step.change().psi();
        still(person);
        begin(step, person);
        Needles start = cab.needles();
        cab.throttle(rpm(step));
        List<Sample> samples = new ArrayList<>();
        double begin = person.time();
        int best = cab.needles().lower();
        double since = begin;
        boolean purged = false;
        samples.add(sample(0, best));
        while (best < to && !purged && person.time() - since < STALLS) {
            person.pass(1);
            int now = cab.needles().lower();
            samples.add(sample(person.time() - begin, now));
            since = now > best ? person.time() : since;
            best = Math.max(best, now);
            purged = person.purging();
        }
        var at = Conditions.now(person).from(start).noted();
        cab.throttle(0);
        person.air().stirred();
        if (best < to) {
            String why = "the needles stop at " + cab.needles().words() + ", below " + to + " psi";
            return observed.abnormal(Check.BUILD_UP, why).notDone(Check.BUILD_UP, why);
        }
        observed.reading(new Reading.Span(Check.BUILD_UP, samples, at, ""));
        tooSlow(step, samples, person, observed);
        return observed;
    }

    /** What was released before may go on filling for some seconds. */
    private static void still(Person person) {
        double end = person.time() + FILLS;
        int before;
        do {
            before = person.cab().needles().sum();
            person.pass(2);
        } while (person.cab().needles().sum() < before && person.time() < end);
    }

    /** The needle has to be seen passing the figure at which the clock starts. */
    private static void begin(CheckStep step, Person person) {
        for (Need need : step.needs()) {
            boolean above = person.cab().needles().higher() >= need.most();
            if (need.aspect() == Aspect.PRESSURE && above) {
                person.air().fanDown(need.most() - CLEARLY);
            }
        }
    }

    private static Sample sample(double seconds, int psi) {
        return new Sample(Quantity.of(Num.round(seconds), Unit.SECOND), Quantity.of(psi, Unit.PSI));
    }

    private static void tooSlow(
            CheckStep step, List<Sample> samples, Person person, Observed observed) {
        int from = (int) samples.get(0).pressure().value();
        int to = step.change().psi();
        double took = samples.get(samples.size() - 1).time().value();
        double model = person.durations().rise(person.trailerCharged(), rpm(step), from, to) / 10.0;
        if (took > Usual.buildUpShare(person.vehicle()) * model) {
            observed.abnormal(
                    Check.BUILD_UP,
                    from + " to " + to + " psi took " + (int) took + " s, far longer than usual");
        }
    }

    private static Observed cutOut(CheckStep step, Person person) {
        Observed observed = new Observed();
        Needles start = person.cab().needles();
        Air.Climb climb = person.air().pumpToCutOut(rpm(step));
        if (!climb.purged() && person.air().pumpDownUntilClimbs().climbs()) {
            // It had cut out before, and nobody was there to see it.
            climb = person.air().pumpToCutOut(rpm(step));
        }
        var at = Conditions.now(person).from(start).noted();
        Needles now = climb.at();
        String note = climb.purged() ? "" : "no purge; the needles stand still";
        observed.needles(Check.GOVERNOR_CUT_OUT, now, at, note);
        if (step.checks().contains(Check.GAUGE_WORKS)) {
            boolean both = person.cab().needlesMove();
            observed.answer(Check.GAUGE_WORKS, both, at, "a needle stands still");
        }
        listen(climb, person, observed);
        DryerSounds.after(climb, person, observed);
        return observed;
    }

    private static void listen(Air.Climb climb, Person person, Observed observed) {
        int usual = person.durations().cutOut();
        Needles at = climb.at();
        if (Math.abs(at.higher() - usual) > Usual.GOVERNOR_BAND) {
            observed.abnormal(
                    Check.GOVERNOR_CUT_OUT,
                    "at " + at.higher() + " psi, where " + usual + " psi is usual");
        }
        if (!climb.purged()) {
            observed.abnormal(Component.AIR_SYSTEM, "no purge is heard at cut-out");
            observed.abnormal(Check.BUILD_UP, "the needles stop without a purge");
        }
        if (at.higher() - at.lower() > Usual.NEEDLES_APART) {
            observed.abnormal(Check.GAUGE_ERROR, "full, the needles show " + at.words());
        }
    }

    private static Observed cutIn(CheckStep step, Person person) {
        Observed observed = new Observed();
        Needles start = person.cab().needles();
        person.cab().throttle(0);
        Air.Turn turn = person.air().pumpDownUntilClimbs();
        var at = Conditions.now(person).from(start).noted();
        String note = turn.climbs() ? "" : "the compressor has not cut in down to this";
        observed.needles(Check.GOVERNOR_CUT_IN, turn.at(), at, note);
        if (!turn.climbs() || turn.at().higher() < Usual.CUT_IN_LEAST) {
            String words = turn.climbs() ? "cuts in at " : "has not cut in down to ";
            observed.abnormal(Check.GOVERNOR_CUT_IN, words + turn.at().words());
        }
        return observed;
    }
}
