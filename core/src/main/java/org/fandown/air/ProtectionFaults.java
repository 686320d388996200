package org.fandown.air;

import org.fandown.air.AirSetup.Defect;

/** Faults of the valves of a towing unit: trailer supply, hand valve, tractor protection. */
final class ProtectionFaults {
    static final FaultSpec TRAILER_KNOB_POPS_EARLY =
            fault(
                            "Trailer supply knob pops out too early",
                            "The knob comes out above the usual range in the fan down.")
                    .size(46, 56, 75, "psi")
                    .needs("trailer-supply-valve")
                    .set(AirDefault.TRAILER_POP);

    static final FaultSpec TRAILER_KNOB_POPS_LATE =
            fault(
                            "Trailer supply knob pops out too late",
                            "The knob stays in below the usual range.")
                    .size(2, 10, 19, "psi")
                    .needs("trailer-supply-valve")
                    .set(AirDefault.TRAILER_POP);

    static final FaultSpec TRAILER_KNOB_STICKS =
            fault(
                            "Trailer supply knob does not pop out",
                            "With the supply line apart the tractor loses its air.")
                    .needs("trailer-supply-valve")
                    .defect(Defect.TRAILER_KNOB_STICKS);

    static final FaultSpec PROTECTION_STUCK_OPEN =
            fault(
                            "Tractor protection stuck open",
                            "With the trailer supply knob out the pedal still sends air to the"
                                    + " control line.")
                    .needs("tractor-protection")
                    .defect(Defect.PROTECTION_STUCK_OPEN);

    static final FaultSpec PROTECTION_STUCK_SHUT =
            fault("Tractor protection stuck shut", "The trailer's service brakes do not apply.")
                    .needs("tractor-protection")
                    .defect(Defect.PROTECTION_STUCK_SHUT);

    static final FaultSpec HAND_VALVE_DEAD =
            fault(
                            "Hand valve gives no air",
                            "The trailer's brakes do not answer the hand valve, but the pedal.")
                    .jam("hand-valve", 0);

    static final FaultSpec HAND_CHECK_STUCK =
            fault(
                            "Double check valve of the hand valve stuck",
                            "The trailer's brakes answer the hand valve, but not the pedal.")
                    .jam("hand-check-pedal-signal", 0)
                    .jam("hand-check-hand-delivery", 1);

    private ProtectionFaults() {}

    private static FaultSpec fault(String title, String shows) {
        return FaultSpec.of(FaultGroup.TOWED, title, shows);
    }
}
