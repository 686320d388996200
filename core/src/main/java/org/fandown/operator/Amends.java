package org.fandown.operator;

import java.util.List;
import java.util.Optional;
import org.fandown.procedure.Aspect;
import org.fandown.procedure.Need;
import org.fandown.procedure.Spot;
import org.fandown.procedure.Step;
import org.fandown.procedure.Work;

/**
 * Makes the needs of a step hold where the vehicle stands otherwise than the plan expects: its
 * pressures are those of a model.
 */
final class Amends {
    private static final int MOST_PASSES = 12;
    private static final int SPARE = 8;
    private static final int LEAKS = 4;
    private static final int ABOVE_CUT_IN = 3;

    /** With so much air a knob stays in, if ever, psi. */
    private static final int KEEPS_KNOBS_IN = 90;

    private final Person person;
    private final Works works;
    private boolean restIsLost;
    private boolean triedMoreAir;

    Amends(Person person, Works works) {
        this.person = person;
        this.works = works;
    }

    /** Makes the needs hold; returns the one that cannot be made to, empty if all hold. */
    Optional<String> ready(Step step, Spot spot) {
        restIsLost = false;
        triedMoreAir = false;
        Optional<String> trouble = Optional.empty();
        for (int i = 0; i < MOST_PASSES && trouble.isEmpty(); i++) {
            Optional<Need> open = open(step.needs());
            if (open.isEmpty()) {
                back(spot);
                return Optional.empty();
            }
            trouble = mend(open.get(), needsEngineOff(step.needs()));
        }
        back(spot);
        return trouble.or(() -> open(step.needs()).map(need -> need.asked() + " is needed"));
    }

    private void back(Spot spot) {
        if (person.spot() != spot) {
            person.walk(spot);
        }
    }

    private Optional<Need> open(List<Need> needs) {
        // The pressure first: making it needs the engine, which other needs may want off after.
        for (Need need : needs) {
            if (need.aspect() == Aspect.PRESSURE && !holds(need) && !isKept(needs, need)) {
                return Optional.of(need);
            }
        }
        for (Need need : needs) {
            boolean first = need.aspect() != Aspect.REST && need.aspect() != Aspect.PRESSURE;
            if (first && !holds(need)) {
                return Optional.of(need);
            }
        }
        return needs.stream().filter(n -> n.aspect() == Aspect.REST && !holds(n)).findFirst();
    }

    /**
     * Whether a pressure was there when the supply reservoir was drained: what check valves keep of
     * it is not made up for.
     */
    private boolean isKept(List<Need> needs, Need pressure) {
        boolean drained =
                person.supplyDrained()
                        && needs.stream()
                                .anyMatch(n -> n.aspect() == Aspect.SUPPLY_RESERVOIR && is(n, 0));
        return drained && person.air().beforeDrain().lower() >= pressure.least();
    }

    /** Whether a need holds now, as far as can be told from outside. */
    boolean holds(Need need) {
        return switch (need.aspect()) {
            case PRESSURE -> isPressed(need);
            case SECURED -> !is(need, 1) || person.chocked() || person.cab().parked();
            case KEY -> is(need, person.cab().keyOn());
            case ENGINE -> is(need, person.cab().engineRuns());
            case PARKING -> is(need, !person.cab().parked());
            case TRAILER_SUPPLY -> is(need, person.cab().trailerSupplyIn());
            case LINES -> is(need, person.lines());
            case CHOCKS -> is(need, person.chocked());
            case TRAILER_AIR -> is(need, person.trailerCharged());
            case COMPRESSOR -> is(need, !person.air().resting());
            case REST -> !is(need, 1) || restIsLost || person.air().rested() >= settling() - 0.5;
            case SUPPLY_RESERVOIR -> is(need, !person.supplyDrained());
        };
    }

    private static boolean is(Need need, boolean state) {
        return is(need, state ? 1 : 0);
    }

    private static boolean is(Need need, int value) {
        return need.least() <= value && value <= need.most();
    }

    private boolean isPressed(Need need) {
        Needles now = person.cab().needles();
        return now.lower() >= least(need) && now.higher() <= need.most();
    }

    /** A governor may cut in a little above its figure: what begins at cut-in begins above that. */
    private int least(Need need) {
        boolean atCutIn = need.least() == person.durations().cutIn();
        return need.least() + (atCutIn ? ABOVE_CUT_IN : 0);
    }

    private double settling() {
        return person.durations().settling() / 10.0;
    }

    private boolean needsEngineOff(List<Need> needs) {
        return needs.stream()
                .anyMatch(n -> n.aspect() == Aspect.ENGINE && n.least() == 0 && n.most() == 0);
    }

    /** Does what makes one need hold; returns what stands in the way. */
    private Optional<String> mend(Need need, boolean engineOff) {
        return switch (need.aspect()) {
            case PRESSURE -> pressure(need, engineOff);
            case KEY -> work(need.least() == 1 ? Work.KEY_ON : Work.STOP_ENGINE);
            case ENGINE -> work(need.least() == 1 ? Work.START_ENGINE : Work.STOP_ENGINE);
            case PARKING -> knob(need.least() == 1 ? Work.RELEASE_PARKING : Work.SET_PARKING);
            case TRAILER_SUPPLY, TRAILER_AIR ->
                    knob(need.least() == 1 ? Work.OPEN_TRAILER_SUPPLY : Work.CLOSE_TRAILER_SUPPLY);
            case CHOCKS -> work(need.least() == 1 ? Work.CHOCK : Work.UNCHOCK);
            case SECURED -> work(Work.SET_PARKING);
            case LINES -> Optional.of(need.asked() + " are needed");
            case COMPRESSOR -> compressor(need.least() == 1);
            case REST -> rest();
            case SUPPLY_RESERVOIR ->
                    need.least() == 1 ? pumpFor(person.cab().needles().lower() + SPARE) : drain();
        };
    }

    private Optional<String> work(Work work) {
        if (person.spot() != work.spot()) {
            person.walk(work.spot());
        }
        return works.doIt(work, 0);
    }

    /** A knob that does not stay in is tried once more with more air. */
    private Optional<String> knob(Work work) {
        Optional<String> trouble = work(work);
        boolean push = work == Work.RELEASE_PARKING || work == Work.OPEN_TRAILER_SUPPLY;
        if (trouble.isEmpty() || !push || triedMoreAir) {
            return trouble;
        }
        triedMoreAir = true;
        return pumpFor(KEEPS_KNOBS_IN).isPresent() ? trouble : Optional.empty();
    }

    private Optional<String> drain() {
        return work(Work.DRAIN_SUPPLY);
    }

    private Optional<String> pressure(Need need, boolean engineOff) {
        toCab();
        if (person.cab().needles().higher() > need.most()) {
            return works.doIt(Work.FAN_DOWN, need.most());
        }
        // What an engine at rest no longer makes good is pumped in reserve.
        int spare = engineOff ? SPARE : 0;
        int goal = Math.min(least(need) + spare, Math.max(need.most() - 1, need.least()));
        Optional<String> trouble = pumpFor(goal);
        return person.cab().needles().lower() >= least(need) ? Optional.empty() : trouble;
    }

    private Optional<String> pumpFor(int psi) {
        toCab();
        if (!person.cab().engineRuns() && !person.cab().start()) {
            return Optional.of("the engine does not start");
        }
        return works.doIt(Work.PUMP_UP, psi);
    }

    private Optional<String> compressor(boolean pumps) {
        toCab();
        if (!pumps) {
            return works.doIt(Work.PUMP_UP, person.durations().cutOut());
        }
        if (!person.cab().start()) {
            return Optional.of("the engine does not start");
        }
        return person.air().pumpDownUntilClimbs().climbs()
                ? Optional.empty()
                : Optional.of("the compressor does not cut in");
    }

    private Optional<String> rest() {
        if (person.cab().engineRuns()) {
            toCab();
            person.cab().stop();
        }
        int before = person.cab().needles().lower();
        person.pass(settling() - person.air().rested());
        // A needle that falls so far meanwhile does so by a leak, and would never come to rest.
        restIsLost = before - person.cab().needles().lower() >= LEAKS;
        return Optional.empty();
    }

    private void toCab() {
        back(Spot.CAB);
    }
}
