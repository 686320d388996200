package org.fandown.operator;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fandown.check.Check;
import org.fandown.check.Circumstance;
import org.fandown.evidence.Reading;
import org.fandown.evidence.Sample;
import org.fandown.procedure.CheckStep;
import org.fandown.units.Num;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/** Air lost in a time, and what the check valves keep. */
final class LossChecks {
    private static final int EVERY = 5;
    private static final int MINUTE = 60;

    /** A needle that moved within the minute is watched for longer, to tell how fast, s. */
    private static final int LONGER = 180;

    /** The first drop of an application has passed after, s. */
    private static final double FIRST_DROP = 15;

    /** A leak takes more while the supply reservoir no longer helps out (assumption). */
    private static final double LEAK_SHARE = 2;

    private LossChecks() {}

    static void addTo(Map<Check, Performing> all) {
        all.put(Check.AIR_LOSS_RELEASED, (step, person) -> released(step, person));
        all.put(Check.AIR_LOSS_APPLIED, (step, person) -> applied(step, person));
        all.put(Check.CHECK_VALVE, LossChecks::checkValve);
    }

    private static Observed released(CheckStep step, Person person) {
        Needles start = person.cab().needles();
        Watched watched = watch(step, person);
        person.air().leaks(watched.perMinute());
        var at = Conditions.now(person).from(start).held(watched.seconds());
        return noted(step, watched, at, Usual.lossReleased(units(person)));
    }

    private static Observed applied(CheckStep step, Person person) {
        Needles start = person.cab().needles();
        person.cab().foot(Cab.FLOOR);
        person.pass(FIRST_DROP);
        Watched watched = watch(step, person);
        var at =
                Conditions.now(person)
                        .from(start)
                        .held(watched.seconds())
                        .state(Circumstance.AFTER_INITIAL_DROP, "yes");
        person.cab().foot(0);
        person.pass(2);
        return noted(step, watched, at, Usual.lossApplied(units(person)));
    }

    private static int units(Person person) {
        return 1
                + (int)
                        person.vehicle().towedUnits().stream()
                                .filter(unit -> unit.hasAirBrakes())
                                .count();
    }

    /** Both needles, read every few seconds. */
    private record Watched(List<Sample> primary, List<Sample> secondary) {
        double seconds() {
            return primary.get(primary.size() - 1).time().value();
        }

        /** The needle that fell further. */
        List<Sample> worse() {
            return lost(primary) >= lost(secondary) ? primary : secondary;
        }

        static double lost(List<Sample> samples) {
            return samples.get(0).pressure().value()
                    - samples.get(samples.size() - 1).pressure().value();
        }

        double perMinute() {
            return lost(worse()) * MINUTE / seconds();
        }
    }

    private static Watched watch(CheckStep step, Person person) {
        Watched watched = new Watched(new ArrayList<>(), new ArrayList<>());
        int most = Math.max(MINUTE, step.manner().hold());
        double begin = person.time();
        add(watched, 0, person);
        for (int seconds = EVERY; seconds <= most; seconds += EVERY) {
            person.passUntil(begin + seconds);
            add(watched, seconds, person);
            boolean moved = Watched.lost(watched.worse()) > 0;
            most = seconds >= most && moved ? Math.max(most, LONGER) : most;
        }
        return watched;
    }

    private static void add(Watched watched, int seconds, Person person) {
        Needles now = person.cab().needles();
        watched.primary().add(sample(seconds, now.primary()));
        watched.secondary().add(sample(seconds, now.secondary()));
    }

    private static Sample sample(int seconds, int psi) {
        return new Sample(Quantity.of(seconds, Unit.SECOND), Quantity.of(psi, Unit.PSI));
    }

    private static Observed noted(CheckStep step, Watched watched, Conditions at, double usual) {
        Observed observed = new Observed();
        Check check = step.check();
        observed.reading(new Reading.Span(check, watched.worse(), at.noted(), ""));
        if (watched.perMinute() > usual) {
            observed.abnormal(
                    check,
                    (int) Num.round(watched.perMinute()) + " psi lost in a minute at one needle");
        }
        return observed;
    }

    /**
     * Neither needle falls while, and after, the supply reservoir is drained, but for what leaks
     * are known to take. Where the pedal took air since, what is left of it counts.
     */
    private static Observed checkValve(CheckStep step, Person person) {
        boolean used = person.air().usedSinceDrain();
        Needles before = used ? person.cab().needles() : person.air().beforeDrain();
        person.pass(MINUTE);
        Needles after = person.cab().needles();
        int fell =
                Math.max(
                        before.primary() - after.primary(), before.secondary() - after.secondary());
        double leaked = person.air().leaked() * person.air().sinceDrain() / MINUTE;
        double cools = Usual.COOLS * Math.max(before.primary(), before.secondary());
        boolean holds = fell <= Math.max(Usual.NEEDLE_MOVES, cools) + LEAK_SHARE * leaked;
        String otherwise = "a needle fell by " + fell + " psi with the supply reservoir";
        return new Observed()
                .answer(step.check(), holds, Conditions.now(person).noted(), otherwise);
    }
}
