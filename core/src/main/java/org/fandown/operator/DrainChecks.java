package org.fandown.operator;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.evidence.Circumstances;
import org.fandown.practice.Sighting;
import org.fandown.practice.Station;
import org.fandown.practice.Verb;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Lines;
import org.fandown.vehicle.ReservoirRole;
import org.fandown.vehicle.WheelId;

/**
 * Drains: what comes out of each, and, with the primary reservoir empty, what the secondary one
 * still does.
 */
final class DrainChecks {
    /** A drain is watched for, s. */
    private static final double WATCHED = 4;

    /** A reservoir is empty after, s. */
    private static final double EMPTIES = 40;

    /** A circuit of its own keeps its air when the other is drained, psi. */
    private static final int KEEPS = 5;

    /** One circuit alone holds the spring brakes off with so much, psi. */
    private static final int HOLDS_OFF = 65;

    /** To have that left, the primary circuit is not drained with less, psi. */
    private static final int PUMPED = 80;

    private DrainChecks() {}

    static void addTo(Map<Check, Performing> all) {
        all.put(Check.RESERVOIR_DRAIN, DrainChecks::drain);
    }

    private static Observed drain(CheckStep step, Person person) {
        Observed observed = new Observed();
        person.helper(true);
        Circumstances noted = Conditions.now(person).noted();
        Knobs knobs = Knobs.noted(person);
        List<String> wrong = new ArrayList<>();
        if (person.tows() && person.lines() == Lines.COUPLED && !person.trailerCharged()) {
            person.air().chargeTrailers();
        }
        for (int unit = 2; unit <= person.vehicle().units().size(); unit++) {
            look("unit" + unit, WATCHED, person, wrong);
        }
        if (person.vehicle().powerUnit().reservoirs().stream()
                .anyMatch(r -> r.role() == ReservoirRole.PARKING)) {
            look("parking", WATCHED, person, wrong);
        }
        look("secondary", WATCHED, person, wrong);
        if (person.cab().needles().lower() < PUMPED) {
            person.air().pumpTo(PUMPED, Air.FAST_IDLE);
            person.cab().stop();
        }
        knobs.parking(false);
        boolean supply = look("supply", EMPTIES, person, wrong);
        primary(person, wrong, observed);
        knobs.restore();
        person.stand(person.spot());
        person.air().stirred();
        if (supply) {
            person.air().supplyIsDrained();
        }
        String otherwise = String.join("; ", wrong);
        return observed.answer(step.check(), wrong.isEmpty(), noted, otherwise);
    }

    /** Opens a drain, looks, and shuts it; false if there is none. */
    private static boolean look(
            String reservoir, double seconds, Person person, List<String> wrong) {
        Optional<Sighting> seen = person.see(Verb.OPEN_DRAIN, reservoir);
        if (seen.isEmpty()) {
            return false;
        }
        Sighting.Drain drain = (Sighting.Drain) seen.get();
        person.pass(seconds);
        person.act(Verb.SHUT_DRAIN, reservoir);
        if (drain.water() || drain.oil()) {
            String what =
                    drain.water() && drain.oil() ? "water and oil" : drain.oil() ? "oil" : "water";
            wrong.add(what + " at the " + reservoir + " drain");
        }
        if (!drain.air()) {
            wrong.add("no air at the " + reservoir + " drain");
        }
        return true;
    }

    /** Drained, it takes no other circuit with it, and the spring brakes stay off. */
    private static void primary(Person person, List<String> wrong, Observed observed) {
        Needles before = person.cab().needles();
        boolean released = !person.cab().parked();
        look("primary", EMPTIES, person, wrong);
        person.pass(WATCHED);
        Needles after = person.cab().needles();
        if (before.secondary() - after.secondary() > KEEPS) {
            wrong.add("the secondary needle falls while the primary reservoir is drained");
        }
        List<WheelId> sprung = springs(person);
        if (released && !sprung.isEmpty() && after.secondary() >= HOLDS_OFF) {
            springs(sprung.get(0), person, observed);
        }
    }

    private static List<WheelId> springs(Person person) {
        int last = person.vehicle().powerUnit().axles().size();
        return new Rods(person).sprung().stream().filter(wheel -> wheel.axle() <= last).toList();
    }

    private static void springs(WheelId wheel, Person person, Observed observed) {
        Rods rods = new Rods(person);
        person.standAt(Station.at(wheel));
        person.pass(WATCHED);
        if (person.cab().parked() || rods.out(wheel) > Rods.BACK) {
            observed.abnormal(
                    Check.SPRING_BRAKE_FEED,
                    "with the primary reservoir empty the spring brakes come on");
            return;
        }
        if (person.tows()) {
            return;
        }
        person.cab().foot(60);
        person.pass(WATCHED);
        if (rods.out(wheel) < Rods.OUT) {
            observed.abnormal(
                    Check.EMERGENCY_CONTROL,
                    "with the primary reservoir empty the pedal does not let the spring brakes on");
        }
        person.cab().foot(0);
        person.pass(WATCHED);
    }
}
