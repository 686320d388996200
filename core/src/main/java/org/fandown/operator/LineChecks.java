package org.fandown.operator;

import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.evidence.Circumstances;
import org.fandown.practice.Sighting;
import org.fandown.practice.Sound;
import org.fandown.practice.Station;
import org.fandown.practice.Verb;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Spot;

/** Lines to towed units taken apart: what still blows, and what the tractor keeps. */
final class LineChecks {
    /** A parted line without a leak behind it is silent after, s. */
    private static final double SILENT = 30;

    /** The protection shuts a parted line within, s; one that does not is shut by hand. */
    private static final double PROTECTS = 60;

    private LineChecks() {}

    static void addTo(Map<Check, Performing> all) {
        all.put(Check.SERVICE_LINE_TIGHT, LineChecks::serviceLine);
        all.put(Check.TRACTOR_PROTECTION_FITTED, LineChecks::serviceLine);
        all.put(Check.SUPPLY_LINE_TIGHT, LineChecks::supplyLine);
        all.put(Check.TRACTOR_PROTECTION, LineChecks::protection);
    }

    /** With the trailer supply shut the pedal sends nothing to the open service line. */
    private static Observed serviceLine(CheckStep step, Person person) {
        person.helper(true);
        Knobs knobs = Knobs.noted(person);
        knobs.shutSupply();
        Spot from = person.spot();
        person.walk(Spot.COUPLING);
        person.cab().foot(Cab.FLOOR);
        person.pass(3);
        Circumstances noted = Conditions.now(person).noted();
        boolean blows = blows(person);
        person.cab().foot(0);
        person.pass(2);
        knobs.restore();
        person.walk(from);
        Observed observed = new Observed();
        String otherwise = "with the trailer supply shut the pedal blows air out of the line";
        if (blows) {
            observed.abnormal(Check.TRACTOR_PROTECTION_FITTED, otherwise);
        }
        return observed.answer(step.check(), !blows, noted, otherwise);
    }

    private static boolean blows(Person person) {
        return person.sounds().stream().anyMatch(LineChecks::isAtLines);
    }

    private static boolean isAtLines(Sound sound) {
        return sound.from().spot() == Station.Spot.COUPLING;
    }

    private static Observed supplyLine(CheckStep step, Person person) {
        Circumstances noted = Conditions.now(person).noted();
        boolean silent = person.await(() -> !blows(person), SILENT);
        boolean kept = silent && keptItsAir(person);
        person.stand(person.spot());
        String otherwise =
                silent
                        ? "the trailer has lost its air through the parted line"
                        : "air goes on blowing from the parted line";
        return new Observed().answer(step.check(), kept, noted, otherwise);
    }

    /** Silence alone says little: an empty trailer loses nothing. */
    private static boolean keptItsAir(Person person) {
        Optional<Sighting> seen = person.see(Verb.OPEN_DRAIN, "unit2");
        person.pass(1);
        person.act(Verb.SHUT_DRAIN, "unit2");
        return seen.isEmpty() || ((Sighting.Drain) seen.get()).air();
    }

    /**
     * The knob is pushed in against the open line; it has to come out and keep the tractor's air.
     */
    private static Observed protection(CheckStep step, Person person) {
        Observed observed = new Observed();
        Cab cab = person.cab();
        Needles start = cab.needles();
        cab.trailerSupply(true);
        boolean shut = person.await(() -> !cab.trailerSupplyIn(), PROTECTS);
        if (!shut) {
            cab.trailerSupply(false);
        }
        person.pass(5);
        person.air().stirred();
        Needles at = cab.needles();
        String note = shut ? "" : "the knob did not come out by itself";
        observed.needles(step.check(), at, Conditions.now(person).from(start).noted(), note);
        if (!shut || at.lower() < Usual.POPS_LEAST) {
            observed.abnormal(
                    step.check(),
                    shut ? "the needles fell to " + at.words() : "the knob does not come out");
        }
        return observed;
    }
}
