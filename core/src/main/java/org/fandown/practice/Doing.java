package org.fandown.practice;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.fandown.practice.PracticeEvent.Kind;
import org.fandown.vehicle.WheelId;

/** Lets the person do one thing after the other: goes where it is done, and does it. */
final class Doing {
    /** One way of doing: returns the reason why it cannot be done, empty if it was. */
    @FunctionalInterface
    interface Deed extends Function<OperatorAction, Optional<String>> {}

    /** Nothing stands against it. */
    static final Optional<String> DONE = Optional.empty();

    private final PracticeTruck truck;
    private final Map<Verb, Deed> deeds = new EnumMap<>(Verb.class);

    Doing(PracticeTruck truck) {
        this.truck = truck;
        new CabWork(truck).addTo(deeds);
        new OutsideWork(truck).addTo(deeds);
        new Observing(truck).addTo(deeds);
        deeds.put(Verb.STAND, action -> stand(Station.parse(action.value())));
        deeds.put(Verb.HELPER, this::helper);
    }

    Optional<String> doIt(OperatorAction action) {
        if (!action.verb().argument().isOn(truck.vehicle(), action.value())) {
            return Optional.of("'" + truck.vehicle().name() + "' has no such place");
        }
        Deed deed = deeds.get(action.verb());
        if (deed == null) {
            throw new IllegalStateException("Nothing is known of '" + action.verb().id() + "'.");
        }
        go(action);
        Optional<String> refusal = deed.apply(action);
        if (refusal.isEmpty() && !Observing.notesItself(action.verb())) {
            truck.note(Kind.ACTION, action.toString());
        }
        return refusal;
    }

    /** Goes to where the thing is done. */
    private void go(OperatorAction action) {
        switch (action.verb().reach()) {
            case CAB -> {
                if (truck.person.cabIsEmpty()) {
                    stand(Station.CAB);
                }
            }
            case OUTSIDE -> stand(place(action));
            case ANYWHERE -> {}
        }
    }

    private static Station place(OperatorAction action) {
        return switch (action.verb().argument()) {
            case WHEEL -> Station.at(WheelId.parse(action.value()));
            case COUPLING -> Station.coupling(Integer.parseInt(action.value()));
            default -> Station.reservoirs(OutsideWork.unitOfReservoir(action.value()));
        };
    }

    private Optional<String> stand(Station place) {
        if (truck.person.station().equals(place)) {
            return DONE;
        }
        boolean leaves = truck.person.inCab();
        truck.person.goTo(place);
        if (leaves && !truck.person.helper()) {
            leaveCab();
        }
        if (!truck.person.inCab() && truck.motion.moves()) {
            truck.note(Kind.HAZARD, "somebody walks up to a moving vehicle");
        }
        return DONE;
    }

    /** Feet leave the pedals; a hand valve stays where it is. */
    private void leaveCab() {
        if (truck.hands.foot() > 0) {
            truck.note(Kind.SIGN, "the brake pedal comes up, nobody is left on it");
        }
        truck.hands.foot(0);
        truck.drivetrain.throttle(0);
        truck.drivetrain.clutch(0);
        truck.control();
    }

    private Optional<String> helper(OperatorAction action) {
        boolean comes = action.is("cab");
        truck.person.helper(comes);
        if (!comes && !truck.person.inCab()) {
            leaveCab();
        }
        return DONE;
    }
}
