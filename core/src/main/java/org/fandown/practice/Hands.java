package org.fandown.practice;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.fandown.air.AirControls;
import org.fandown.air.AirControls.Coupling;
import org.fandown.air.AirControls.Knob;
import org.fandown.units.Fingerprint;
import org.fandown.units.RotationalSpeed;

/** What hands and feet do to the air system; a hand leaves a knob again after a moment. */
final class Hands {
    private double foot;
    private double hand;
    private Knob parking = Knob.LEFT_ALONE;
    private Knob trailer = Knob.LEFT_ALONE;
    private double parkingHeld;
    private double trailerHeld;
    private final Set<String> drains = new TreeSet<>();
    private final Map<Integer, Coupling> couplings = new TreeMap<>();

    AirControls controls(double rpm) {
        return new AirControls(
                RotationalSpeed.ofRpm(rpm), foot, hand, parking, trailer, drains, couplings);
    }

    double foot() {
        return foot;
    }

    void foot(double travel) {
        foot = travel;
    }

    double hand() {
        return hand;
    }

    void hand(double travel) {
        hand = travel;
    }

    void parking(Knob knob) {
        parking = knob;
        parkingHeld = PracticeDefault.KNOB_TIME.number();
    }

    void trailer(Knob knob) {
        trailer = knob;
        trailerHeld = PracticeDefault.KNOB_TIME.number();
    }

    void drain(String reservoir, boolean open) {
        if (open) {
            drains.add(reservoir);
        } else {
            drains.remove(reservoir);
        }
    }

    Coupling coupling(int unit) {
        return couplings.getOrDefault(unit, Coupling.COUPLED);
    }

    void couple(int unit, Coupling how) {
        couplings.put(unit, how);
    }

    /**
     * Lets time pass.
     *
     * @return whether a hand left a knob
     */
    boolean advance(double seconds) {
        boolean left = false;
        if (parking != Knob.LEFT_ALONE) {
            parkingHeld -= seconds;
            if (parkingHeld <= 0) {
                parking = Knob.LEFT_ALONE;
                left = true;
            }
        }
        if (trailer != Knob.LEFT_ALONE) {
            trailerHeld -= seconds;
            if (trailerHeld <= 0) {
                trailer = Knob.LEFT_ALONE;
                left = true;
            }
        }
        return left;
    }

    void addTo(Fingerprint print) {
        print.add(foot);
        print.add(hand);
        print.add(parking.name());
        print.add(trailer.name());
        print.add(parkingHeld);
        print.add(trailerHeld);
        print.add((long) drains.size());
        couplings.forEach((unit, how) -> print.add(how.name()));
    }
}
