package org.fandown.operator;

import java.util.Map;
import java.util.function.BooleanSupplier;
import org.fandown.check.Check;
import org.fandown.procedure.CheckStep;

/** What comes on or pops out while the pedal is pumped down: the warning and both knobs. */
final class PumpDownChecks {
    /** Nobody pumps further down to wait for a warning, psi: the knobs pop out. */
    private static final int WARNING_FLOOR = 42;

    /** Nobody pumps further down to wait for a knob, psi. */
    private static final int KNOB_FLOOR = 12;

    private PumpDownChecks() {}

    static void addTo(Map<Check, Performing> all) {
        all.put(Check.LOW_AIR_WARNING, PumpDownChecks::warning);
        all.put(
                Check.PARKING_VALVE_CLOSING,
                (step, person) -> knob(step, person, () -> person.cab().parked()));
        all.put(
                Check.TRAILER_SUPPLY_CLOSING,
                (step, person) -> knob(step, person, () -> !person.cab().trailerSupplyIn()));
    }

    private static Observed warning(CheckStep step, Person person) {
        Observed observed = new Observed();
        Cab cab = person.cab();
        Needles start = cab.needles();
        if (cab.warns()) {
            return observed.abnormal(Check.LOW_AIR_WARNING, "on at " + start.words())
                    .notDone(Check.LOW_AIR_WARNING, "the warning is on at " + start.words());
        }
        var noted = Conditions.now(person).from(start).noted();
        boolean came = person.air().pumpDown(cab::warns, WARNING_FLOOR);
        Needles at = cab.needles();
        observed.needles(
                Check.LOW_AIR_WARNING, at, noted, came ? "" : "it has not come on down to this");
        boolean usual = at.lower() >= Usual.WARNING_LEAST && at.lower() <= Usual.WARNING_MOST;
        if (!came || !usual) {
            String words = came ? "comes on at " : "has not come on down to ";
            observed.abnormal(Check.LOW_AIR_WARNING, words + at.words());
        }
        if (step.checks().contains(Check.LOW_AIR_WARNING_WORKS)) {
            works(came, person, observed);
        }
        return observed;
    }

    /** Lamp and buzzer come on together, or a moment apart. */
    private static void works(boolean came, Person person, Observed observed) {
        Cab cab = person.cab();
        cab.foot(Cab.FLOOR);
        boolean both = came && person.await(() -> cab.lowAirLamp() && cab.buzzer(), 1);
        cab.foot(0);
        person.pass(1);
        var noted = Conditions.now(person).noted();
        String missing = cab.lowAirLamp() ? "no buzzer" : cab.buzzer() ? "no lamp" : "no warning";
        observed.answer(Check.LOW_AIR_WARNING_WORKS, both, noted, missing);
    }

    private static Observed knob(CheckStep step, Person person, BooleanSupplier out) {
        Observed observed = new Observed();
        Check check = step.check();
        Needles start = person.cab().needles();
        var noted = Conditions.now(person).from(start).noted();
        boolean popped = person.air().pumpDown(out, KNOB_FLOOR);
        Needles at = person.cab().needles();
        observed.needles(check, at, noted, popped ? "" : "it has not come out down to this");
        boolean usual = at.higher() >= Usual.POPS_LEAST && at.higher() <= Usual.POPS_MOST;
        if (!popped || !usual) {
            String words = popped ? "comes out at " : "has not come out down to ";
            observed.abnormal(check, words + at.words());
        }
        return observed;
    }
}
