package org.fandown.operator;

import java.util.Optional;
import org.fandown.practice.OperatorAction;
import org.fandown.practice.Verb;
import org.fandown.procedure.Lines;
import org.fandown.units.Num;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * Looks at what somebody else does at the truck, so that a person could take over at any moment: by
 * their deeds, and by needles, knobs and ears.
 */
final class Follower {
    /** The needles moved so far, both together: the air was stirred, psi. */
    private static final int STIRS = 2;

    /** With the trailer supply open for so long its reservoirs have filled, s. */
    private static final double CHARGES = 20;

    private static final String SUPPLY = "supply";

    private final Person person;
    private Needles settled;
    private Optional<Double> supplyOpen = Optional.empty();
    private boolean drainOpen;

    Follower(Person person) {
        this.person = person;
        settled = person.cab().needles();
    }

    /** Whether the drain of the supply reservoir is shut, as far as this was seen. */
    boolean drainIsShut() {
        return !drainOpen;
    }

    /** Sees something done that was not refused. */
    void saw(OperatorAction action) {
        String value = action.value();
        Cab cab = person.cab();
        switch (action.verb()) {
            case FOOT_BRAKE -> cab.footIs(percent(value));
            case GEAR -> cab.gearIs(value);
            case PARKING_VALVE -> cab.handBrakeIs(value.equals("pull"));
            case COUPLE_LINES -> person.linesAre(Lines.COUPLED);
            case PART_LINES -> person.linesAre(Lines.BOTH_PARTED);
            case PART_SUPPLY_LINE -> person.linesAre(person.lines() | Lines.SUPPLY_PARTED);
            case PART_CONTROL_LINE -> person.linesAre(person.lines() | Lines.SERVICE_PARTED);
            case OPEN_DRAIN, SHUT_DRAIN -> drain(action);
            default -> {}
        }
        person.takeOver();
        if (person.spot() != org.fandown.procedure.Spot.CAB && !person.hasHelper()) {
            cab.left();
        }
    }

    private void drain(OperatorAction action) {
        if (!action.value().equals(SUPPLY)) {
            return;
        }
        drainOpen = action.verb() == Verb.OPEN_DRAIN;
        if (drainOpen) {
            person.air().drainIsOpen();
        } else {
            person.air().drainIsShut();
        }
    }

    private static int percent(String value) {
        return (int) Num.round(Quantity.parse(value).valueIn(Unit.PERCENT));
    }

    /** Looks and listens while time passes. */
    void look() {
        if (person.purging()) {
            person.air().heardPurge();
        }
        Needles now = person.cab().needles();
        if (Math.abs(now.sum() - settled.sum()) >= STIRS) {
            person.air().stirred();
            if (now.sum() > settled.sum() && person.cab().engineRuns()) {
                person.air().climbed();
            }
            settled = now;
        }
        trailer();
    }

    private void trailer() {
        if (!person.tows() || !person.cab().trailerSupplyIn()) {
            supplyOpen = Optional.empty();
        } else if (supplyOpen.isEmpty()) {
            supplyOpen = Optional.of(person.time());
        } else if (person.time() - supplyOpen.get() >= CHARGES) {
            person.trailerIsCharged();
        }
    }
}
