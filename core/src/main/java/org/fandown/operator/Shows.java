package org.fandown.operator;

import org.fandown.procedure.Lines;
import org.fandown.procedure.WorkStep;

/** By what one sees from outside that a work is done, whoever did it. */
final class Shows {
    /** Nobody reads a needle finer, psi. */
    private static final int NEARLY = 1;

    private Shows() {}

    /**
     * Whether a work is done.
     *
     * @param step the work
     * @param person who looks
     * @param follower who saw what was done
     * @param since when the step became the next one, s
     */
    static boolean done(WorkStep step, Person person, Follower follower, double since) {
        Cab cab = person.cab();
        return switch (step.work()) {
            case CHOCK -> person.chocked();
            case UNCHOCK -> !person.chocked();
            case KEY_ON -> cab.keyOn();
            case START_ENGINE -> cab.engineRuns();
            case STOP_ENGINE -> !cab.engineRuns();
            case SET_PARKING -> cab.parked();
            case RELEASE_PARKING -> !cab.parked();
            case OPEN_TRAILER_SUPPLY ->
                    cab.trailerSupplyIn()
                            && (person.lines() != Lines.COUPLED || person.trailerCharged());
            case CLOSE_TRAILER_SUPPLY -> !cab.trailerSupplyIn();
            case PART_SERVICE_LINE -> parted(person, Lines.SERVICE_PARTED);
            case PART_SUPPLY_LINE -> parted(person, Lines.SUPPLY_PARTED);
            case PART_LINES -> person.lines() == Lines.BOTH_PARTED;
            case COUPLE_LINES -> person.lines() == Lines.COUPLED;
            case DRAIN_SUPPLY -> person.supplyDrained() && follower.drainIsShut();
            case PUMP_UP ->
                    step.amount() >= person.durations().cutOut()
                            ? person.air().resting()
                            : cab.needles().lower() >= step.amount() - NEARLY;
            case FAN_DOWN -> cab.needles().higher() <= step.amount() + NEARLY;
            case WAIT -> person.time() - since >= step.amount();
        };
    }

    private static boolean parted(Person person, int line) {
        return (person.lines() & line) != 0;
    }
}
