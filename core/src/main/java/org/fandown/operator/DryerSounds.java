package org.fandown.operator;

import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.practice.Sound;
import org.fandown.practice.Station;
import org.fandown.procedure.Spot;

/** What is heard of dryer and safety valve when the pumping stops, or does not. */
final class DryerSounds {
    /** A whole purge lasts longer, s (assumption). */
    private static final double PURGES = 5;

    /** A purge is over by then, s. */
    private static final double OVER = 15;

    /** With nobody on the pedal the pumping stays off for longer, s (assumption). */
    private static final double REPEATS = 40;

    private DryerSounds() {}

    /** Listens to the purge to its end, or, without one, at the reservoirs. */
    static void after(Air.Climb climb, Person person, Observed observed) {
        if (climb.purged()) {
            purge(person, observed);
        } else {
            safetyValve(person, observed);
        }
    }

    /** A purge that breaks off is followed by another one, if the dryer lets air back. */
    private static void purge(Person person, Observed observed) {
        double begin = person.time();
        person.await(() -> !person.purging(), OVER);
        if (person.time() - begin < PURGES && person.await(person::purging, REPEATS)) {
            observed.abnormal(
                    Component.AIR_SYSTEM, "the dryer purges again and again with the pedal up");
        }
    }

    private static void safetyValve(Person person, Observed observed) {
        person.walk(Spot.RESERVOIRS);
        person.standAt(Station.reservoirs(1));
        if (person.await(() -> blowsOff(person), REPEATS)) {
            observed.abnormal(
                    Check.SAFETY_VALVE_OPENING,
                    "the safety valve blows while the engine runs, and nothing stops the pumping");
        }
        person.walk(Spot.CAB);
    }

    private static boolean blowsOff(Person person) {
        return person.sounds().stream().map(Sound::name).anyMatch("safety-valve"::equals);
    }
}
