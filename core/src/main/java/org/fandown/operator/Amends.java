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
    private static final int MOST_PASSES = 8;
    private static final int SPARE = 8;

    private final Person person;
    private final Works works;

    Amends(Person person, Works works) {
        this.person = person;
        this.works = works;
    }

    /** Makes the needs hold; returns the one that cannot be made to, empty if all hold. */
    Optional<String> ready(Step step, Spot spot) {
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
            if (need.aspect() == Aspect.PRESSURE && !holds(need)) {
                return Optional.of(need);
            }
        }
        for (Need need : needs) {
            if (need.aspect() != Aspect.REST && !holds(need)) {
                return Optional.of(need);
            }
        }
        return needs.stream().filter(need -> !holds(need)).findFirst();
    }

    private boolean holds(Need need) {
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
            case REST -> !is(need, 1) || person.air().rested() >= settling() - 0.5;
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
        return now.lower() >= need.least() && now.higher() <= need.most();
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
            case PARKING -> work(need.least() == 1 ? Work.RELEASE_PARKING : Work.SET_PARKING);
            case TRAILER_SUPPLY, TRAILER_AIR ->
                    work(need.least() == 1 ? Work.OPEN_TRAILER_SUPPLY : Work.CLOSE_TRAILER_SUPPLY);
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
        int goal = Math.min(need.least() + spare, Math.max(need.most() - 1, need.least()));
        return pumpFor(goal);
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
        return person.air().pumpDownUntilClimbs().climbs()
                ? Optional.empty()
                : Optional.of("the compressor does not cut in");
    }

    private Optional<String> rest() {
        if (person.cab().engineRuns()) {
            toCab();
            person.cab().stop();
        }
        person.pass(settling() - person.air().rested());
        return Optional.empty();
    }

    private void toCab() {
        back(Spot.CAB);
    }
}
