package org.fandown.operator;

import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.fandown.check.Check;
import org.fandown.procedure.Aspect;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Need;

/** Lamps, and the needles before driving. */
final class DashChecks {
    /** A lamp that checks itself is out again after, s. */
    private static final double SELF_CHECK = 10;

    /** A needle so far above a figure is clearly above it, psi. */
    private static final int CLEARLY = 2;

    private DashChecks() {}

    static void addTo(Map<Check, Performing> all) {
        all.put(
                Check.ABS_LAMP,
                (step, person) -> selfCheck(step, person, () -> person.cab().absLamp()));
        all.put(
                Check.TRAILER_ABS_LAMP,
                (step, person) -> selfCheck(step, person, person::trailerAbsLamp));
        all.put(Check.STOP_LAMPS, DashChecks::stopLamps);
        all.put(Check.PRESSURE_BEFORE_DRIVING, DashChecks::beforeDriving);
    }

    private static Observed selfCheck(
            CheckStep step, Person person, Supplier<Optional<Boolean>> lamp) {
        person.cab().key(false);
        person.pass(1);
        boolean dark = !lamp.get().orElse(false);
        person.cab().key(true);
        person.pass(1);
        boolean lit = lamp.get().orElse(false);
        boolean out = person.await(() -> !lamp.get().orElse(false), SELF_CHECK);
        String otherwise = !lit ? "does not light" : !out ? "stays on" : "is lit with the key off";
        return new Observed()
                .answer(
                        step.check(),
                        dark && lit && out,
                        Conditions.now(person).noted(),
                        otherwise);
    }

    /** Somebody presses the pedal while the lamps are watched from behind. */
    private static Observed stopLamps(CheckStep step, Person person) {
        person.helper(true);
        person.pass(2);
        boolean before = person.stopLamps();
        person.cab().foot(50);
        boolean lit = person.await(person::stopLamps, 3);
        var noted = Conditions.now(person).noted();
        person.cab().foot(0);
        boolean out = person.await(() -> !person.stopLamps(), 3);
        person.pass(2);
        String otherwise =
                before ? "lit without the pedal" : lit ? "stay on" : "do not light with the pedal";
        return new Observed().answer(step.check(), !before && lit && out, noted, otherwise);
    }

    private static Observed beforeDriving(CheckStep step, Person person) {
        Observed observed = new Observed();
        int least = 0;
        for (Need need : step.needs()) {
            least = need.aspect() == Aspect.PRESSURE ? Math.max(least, need.least()) : least;
        }
        person.air().pumpTo(least + CLEARLY, Air.FAST_IDLE);
        person.pass(3);
        if (person.cab().warns()) {
            observed.abnormal(step.check(), "a warning is on");
        }
        return observed.needles(
                step.check(), person.cab().needles(), Conditions.now(person).noted(), "");
    }
}
