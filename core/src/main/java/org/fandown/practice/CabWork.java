package org.fandown.practice;

import static org.fandown.practice.Doing.DONE;

import java.util.Map;
import java.util.Optional;
import org.fandown.air.AirControls.Knob;
import org.fandown.practice.Drivetrain.Gear;
import org.fandown.practice.PracticeEvent.Kind;
import org.fandown.units.Unit;

/** What is done in the driver's seat. */
final class CabWork {
    private final PracticeTruck truck;

    CabWork(PracticeTruck truck) {
        this.truck = truck;
    }

    void addTo(Map<Verb, Doing.Deed> deeds) {
        deeds.put(Verb.KEY, this::key);
        deeds.put(Verb.ENGINE, this::engine);
        deeds.put(Verb.THROTTLE, this::throttle);
        deeds.put(Verb.FOOT_BRAKE, this::footBrake);
        deeds.put(Verb.HAND_VALVE, this::handValve);
        deeds.put(Verb.PARKING_VALVE, this::parking);
        deeds.put(Verb.TRAILER_VALVE, this::trailer);
        deeds.put(Verb.GEAR, this::gear);
        deeds.put(Verb.CLUTCH, this::clutch);
    }

    private Optional<String> key(OperatorAction action) {
        boolean on = action.is("on");
        truck.lamps().key(on);
        if (!on) {
            truck.drivetrain.stop();
        }
        return DONE;
    }

    private Optional<String> engine(OperatorAction action) {
        if (action.is("stop")) {
            truck.drivetrain.stop();
            return DONE;
        }
        if (!truck.lamps().keyOn()) {
            return Optional.of("the key is off; turn it on first");
        }
        if (truck.drivetrain.turning()) {
            return Optional.of("the engine turns already");
        }
        if (truck.drivetrain.engaged()) {
            truck.note(Kind.HAZARD, "the engine is started in gear: the vehicle can jump");
        }
        truck.drivetrain.crank();
        return DONE;
    }

    private Optional<String> throttle(OperatorAction action) {
        if (action.isShare()) {
            truck.drivetrain.throttle(action.travel());
        } else {
            truck.drivetrain.throttleFor(action.quantity().valueIn(Unit.RPM));
        }
        return DONE;
    }

    private Optional<String> footBrake(OperatorAction action) {
        truck.hands.foot(action.travel());
        truck.control();
        return DONE;
    }

    private Optional<String> handValve(OperatorAction action) {
        if (truck.air().trailerKnobIn().isEmpty()) {
            return Optional.of("this vehicle tows nothing, so it has no hand valve");
        }
        truck.hands.hand(action.travel());
        truck.control();
        return DONE;
    }

    private Optional<String> parking(OperatorAction action) {
        if (truck.air().parkingKnobIn().isEmpty()) {
            truck.brakes.handBrake(action.is("pull"));
            return DONE;
        }
        truck.hands.parking(knob(action));
        truck.control();
        return DONE;
    }

    private Optional<String> trailer(OperatorAction action) {
        if (truck.air().trailerKnobIn().isEmpty()) {
            return Optional.of("this vehicle tows nothing, so it has no trailer supply valve");
        }
        truck.hands.trailer(knob(action));
        truck.control();
        return DONE;
    }

    private static Knob knob(OperatorAction action) {
        return action.is("push") ? Knob.PUSHED : Knob.PULLED;
    }

    private Optional<String> gear(OperatorAction action) {
        boolean neutral = action.is("neutral");
        boolean grinds =
                truck.drivetrain.hasClutch()
                        && truck.drivetrain.turning()
                        && truck.drivetrain.clutch() < 1;
        if (!neutral && grinds) {
            return Optional.of("the gears grind; press the clutch down first");
        }
        if (neutral) {
            truck.drivetrain.gear(Gear.NEUTRAL);
        } else {
            truck.drivetrain.gear(action.is("low") ? Gear.LOW : Gear.REVERSE);
        }
        return DONE;
    }

    private Optional<String> clutch(OperatorAction action) {
        if (!truck.drivetrain.hasClutch()) {
            return Optional.of("a vehicle with a torque converter has no clutch pedal");
        }
        truck.drivetrain.clutch(action.travel());
        return DONE;
    }
}
