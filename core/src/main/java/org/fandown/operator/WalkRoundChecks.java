package org.fandown.operator;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.evidence.PartReading;
import org.fandown.practice.Sighting;
import org.fandown.practice.Station;
import org.fandown.practice.Verb;
import org.fandown.procedure.CheckStep;
import org.fandown.vehicle.WheelId;

/** The walk-round: each part looked at, and parked rods compared. */
final class WalkRoundChecks {
    private static final double A_PART = 8;
    private static final double A_ROD = 4;

    private WalkRoundChecks() {}

    static void addTo(Map<Check, Performing> all) {
        all.put(Check.WALK_ROUND, WalkRoundChecks::walk);
    }

    private static Observed walk(CheckStep step, Person person) {
        Observed observed = new Observed();
        Set<Component> parts = EnumSet.copyOf(step.manner().parts());
        parts.addAll(
                List.of(
                        Component.AIR_LINES,
                        Component.BRAKE_CHAMBERS,
                        Component.TRAILER_CONNECTIONS));
        for (Component part : parts) {
            person.pass(A_PART);
            person.see(Verb.LOOK, part.id())
                    .ifPresent(seen -> note((Sighting.Part) seen, observed));
        }
        parkedRods(person, observed);
        person.stand(person.spot());
        return observed;
    }

    private static void note(Sighting.Part seen, Observed observed) {
        List<PartReading.Found> found = new ArrayList<>();
        for (String words : seen.found()) {
            boolean condition = words.indexOf(' ') < 0;
            found.add(
                    new PartReading.Found(
                            condition ? words : "not-in-order",
                            Optional.empty(),
                            condition ? "" : words));
            observed.abnormal(seen.part(), words);
            if (words.startsWith("type ")) {
                observed.abnormal(Check.CHAMBER_MATCH, words);
            }
        }
        observed.part(new PartReading(seen.part(), found));
    }

    /** Parked, the rods of all spring brakes come out about alike. */
    private static void parkedRods(Person person, Observed observed) {
        if (!person.cab().parked()) {
            return;
        }
        Rods rods = new Rods(person);
        for (WheelId wheel : rods.sprung()) {
            if (!rods.isReached(wheel) || isHeldOff(wheel, person)) {
                continue;
            }
            person.standAt(Station.at(wheel));
            person.pass(A_ROD);
            double out = rods.out(wheel);
            double mate = rods.out(wheel.opposite());
            if (out < Rods.ALIKE * mate || Math.max(out, mate) < Rods.OUT) {
                observed.abnormal(
                        Component.PARKING_BRAKE,
                        "parked, the rod at " + wheel + " comes out less than it should");
            }
        }
    }

    /** The trailer supply holds the springs of towed units off whatever the parking knob does. */
    private static boolean isHeldOff(WheelId wheel, Person person) {
        boolean towed = wheel.axle() > person.vehicle().powerUnit().axles().size();
        return towed && person.cab().trailerSupplyIn();
    }
}
