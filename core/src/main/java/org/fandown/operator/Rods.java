package org.fandown.operator;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.practice.Sighting;
import org.fandown.practice.Verb;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.Axle;
import org.fandown.vehicle.BrakeKind;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/**
 * Push rods as a person beside the wheel sees them. Those of disc brakes cannot be reached by a
 * rule; that they move is seen at the pads.
 */
final class Rods {
    /** A rod that comes out less does not bring the linings to the drum, in. */
    static final double OUT = 0.4;

    /** A rod that stands out no further is back, as far as a rule tells, in. */
    static final double BACK = 0.125;

    /** A rod that comes out less than this share of another one lags behind it. */
    static final double ALIKE = 0.7;

    private final Person person;

    Rods(Person person) {
        this.person = person;
    }

    /** Wheels with a push rod, of the powered unit or of all behind it. */
    List<WheelId> of(boolean powered) {
        Vehicle vehicle = person.vehicle();
        int last = vehicle.powerUnit().axles().size();
        return vehicle.wheelsWithPushRod().stream()
                .filter(wheel -> (wheel.axle() <= last) == powered)
                .toList();
    }

    /**
     * Wheels behind the powered unit whose brakes come on without supply: those with spring brakes,
     * and all of a unit without any.
     */
    List<WheelId> onWithoutSupply() {
        Vehicle vehicle = person.vehicle();
        List<WheelId> on = new ArrayList<>();
        for (WheelId wheel : of(false)) {
            boolean springs =
                    vehicle.unitOf(wheel.axle()).axles().stream().anyMatch(Axle::hasSpringBrake);
            if (!springs || vehicle.wheel(wheel).springBrake()) {
                on.add(wheel);
            }
        }
        return on;
    }

    /** Wheels with a spring brake. */
    List<WheelId> sprung() {
        return person.vehicle().wheelsWithPushRod().stream()
                .filter(wheel -> person.vehicle().wheel(wheel).springBrake())
                .toList();
    }

    /** Whether a rod can be reached by a rule. */
    boolean isReached(WheelId wheel) {
        return person.vehicle().wheel(wheel).brake() == BrakeKind.DRUM;
    }

    /** How far a rod is out, empty if that cannot be measured. */
    Optional<Quantity> measure(WheelId wheel) {
        return person.see(Verb.MEASURE, wheel.toString())
                .filter(Sighting.Stroke.class::isInstance)
                .map(seen -> ((Sighting.Stroke) seen).length());
    }

    /** How far a rod comes out by a bar, empty if that cannot be measured. */
    Optional<Quantity> pry(WheelId wheel) {
        return person.see(Verb.PRY, wheel.toString())
                .filter(Sighting.FreeStroke.class::isInstance)
                .map(seen -> ((Sighting.FreeStroke) seen).length());
    }

    /** How far a rod is out, in; 0 if there is none. */
    double out(WheelId wheel) {
        return measure(wheel).map(length -> length.valueIn(Unit.INCH)).orElse(0.0);
    }

    /** The first of these wheels whose brake is not on, empty if all are. */
    Optional<WheelId> notOn(List<WheelId> wheels) {
        return wheels.stream().filter(wheel -> out(wheel) < OUT).findFirst();
    }

    /** The first of these wheels whose brake is not off, empty if all are. */
    Optional<WheelId> notOff(List<WheelId> wheels) {
        return wheels.stream().filter(wheel -> out(wheel) > BACK).findFirst();
    }
}
