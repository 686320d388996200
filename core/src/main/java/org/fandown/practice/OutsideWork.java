package org.fandown.practice;

import static org.fandown.practice.Doing.DONE;

import java.util.Map;
import java.util.Optional;
import org.fandown.air.AirControls.Coupling;
import org.fandown.air.AirSetup;
import org.fandown.air.AirSetup.Defect;
import org.fandown.practice.PracticeEvent.Kind;
import org.fandown.units.Decimals;
import org.fandown.vehicle.WheelId;

/** What is done outside: chocks, drains and lines. */
final class OutsideWork {
    /** Pressure in a line that makes a parted hose whip, psi. */
    private static final double WHIPS = 20;

    private static final String UNIT = "unit";

    private final PracticeTruck truck;

    OutsideWork(PracticeTruck truck) {
        this.truck = truck;
    }

    void addTo(Map<Verb, Doing.Deed> deeds) {
        deeds.put(Verb.CHOCK, this::chock);
        deeds.put(Verb.UNCHOCK, this::unchock);
        deeds.put(Verb.OPEN_DRAIN, action -> drain(action, true));
        deeds.put(Verb.SHUT_DRAIN, action -> drain(action, false));
        deeds.put(Verb.COUPLE_LINES, action -> couple(action, Coupling.COUPLED));
        deeds.put(Verb.CROSS_LINES, action -> couple(action, Coupling.CROSSED));
        deeds.put(Verb.PART_LINES, action -> part(action, Coupling.OPEN));
        deeds.put(Verb.PART_SUPPLY_LINE, action -> part(action, Coupling.SUPPLY_OPEN));
        deeds.put(Verb.PART_CONTROL_LINE, action -> part(action, Coupling.CONTROL_OPEN));
    }

    private Optional<String> chock(OperatorAction action) {
        if (truck.motion.moves()) {
            truck.note(Kind.HAZARD, "somebody tries to chock a wheel that turns");
            return Optional.of("the vehicle moves");
        }
        truck.motion.chocked().add(WheelId.parse(action.value()));
        return DONE;
    }

    private Optional<String> unchock(OperatorAction action) {
        boolean gone = truck.motion.chocked().remove(WheelId.parse(action.value()));
        return gone ? DONE : Optional.of("no chock is there");
    }

    /** Returns the unit whose reservoir is named, 1 for all of the powered one. */
    static int unitOfReservoir(String name) {
        boolean towed = name.length() == UNIT.length() + 1 && name.startsWith(UNIT);
        return towed ? name.charAt(UNIT.length()) - '0' : 1;
    }

    /** Returns the name by which the air system knows a reservoir. */
    static String volume(String reservoir) {
        return reservoir.startsWith(UNIT) ? reservoir + ".reservoir" : reservoir;
    }

    private Optional<String> drain(OperatorAction action, boolean open) {
        String volume = volume(action.value());
        String name = "drain-" + volume;
        boolean there = truck.air().outlets().stream().anyMatch(o -> o.name().equals(name));
        if (!there) {
            return Optional.of("this vehicle has no such reservoir with a drain");
        }
        truck.hands.drain(volume, open);
        truck.control();
        if (open) {
            lookAtDrain(action.value(), volume);
        }
        return DONE;
    }

    private void lookAtDrain(String reservoir, String volume) {
        AirSetup setup = truck.setup();
        Double jam = setup.jams().get("drain-" + volume);
        boolean frozen = jam != null && jam == 0;
        boolean wet = setup.water().containsKey(volume);
        boolean oily = setup.has(Defect.OIL_CARRIED_OVER);
        String comes = wet && oily ? "water and oil" : wet ? "water" : oily ? "oil" : "";
        boolean air = truck.air().pressure(volume).inPsi() > 1;
        truck.show(new Sighting.Drain(reservoir, air && !frozen, wet && !frozen, oily && !frozen));
        String blows = air ? "air comes out" : "no air comes out, it is empty";
        String seen = comes.isEmpty() ? blows : comes + ", and then " + blows;
        truck.note(
                Kind.OBSERVED, "drain of " + volume + ": " + (frozen ? "nothing comes out" : seen));
    }

    private Optional<String> couple(OperatorAction action, Coupling how) {
        return truck.air().trailerKnobIn().isEmpty() ? noLines() : set(action, how);
    }

    private Optional<String> part(OperatorAction action, Coupling how) {
        if (truck.air().trailerKnobIn().isEmpty()) {
            return noLines();
        }
        int unit = Integer.parseInt(action.value());
        double psi = truck.air().find("supply-line-" + unit).map(p -> p.inPsi()).orElse(0.0);
        if (how != Coupling.CONTROL_OPEN && psi > WHIPS) {
            truck.note(
                    Kind.HAZARD,
                    "a supply line is taken apart with "
                            + Decimals.format(psi, 0)
                            + " psi in it: the hose whips");
        }
        return set(action, how);
    }

    private static Optional<String> noLines() {
        return Optional.of("this vehicle has no air lines to a towed unit");
    }

    private Optional<String> set(OperatorAction action, Coupling how) {
        truck.hands.couple(Integer.parseInt(action.value()), how);
        truck.control();
        return DONE;
    }
}
