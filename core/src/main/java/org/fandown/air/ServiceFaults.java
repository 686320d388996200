package org.fandown.air;

import org.fandown.air.AirSetup.Defect;
import org.fandown.units.Length;
import org.fandown.vehicle.Chamber;

/** Faults of the foot valve, the relay valves, the service chambers and the foundation brakes. */
final class ServiceFaults {
    static final FaultSpec FOOT_VALVE_SEAT_LEAK =
            fault(
                            "Foot valve does not seat",
                            "Air at the foot valve's exhaust with the pedal up; the primary needle"
                                    + " falls.")
                    .hole(0.3, 1, 3)
                    .bridge("primary", "primary-delivery");

    static final FaultSpec FOOT_VALVE_SECONDARY_SEAT_LEAK =
            fault(
                            "Foot valve does not seat on the secondary side",
                            "Air at the foot valve's exhaust with the pedal up; the secondary"
                                    + " needle falls.")
                    .hole(0.3, 1, 3)
                    .bridge("secondary", "secondary-delivery");

    static final FaultSpec FOOT_VALVE_APPLIED_LEAK =
            fault(
                            "Foot valve leaks when applied",
                            "Air at the foot valve with the pedal down; the applied leak test is"
                                    + " worse than the released one.")
                    .hole(0.3, 1, 3)
                    .leak("primary-delivery");

    static final FaultSpec FOOT_VALVE_NARROW =
            fault("Foot valve clogged", "The rear brakes come on and go off late.")
                    .part(0.005, 0.02, 0.2)
                    .narrow("foot-valve-primary");

    static final FaultSpec RELAY_SEAT_LEAK =
            fault(
                            "Relay valve does not seat",
                            "Air at the rear relay valve's exhaust with the brakes released; the"
                                    + " primary needle falls.")
                    .hole(0.3, 1, 3)
                    .bridge("primary", "rear-service");

    static final FaultSpec RELAY_APPLIED_LEAK =
            fault(
                            "Relay valve leaks when applied",
                            "Air at the rear relay valve with the brakes applied; the primary"
                                    + " needle falls.")
                    .hole(0.3, 1, 4)
                    .leak("rear-service");

    static final FaultSpec RELAY_SLOW =
            fault("Relay valve clogged", "The rear brakes come on and go off late.")
                    .part(0.01, 0.05, 0.3)
                    .narrow("relay-rear");

    static final FaultSpec RELAY_STUCK_SHUT =
            fault(
                            "Relay valve does not open",
                            "The push rods at the rear do not move with the pedal.")
                    .jam("relay-rear", 0);

    static final FaultSpec QUICK_RELEASE_LEAK =
            fault(
                            "Quick-release valve leaks when applied",
                            "Hiss at the front axle with the pedal down; the secondary needle"
                                    + " falls.")
                    .hole(0.3, 1, 4)
                    .leak("front-service");

    static final FaultSpec QUICK_RELEASE_SLOW =
            fault("Quick-release valve clogged", "The front brakes come on and go off late.")
                    .part(0.005, 0.02, 0.3)
                    .narrow("quick-release-front");

    static final FaultSpec SERVICE_DIAPHRAGM_LEAK =
            fault(
                            "Torn service diaphragm",
                            "Hiss at the chamber with the brakes applied; the applied leak test"
                                    + " fails.")
                    .atWheel()
                    .hole(0.3, 1.5, 6)
                    .leak("{wheel}.service");

    static final FaultSpec HOSE_LEAK =
            fault(
                            "Chafed hose to a chamber",
                            "Hiss along the hose with the brakes applied; the applied leak test"
                                    + " fails.")
                    .atWheel()
                    .hole(0.3, 1.2, 6)
                    .leak("{wheel}.service");

    static final FaultSpec HOSE_NARROW =
            fault(
                            "Hose to a chamber collapsed inside",
                            "The brake at the wheel comes on and goes off late.")
                    .atWheel()
                    .part(0.005, 0.03, 0.3)
                    .narrow("hose-{wheel}.service");

    static final FaultSpec BOOSTER_LEAK =
            fault(
                            "Hydraulic booster leaks air when applied",
                            "Hiss at the booster with the pedal down; the primary needle falls.")
                    .hole(0.3, 1, 4)
                    .leak("primary-booster");

    static final FaultSpec STOP_LAMP_SWITCH_DEAD =
            fault("Stop lamp switch dead", "No stop lamps with the pedal down.")
                    .defect(Defect.STOP_LAMP_SWITCH_DEAD);

    static final FaultSpec ADJUSTER_OUT =
            wheel("Brake out of adjustment", "Applied stroke beyond the limit at the wheel.")
                    .size(0.9, 1.3, 2, "in")
                    .change((s, x, at) -> s.withFreeStroke(at.wheel(), Length.ofInches(x)));

    static final FaultSpec ADJUSTER_SEIZED =
            wheel(
                            "Slack adjuster does not adjust",
                            "Free stroke beyond 3/4 in, and applied stroke well beyond that of the"
                                    + " other side, though it may still be within the limit.")
                    .size(0.8, 1, 1.6, "in")
                    .change((s, x, at) -> s.withFreeStroke(at.wheel(), Length.ofInches(x)));

    static final FaultSpec BRAKE_TOO_TIGHT =
            wheel("Brake adjusted too tight", "Free stroke hardly there; a warm wheel.")
                    .size(0.05, 0.15, 0.3, "in")
                    .change((s, x, at) -> s.withFreeStroke(at.wheel(), Length.ofInches(x)));

    static final FaultSpec BRAKE_SEIZED =
            wheel(
                            "Camshaft seized",
                            "The push rod hardly moves, with the pedal or the parking brake; no"
                                    + " braking at the wheel.")
                    .part(0, 0.1, 0.3)
                    .change((s, x, at) -> s.withMovement(at.wheel(), x));

    static final FaultSpec CHAMBER_UNEQUAL =
            wheel(
                            "Chamber of another size than its mate",
                            "The type number on the chamber is not that of the other side; with"
                                    + " the same pressure the push rods come out unequally.")
                    .size(12, 24, 36, "type")
                    .change((s, x, at) -> s.withChamber(at.wheel(), clamp(x)));

    static final FaultSpec HOT_DRUMS =
            FaultSpec.of(
                            FaultGroup.WHEELS,
                            "Hot drums",
                            "All strokes grow; back to normal when cool.")
                    .size(0.1, 0.4, 0.7, "in")
                    .needs("brake-chamber")
                    .set(AirDefault.HOT_STROKE);

    private ServiceFaults() {}

    private static FaultSpec fault(String title, String shows) {
        return FaultSpec.of(FaultGroup.SERVICE, title, shows);
    }

    private static FaultSpec wheel(String title, String shows) {
        return FaultSpec.of(FaultGroup.WHEELS, title, shows).atWheel();
    }

    private static Chamber clamp(double type) {
        if (type != Math.floor(type)) {
            throw new IllegalArgumentException(
                    "The type of a chamber is a whole number, such as 24.");
        }
        return Chamber.clamp((int) type);
    }
}
