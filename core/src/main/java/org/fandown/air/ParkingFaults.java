package org.fandown.air;

import org.fandown.air.AirSetup.Defect;
import org.fandown.air.AirSetup.Spring;

/** Faults of the parking valve and the spring brakes. */
final class ParkingFaults {
    static final FaultSpec PARKING_VALVE_LEAK =
            fault("Leak at the parking valve", "Hiss behind the dash while the parking knob is in.")
                    .hole(0.3, 1, 3)
                    .leak("park-line");

    static final FaultSpec SPRING_RELAY_LEAK =
            fault(
                            "Leak behind the spring brake valve",
                            "Hiss at the rear axle with the parking brake released.")
                    .hole(0.3, 1, 4)
                    .leak("rear-spring");

    static final FaultSpec SPRING_DIAPHRAGM_LEAK =
            fault(
                            "Torn spring brake diaphragm",
                            "Hiss at the wheel with the parking brake released; stops when it is"
                                    + " set.")
                    .atWheel()
                    .hole(0.3, 1.5, 6)
                    .leak("{wheel}.spring");

    static final FaultSpec SPRING_BROKEN =
            fault(
                            "Broken spring in a spring brake",
                            "With the parking brake set the push rod comes out less than at the"
                                    + " other wheels; rattle at the chamber.")
                    .atWheel()
                    .spring(Spring.BROKEN);

    static final FaultSpec SPRING_CAGED =
            fault(
                            "Spring brake caged",
                            "A release bolt stands out of the chamber; the push rod does not move"
                                    + " when the parking brake is set.")
                    .atWheel()
                    .spring(Spring.CAGED);

    static final FaultSpec SPRING_DRAGGING =
            fault(
                            "Spring brake drags",
                            "The push rod is not fully back with the parking brake released; a hot"
                                    + " wheel.")
                    .atWheel()
                    .spring(Spring.DRAGGING);

    static final FaultSpec PARKING_POPS_EARLY =
            fault(
                            "Parking knob pops out too early",
                            "The knob comes out above the usual range in the fan down.")
                    .size(46, 56, 75, "psi")
                    .needs("parking-valve")
                    .set(AirDefault.PARKING_POP);

    static final FaultSpec PARKING_POPS_LATE =
            fault("Parking knob pops out too late", "The knob stays in below the usual range.")
                    .size(2, 10, 19, "psi")
                    .needs("parking-valve")
                    .set(AirDefault.PARKING_POP);

    static final FaultSpec PARKING_KNOB_STICKS =
            fault(
                            "Parking knob does not pop out",
                            "The knob stays in down to nothing; springs come on only as their air"
                                    + " is lost.")
                    .needs("parking-valve")
                    .defect(Defect.PARKING_KNOB_STICKS);

    static final FaultSpec NO_ANTI_COMPOUND =
            fault(
                            "Service and spring force add up",
                            "Pedal down with the parking brake set: the push rods of spring brakes"
                                    + " are loaded twice; let up, nothing vents at their valve.")
                    .needs("anti-compound")
                    .defect(Defect.NO_ANTI_COMPOUND);

    static final FaultSpec NO_MODULATION =
            fault(
                            "Spring brakes not modulated",
                            "With the primary reservoir drained the pedal does not let the spring"
                                    + " brakes on: the front brakes alone stop the vehicle.")
                    .needs("spring-modulation")
                    .defect(Defect.NO_MODULATION);

    private ParkingFaults() {}

    private static FaultSpec fault(String title, String shows) {
        return FaultSpec.of(FaultGroup.PARKING, title, shows);
    }
}
