package org.fandown.air;

import org.fandown.air.AirSetup.Defect;

/** Faults of compressor, governor and dryer. */
final class SupplyFaults {
    /** Part of its air an oily compressor still delivers. */
    private static final double OILY = 0.85;

    /** How far below its opening a weak safety valve closes, psi. */
    private static final double SAFETY_RANGE = 15;

    static final FaultSpec GOVERNOR_HIGH =
            fault(
                            "Governor cut-out too high",
                            "Pumping stops later than it should; no purge until then.")
                    .size(136, 142, 149, "psi")
                    .set(AirDefault.CUT_OUT);

    static final FaultSpec GOVERNOR_LOW =
            fault(
                            "Governor cut-out too low",
                            "Pumping stops early; the needles never reach the usual pressure.")
                    .size(104, 112, 118, "psi")
                    .set(AirDefault.CUT_OUT);

    static final FaultSpec CUT_IN_LOW =
            fault(
                            "Governor cut-in too low",
                            "After applications the needles fall far before pumping starts again.")
                    .size(50, 78, 99, "psi")
                    .set(AirDefault.CUT_IN);

    static final FaultSpec GOVERNOR_STICKING =
            fault(
                            "Governor sticks",
                            "Pumping stops and starts late: cut-out too high, and the higher the"
                                    + " faster the engine runs.")
                    .size(10, 45, 90, "s")
                    .set(AirDefault.GOVERNOR_LAG);

    static final FaultSpec GOVERNOR_STUCK_LOADED =
            fault(
                            "Governor does not unload",
                            "Pressure rises until the safety valve blows; no purge.")
                    .defect(Defect.GOVERNOR_STUCK_LOADED);

    static final FaultSpec GOVERNOR_STUCK_UNLOADED =
            fault("Governor does not load", "No build-up at all; the purge valve stays open.")
                    .defect(Defect.GOVERNOR_STUCK_UNLOADED);

    static final FaultSpec COMPRESSOR_WORN =
            fault("Worn compressor", "Build-up takes too long at every speed.")
                    .part(0.2, 0.4, 0.8)
                    .change((s, x, at) -> weaker(s, x));

    static final FaultSpec COMPRESSOR_SLIPPING =
            fault(
                            "Compressor drive slips",
                            "The compressor turns slower than its engine; build-up takes too long.")
                    .part(0.2, 0.4, 0.9)
                    .set(AirDefault.DRIVE_GRIP);

    static final FaultSpec OIL_CARRIED_OVER =
            fault(
                            "Compressor passes oil",
                            "Oil at the drain of the supply reservoir; build-up a little slower.")
                    .part(0.02, 0.1, 0.4)
                    .water("supply")
                    .defect(Defect.OIL_CARRIED_OVER)
                    .change((s, x, at) -> weaker(s, OILY));

    static final FaultSpec DISCHARGE_LEAK =
            fault(
                            "Leak in the discharge line",
                            "Hiss at the compressor's line while it pumps; build-up takes too"
                                    + " long or ends short of the cut-out; quiet with the engine"
                                    + " off.")
                    .hole(1, 2.5, 6)
                    .leak("discharge");

    static final FaultSpec PURGE_STUCK_OPEN =
            fault(
                            "Purge valve stuck open",
                            "Air blows from the dryer while the engine runs; no or slow build-up.")
                    .defect(Defect.PURGE_STUCK_OPEN);

    static final FaultSpec PURGE_STUCK_SHUT =
            fault("Dryer does not purge", "No sneeze at cut-out; in time water in the reservoirs.")
                    .defect(Defect.PURGE_STUCK_SHUT);

    static final FaultSpec DRYER_BLOCKED =
            fault("Dryer blocked", "Build-up slows down and the pumping may stop early.")
                    .part(0.001, 0.01, 0.1)
                    .narrow("dryer-check");

    static final FaultSpec DRYER_CHECK_OPEN =
            fault(
                            "Dryer's check valve stuck open",
                            "After the sneeze the supply reservoir empties through the dryer down to"
                                    + " the cut-in: pumping starts and stops every few seconds.")
                    .hole(1, 3, 7)
                    .bridge("supply", "discharge");

    static final FaultSpec SAFETY_VALVE_WEAK =
            fault("Safety valve opens too early", "The safety valve blows before the cut-out.")
                    .size(90, 110, 120, "psi")
                    .set(AirDefault.SAFETY_OPEN)
                    .change((s, x, at) -> s.with(AirDefault.SAFETY_CLOSE, x - SAFETY_RANGE));

    static final FaultSpec SAFETY_VALVE_STUCK =
            fault(
                            "Safety valve stuck shut",
                            "Nothing to see while the governor works; the valve does not open in"
                                    + " a workshop's test.")
                    .jam("safety-valve", 0);

    private SupplyFaults() {}

    private static AirSetup weaker(AirSetup setup, double part) {
        double health = part * setup.value(AirDefault.COMPRESSOR_HEALTH);
        return setup.with(AirDefault.COMPRESSOR_HEALTH, health);
    }

    private static FaultSpec fault(String title, String shows) {
        return FaultSpec.of(FaultGroup.SUPPLY, title, shows);
    }
}
