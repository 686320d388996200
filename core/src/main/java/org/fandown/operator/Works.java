package org.fandown.operator;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.fandown.procedure.Lines;
import org.fandown.procedure.Work;

/** Does the work between checks. */
final class Works {
    /** With so much air a knob stays in, psi. */
    private static final int HOLDS = 75;

    private final Person person;

    Works(Person person) {
        this.person = person;
    }

    /**
     * Does a work where the person stands.
     *
     * @param work what
     * @param amount how far (psi) or how long (s)
     * @return what stood in the way, empty if it is done
     */
    Optional<String> doIt(Work work, int amount) {
        Cab cab = person.cab();
        return switch (work) {
            case CHOCK -> person.chock();
            case UNCHOCK -> done(person::unchock);
            case KEY_ON -> done(() -> cab.key(true));
            case START_ENGINE -> needs(cab.start(), "the engine does not start");
            case STOP_ENGINE -> done(cab::stop);
            case SET_PARKING -> needs(cab.parking(true), "the parking knob does not come out");
            case RELEASE_PARKING -> needs(release(), "the parking knob does not stay in");
            case OPEN_TRAILER_SUPPLY -> needs(charge(), "the trailer supply knob does not stay in");
            case CLOSE_TRAILER_SUPPLY ->
                    needs(cab.trailerSupply(false), "the trailer supply knob does not come out");
            case PART_SERVICE_LINE, PART_SUPPLY_LINE, PART_LINES -> part(work);
            case COUPLE_LINES -> done(() -> person.lines(Lines.COUPLED));
            case DRAIN_SUPPLY -> done(() -> person.air().drainSupply());
            case PUMP_UP -> pumpUp(amount);
            case FAN_DOWN -> fanDown(amount);
            case WAIT -> done(() -> person.pass(amount));
        };
    }

    private static Optional<String> done(Runnable work) {
        work.run();
        return Optional.empty();
    }

    private static Optional<String> needs(boolean done, String otherwise) {
        return done ? Optional.empty() : Optional.of(otherwise);
    }

    private boolean release() {
        return stays(() -> person.cab().parking(false));
    }

    private boolean charge() {
        return person.lines() == Lines.COUPLED
                ? stays(() -> person.air().chargeTrailers())
                : person.cab().trailerSupply(true);
    }

    /** Pushes a knob, and once more with more air if it does not stay and the engine runs. */
    private boolean stays(BooleanSupplier push) {
        if (push.getAsBoolean()) {
            return true;
        }
        Cab cab = person.cab();
        boolean more = cab.engineRuns() && cab.needles().lower() < HOLDS;
        return more && person.air().pumpTo(HOLDS, Air.FAST_IDLE) && push.getAsBoolean();
    }

    private Optional<String> part(Work work) {
        int more =
                switch (work) {
                    case PART_SERVICE_LINE -> Lines.SERVICE_PARTED;
                    case PART_SUPPLY_LINE -> Lines.SUPPLY_PARTED;
                    default -> Lines.BOTH_PARTED;
                };
        person.lines(person.lines() | more);
        return Optional.empty();
    }

    private Optional<String> pumpUp(int psi) {
        double begin = person.time();
        if (psi >= person.durations().cutOut()) {
            Air.Climb climb = person.air().pumpToCutOut(Air.FAST_IDLE);
            boolean full = climb.purged() || climb.at().higher() > person.durations().cutIn();
            return full ? Optional.empty() : Optional.of(stopped(psi, begin));
        }
        return person.air().pumpTo(psi, Air.FAST_IDLE)
                ? Optional.empty()
                : Optional.of(stopped(psi, begin));
    }

    private String stopped(int psi, double begin) {
        return psi
                + " psi was not reached: the needles stand at "
                + person.cab().needles().words()
                + " after "
                + (int) (person.time() - begin)
                + " s";
    }

    private Optional<String> fanDown(int psi) {
        return person.air().fanDown(psi)
                ? Optional.empty()
                : Optional.of(
                        "the needles do not fall to "
                                + psi
                                + " psi: they stand at "
                                + person.cab().needles().words());
    }
}
