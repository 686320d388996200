package org.fandown.operator;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.fandown.check.Check;
import org.fandown.evidence.Circumstances;
import org.fandown.practice.Sound;
import org.fandown.practice.Station;
import org.fandown.procedure.CheckStep;
import org.fandown.vehicle.Axle;
import org.fandown.vehicle.VehicleUnit;
import org.fandown.vehicle.WheelId;

/** What is heard on a walk round the vehicle: leaks, and valves that vent. */
final class EarChecks {
    /** At each place one listens for, s. */
    private static final double LISTENS = 2;

    private static final int FIRMLY = 60;
    private static final double PRESSED = 3;

    /** Valves of one unit alone are silent again after, s (assumption). */
    private static final double VENTS = 1;

    /** Each towed unit more may take, s (assumption). */
    private static final double VENTS_MORE = 0.4;

    private EarChecks() {}

    static void addTo(Map<Check, Performing> all) {
        all.put(Check.NO_AUDIBLE_LEAK, EarChecks::leaks);
        all.put(Check.EXHAUST_VALVES, EarChecks::vents);
    }

    /** Round the vehicle with the pedal up, and again with somebody on it; both knobs in. */
    private static Observed leaks(CheckStep step, Person person) {
        person.helper(true);
        person.air().letPurge();
        Knobs knobs = Knobs.noted(person);
        knobs.parking(false);
        Set<String> released = round(person);
        person.cab().foot(FIRMLY);
        person.pass(PRESSED);
        // Rules that say how ask for the pedal down; what is heard with it up is heard then too.
        Circumstances noted = Conditions.now(person).noted();
        Set<String> applied = round(person);
        person.cab().foot(0);
        person.pass(PRESSED);
        knobs.restore();
        applied.removeAll(released);
        person.stand(person.spot());
        String otherwise = "air is heard at " + String.join(", ", released);
        Observed observed = new Observed();
        if (!applied.isEmpty()) {
            String words = "with the pedal down air is heard at " + String.join(", ", applied);
            observed.abnormal(Check.AIR_LOSS_APPLIED, words);
            otherwise = released.isEmpty() ? words : otherwise;
        }
        boolean quiet = released.isEmpty() && applied.isEmpty();
        return observed.answer(step.check(), quiet, noted, otherwise);
    }

    private static Set<String> round(Person person) {
        Set<String> heard = new TreeSet<>();
        for (Station station : Rounds.ofAir(person.vehicle())) {
            listen(station, person, heard);
        }
        listen(Station.CAB, person, heard);
        return heard;
    }

    private static void listen(Station station, Person person, Set<String> heard) {
        person.standAt(station);
        person.pass(LISTENS);
        for (Sound sound : person.sounds()) {
            heard.add(sound.from().toString());
        }
    }

    /** The pedal is let go while somebody listens at the valves of each unit. */
    private static Observed vents(CheckStep step, Person person) {
        Observed observed = new Observed();
        person.helper(true);
        Knobs knobs = Knobs.noted(person);
        Circumstances noted = Conditions.now(person).noted();
        boolean good = springsVent(knobs, person, observed);
        knobs.restore();
        knobs.parking(false);
        for (Station station : Rounds.valves(person.vehicle())) {
            person.standAt(station);
            person.cab().foot(FIRMLY);
            person.pass(PRESSED);
            brakesOn(station, person, observed);
            person.standAt(station);
            person.cab().foot(0);
            person.pass(silent(person));
            if (vents(person)) {
                good = false;
                String words = "a valve at " + station + " goes on venting after the pedal is up";
                observed.abnormal(Check.RELEASE_TIME, words);
                observed.abnormal(step.check(), words);
            }
            person.pass(PRESSED);
        }
        knobs.restore();
        person.stand(person.spot());
        return observed.answer(step.check(), good, noted, "a valve does not vent as it should");
    }

    /** With the pedal down each brake of the unit is seen on. */
    private static void brakesOn(Station station, Person person, Observed observed) {
        VehicleUnit unit = person.vehicle().units().get(station.unit() - 1);
        Rods rods = new Rods(person);
        List<WheelId> wheels =
                rods.of(unit.isPowered()).stream()
                        .filter(wheel -> person.vehicle().unitOf(wheel.axle()).equals(unit))
                        .toList();
        Check check =
                unit.isPowered() ? Check.SERVICE_BRAKE_RESPONSE : Check.TRAILER_SERVICE_BRAKES;
        rods.notOn(wheels)
                .ifPresent(
                        wheel ->
                                observed.abnormal(
                                        check, "the pedal does not work the brake at " + wheel));
    }

    private static void press(Person person) {
        person.cab().foot(FIRMLY);
        person.pass(PRESSED);
        person.cab().foot(0);
    }

    /** Time after which all valves should be silent, s. */
    private static double silent(Person person) {
        long towed =
                person.vehicle().towedUnits().stream().filter(unit -> unit.hasAirBrakes()).count();
        return VENTS + VENTS_MORE * towed;
    }

    private static boolean vents(Person person) {
        return person.sounds().stream().anyMatch(sound -> isExhaust(sound));
    }

    private static boolean isExhaust(Sound sound) {
        return sound.name().endsWith("exhaust");
    }

    /**
     * Parked, the valve of the spring brakes vents too: it had kept their force off the pedal's.
     */
    private static boolean springsVent(Knobs knobs, Person person, Observed observed) {
        boolean sprung =
                person.vehicle().powerUnit().axles().stream().anyMatch(Axle::hasSpringBrake);
        if (!sprung) {
            return true;
        }
        knobs.parking(true);
        person.standAt(Station.reservoirs(1));
        press(person);
        person.pass(0.1);
        boolean vents =
                person.sounds().stream().anyMatch(sound -> sound.name().startsWith("spring-"));
        person.pass(PRESSED);
        if (!vents) {
            observed.abnormal(
                    Check.EXHAUST_VALVES, "parked, the valve of the spring brakes does not vent");
        }
        return vents;
    }
}
