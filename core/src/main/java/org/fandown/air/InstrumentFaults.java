package org.fandown.air;

import org.fandown.air.AirSetup.Defect;

/** Faults of gauges, warnings and lamps. */
final class InstrumentFaults {
    static final FaultSpec LOW_AIR_SET_LOW =
            fault("Low-air switch set too low", "Lamp and buzzer come on too late in the fan down.")
                    .size(30, 48, 54, "psi")
                    .set(AirDefault.LOW_AIR);

    static final FaultSpec LOW_AIR_LAMP_DEAD =
            fault("Low-air lamp dead", "The buzzer sounds without the lamp.")
                    .defect(Defect.LOW_AIR_LAMP_DEAD);

    static final FaultSpec LOW_AIR_BUZZER_DEAD =
            fault("Low-air buzzer dead", "The lamp lights without the buzzer.")
                    .defect(Defect.LOW_AIR_BUZZER_DEAD);

    static final FaultSpec LOW_AIR_SWITCH_DEAD =
            fault("Low-air switch dead", "Neither lamp nor buzzer at any pressure.")
                    .defect(Defect.LOW_AIR_SWITCH_DEAD);

    static final FaultSpec PRIMARY_GAUGE_OFF =
            fault(
                            "Primary gauge reads wrong",
                            "The needles differ at cut-out although the circuits are equal.")
                    .size(-25, 12, 25, "psi")
                    .set(AirDefault.PRIMARY_GAUGE_ERROR);

    static final FaultSpec SECONDARY_GAUGE_OFF =
            fault(
                            "Secondary gauge reads wrong",
                            "The needles differ at cut-out although the circuits are equal.")
                    .size(-25, 12, 25, "psi")
                    .set(AirDefault.SECONDARY_GAUGE_ERROR);

    static final FaultSpec PRIMARY_GAUGE_STUCK =
            fault("Primary gauge stuck", "The primary needle does not move.")
                    .defect(Defect.PRIMARY_GAUGE_STUCK);

    static final FaultSpec SECONDARY_GAUGE_STUCK =
            fault("Secondary gauge stuck", "The secondary needle does not move.")
                    .defect(Defect.SECONDARY_GAUGE_STUCK);

    static final FaultSpec ABS_LAMP_STAYS_ON =
            fault("ABS lamp stays on", "The lamp does not go out after its check at key on.")
                    .needs("abs-lamp")
                    .defect(Defect.ABS_LAMP_STAYS_ON);

    static final FaultSpec ABS_LAMP_DEAD =
            fault("ABS lamp dead", "The lamp does not light at key on.")
                    .needs("abs-lamp")
                    .defect(Defect.ABS_LAMP_DEAD);

    static final FaultSpec TRAILER_ABS_LAMP_STAYS_ON =
            fault(
                            "Trailer ABS lamp stays on",
                            "The lamp on the trailer does not go out after its check at key on.")
                    .needs("trailer-abs-lamp")
                    .defect(Defect.TRAILER_ABS_LAMP_STAYS_ON);

    static final FaultSpec TRAILER_ABS_LAMP_DEAD =
            fault("Trailer ABS lamp dead", "The lamp on the trailer does not light at key on.")
                    .needs("trailer-abs-lamp")
                    .defect(Defect.TRAILER_ABS_LAMP_DEAD);

    private InstrumentFaults() {}

    private static FaultSpec fault(String title, String shows) {
        return FaultSpec.of(FaultGroup.INSTRUMENTS, title, shows);
    }
}
