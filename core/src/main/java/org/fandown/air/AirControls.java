package org.fandown.air;

import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.fandown.units.RotationalSpeed;

/**
 * What a person does to an air system at a moment. Immutable; the {@code with} methods change one
 * thing.
 *
 * @param engine speed of the engine, 0 when it stands
 * @param foot travel of the brake pedal, 0 to 1; at 1 it is on the floor
 * @param hand travel of the trailer hand valve, 0 to 1
 * @param parking what is done to the parking knob
 * @param trailer what is done to the trailer supply knob
 * @param drains names of the reservoirs whose drain is held open
 * @param couplings the lines behind a unit that are not coupled as they should be, by the number of
 *     the unit, the powered one being 1
 */
public record AirControls(
        RotationalSpeed engine,
        double foot,
        double hand,
        Knob parking,
        Knob trailer,
        Set<String> drains,
        Map<Integer, Coupling> couplings) {
    /** What is done to a knob. */
    public enum Knob {
        /** Nobody touches it; it may pop out. */
        LEFT_ALONE,
        /** It is pushed in and held there. */
        PUSHED,
        /** It is pulled out. */
        PULLED
    }

    /** How the lines between two units are joined. */
    public enum Coupling {
        /** Supply to supply, control to control. */
        COUPLED,
        /** Both lines apart, all ends open. */
        OPEN,
        /** Supply line apart, both its ends open. */
        SUPPLY_OPEN,
        /** Control line apart, both its ends open. */
        CONTROL_OPEN,
        /** Both lines apart; the ends of the unit in front shut, the others open. */
        SHUT,
        /** Supply to control and control to supply. */
        CROSSED
    }

    /** Nobody does anything and the engine stands. */
    public static final AirControls NONE =
            new AirControls(
                    RotationalSpeed.ofRpm(0),
                    0,
                    0,
                    Knob.LEFT_ALONE,
                    Knob.LEFT_ALONE,
                    Set.of(),
                    Map.of());

    /**
     * Copies the collections and checks the ranges.
     *
     * @throws IllegalArgumentException if a travel is not in 0 to 1
     */
    public AirControls {
        if (!(foot >= 0 && foot <= 1) || !(hand >= 0 && hand <= 1)) {
            throw new IllegalArgumentException("The travel of a valve must be 0 to 1.");
        }
        drains = Collections.unmodifiableSet(new TreeSet<>(drains));
        couplings = Collections.unmodifiableMap(new TreeMap<>(couplings));
    }

    /** Returns the same with the engine at a speed. */
    public AirControls withEngine(RotationalSpeed speed) {
        return new AirControls(speed, foot, hand, parking, trailer, drains, couplings);
    }

    /** Returns the same with the pedal at a travel of 0 to 1. */
    public AirControls withFoot(double travel) {
        return new AirControls(engine, travel, hand, parking, trailer, drains, couplings);
    }

    /** Returns the same with the hand valve at a travel of 0 to 1. */
    public AirControls withHand(double travel) {
        return new AirControls(engine, foot, travel, parking, trailer, drains, couplings);
    }

    /** Returns the same with something done to the parking knob. */
    public AirControls withParking(Knob knob) {
        return new AirControls(engine, foot, hand, knob, trailer, drains, couplings);
    }

    /** Returns the same with something done to the trailer supply knob. */
    public AirControls withTrailer(Knob knob) {
        return new AirControls(engine, foot, hand, parking, knob, drains, couplings);
    }

    /** Returns the same with the drains of these reservoirs open and all others shut. */
    public AirControls withDrains(Set<String> reservoirs) {
        return new AirControls(engine, foot, hand, parking, trailer, reservoirs, couplings);
    }

    /** Returns the same with the lines behind a unit joined in another way. */
    public AirControls withCoupling(int unit, Coupling how) {
        Map<Integer, Coupling> changed = new TreeMap<>(couplings);
        changed.put(unit, how);
        return new AirControls(engine, foot, hand, parking, trailer, drains, changed);
    }
}
