package org.fandown.operator;

import java.util.Map;
import java.util.function.BooleanSupplier;
import org.fandown.check.Check;
import org.fandown.check.Circumstance;
import org.fandown.evidence.Circumstances;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Lines;

/** What comes on or pops out while the pedal is pumped down: the warning and both knobs. */
final class PumpDownChecks {
    /** Nobody pumps further down to wait for a warning, psi: the knobs pop out. */
    private static final int WARNING_FLOOR = 42;

    /** Nobody pumps further down to wait for a knob, psi. */
    private static final int KNOB_FLOOR = 12;

    /** An open line has let the air down after, s. */
    private static final double ESCAPES = 120;

    private PumpDownChecks() {}

    static void addTo(Map<Check, Performing> all) {
        all.put(Check.LOW_AIR_WARNING, PumpDownChecks::warning);
        all.put(
                Check.PARKING_VALVE_CLOSING,
                (step, person) -> knob(step, person, () -> person.cab().parked()));
        all.put(Check.TRAILER_SUPPLY_CLOSING, PumpDownChecks::trailerKnob);
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
        observed.needle(
                Check.LOW_AIR_WARNING,
                at.lower(),
                noted,
                came ? "" : "it has not come on down to this");
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

    /** With the lines parted the knob is pushed in and pops out as the air escapes. */
    private static Observed trailerKnob(CheckStep step, Person person) {
        Cab cab = person.cab();
        if (person.lines() == Lines.COUPLED) {
            return knob(step, person, () -> !cab.trailerSupplyIn());
        }
        Needles start = cab.needles();
        var noted =
                Conditions.now(person)
                        .from(start)
                        .state(Circumstance.TRAILER_SUPPLY, "open")
                        .noted();
        cab.trailerSupply(true);
        boolean popped = person.await(() -> !cab.trailerSupplyIn(), ESCAPES);
        int psi = cab.needles().higher();
        if (!popped) {
            cab.trailerSupply(false);
        }
        return noted(step.check(), popped, psi, noted);
    }

    private static Observed knob(CheckStep step, Person person, BooleanSupplier out) {
        Needles start = person.cab().needles();
        var noted = Conditions.now(person).from(start).noted();
        boolean popped = person.air().pumpDown(out, KNOB_FLOOR);
        int psi = person.cab().needles().higher();
        Observed observed = noted(step.check(), popped, psi, noted);
        return popped && psi > Usual.POPS_MOST
                ? observed.abnormal(step.check(), "comes out at " + psi + " psi")
                : observed;
    }

    private static Observed noted(Check check, boolean popped, int psi, Circumstances noted) {
        Observed observed = new Observed();
        observed.needle(check, psi, noted, popped ? "" : "it has not come out down to this");
        if (!popped || psi < Usual.POPS_LEAST) {
            String words = popped ? "comes out at " : "has not come out down to ";
            observed.abnormal(check, words + psi + " psi");
        }
        return observed;
    }
}
