package org.fandown.operator;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.evidence.Circumstances;
import org.fandown.practice.Sighting;
import org.fandown.practice.Station;
import org.fandown.practice.Verb;
import org.fandown.procedure.CheckStep;
import org.fandown.vehicle.WheelId;

/** Brakes of towed units as seen from beside their wheels: on, off, and fed with air. */
final class TrailerChecks {
    /** A trailer without supply brakes within, s. Source: 49 CFR 571.121 S5.6.3.2. */
    private static final double APPLIES = 3;

    /** A trailer lets go within, s (assumption). */
    private static final double RELEASES = 10;

    private static final int FIRMLY = 60;

    private TrailerChecks() {}

    static void addTo(Map<Check, Performing> all) {
        all.put(Check.TRAILER_BRAKES_APPLY, TrailerChecks::apply);
        all.put(Check.TRAILER_BRAKES_RELEASE, TrailerChecks::release);
        all.put(Check.AIR_REACHES_TRAILERS, TrailerChecks::airReaches);
    }

    private static List<WheelId> wheels(Person person) {
        return new Rods(person).of(false);
    }

    private static Observed apply(CheckStep step, Person person) {
        person.pass(APPLIES);
        Rods rods = new Rods(person);
        Optional<WheelId> off = rods.notOn(rods.onWithoutSupply());
        Circumstances noted = Conditions.now(person).noted();
        person.stand(person.spot());
        return new Observed()
                .answer(step.check(), off.isEmpty(), noted, "the brake is off at " + at(off));
    }

    private static String at(Optional<WheelId> wheel) {
        return wheel.map(WheelId::toString).orElse("no wheel");
    }

    /** Seen off; then on when somebody pulls the knob, and off again when it is pushed. */
    private static Observed release(CheckStep step, Person person) {
        Observed observed = new Observed();
        Rods rods = new Rods(person);
        List<WheelId> wheels = wheels(person);
        Circumstances noted = Conditions.now(person).noted();
        Optional<WheelId> before = rods.notOff(wheels);
        person.helper(true);
        person.cab().trailerSupply(false);
        person.pass(APPLIES - 1);
        Optional<WheelId> off = rods.notOn(rods.onWithoutSupply());
        if (off.isPresent()) {
            observed.abnormal(
                    Check.TRAILER_BRAKES_APPLY,
                    "without supply the brake at " + at(off) + " is not on within 3 s");
        }
        person.pass(APPLIES);
        person.cab().trailerSupply(true);
        person.pass(RELEASES - 1);
        Optional<WheelId> on = rods.notOff(wheels);
        person.stand(person.spot());
        Optional<WheelId> bad = before.or(() -> on);
        return observed.answer(
                step.check(), bad.isEmpty(), noted, "the brake stays on at " + at(bad));
    }

    /** Supply air at the drain of each towed unit, and control air at its brakes. */
    private static Observed airReaches(CheckStep step, Person person) {
        Circumstances noted = Conditions.now(person).noted();
        person.helper(true);
        Optional<String> none = Optional.empty();
        for (int unit = 2; unit <= person.vehicle().units().size(); unit++) {
            Optional<String> here = noSupply(unit, person);
            none = none.or(() -> here);
        }
        person.cab().hand(FIRMLY);
        person.pass(APPLIES);
        Optional<WheelId> off = new Rods(person).notOn(wheels(person));
        person.cab().hand(0);
        person.pass(APPLIES);
        person.stand(person.spot());
        Optional<String> wrong =
                none.or(() -> off.map(wheel -> "the hand valve does not work at " + wheel));
        return new Observed().answer(step.check(), wrong.isEmpty(), noted, wrong.orElse(""));
    }

    private static Optional<String> noSupply(int unit, Person person) {
        String reservoir = "unit" + unit;
        Optional<Sighting> seen = person.see(Verb.OPEN_DRAIN, reservoir);
        if (seen.isEmpty()) {
            return Optional.empty();
        }
        person.pass(1);
        person.act(Verb.SHUT_DRAIN, reservoir);
        return ((Sighting.Drain) seen.get()).air()
                ? Optional.empty()
                : Optional.of("no air at " + Station.reservoirs(unit));
    }
}
