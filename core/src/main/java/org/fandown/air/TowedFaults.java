package org.fandown.air;

/** Faults of the lines to towed units, of tractor protection and of the towed units. */
final class TowedFaults {
    static final FaultSpec TRAILER_RESERVOIR_LEAK =
            unit(
                            "Leak at the trailer's reservoir",
                            "Hiss under the trailer with the trailer supply knob in; both needles"
                                    + " fall slowly, and no longer with the knob out.")
                    .hole(0.3, 1, 5)
                    .leak("unit{unit}.reservoir");

    static final FaultSpec SUPPLY_LINE_LEAK =
            unit(
                            "Leak in the trailer's supply line",
                            "Hiss along the trailer while its supply knob is in; stops when the"
                                    + " knob is out.")
                    .hole(0.3, 1, 5)
                    .leak("supply-line-{unit}");

    static final FaultSpec CONTROL_LINE_LEAK =
            unit(
                            "Leak in the trailer's control line",
                            "Hiss along the trailer with the brakes applied; the applied leak test"
                                    + " is worse than the released one.")
                    .hole(0.3, 1, 5)
                    .leak("control-line-{unit}");

    static final FaultSpec SUPPLY_GLAD_HAND_LEAK =
            unit(
                            "Worn seal at the supply glad hand",
                            "Hiss between the units while the trailer supply knob is in.")
                    .hole(0.3, 1, 5)
                    .needs("glad-hand-supply-{front}")
                    .leak("supply-line-{front}");

    static final FaultSpec CONTROL_GLAD_HAND_LEAK =
            unit(
                            "Worn seal at the control glad hand",
                            "Hiss between the units with the brakes applied only.")
                    .hole(0.3, 1, 5)
                    .needs("glad-hand-control-{front}")
                    .leak("control-line-{front}");

    static final FaultSpec SUPPLY_LINE_NARROW =
            unit(
                            "Supply line kinked",
                            "The trailer charges slowly; its spring brakes come on and go off late.")
                    .part(0.005, 0.05, 0.3)
                    .narrow("glad-hand-supply-{front}");

    static final FaultSpec CONTROL_LINE_NARROW =
            unit("Control line kinked", "The trailer's brakes come on and go off late.")
                    .part(0.005, 0.05, 0.3)
                    .narrow("glad-hand-control-{front}");

    static final FaultSpec LINES_CROSSED =
            unit(
                            "Supply and control line crossed",
                            "With the trailer supply knob in the trailer's service brakes do not"
                                    + " follow the pedal and its spring brakes do not release.")
                    .jam("glad-hand-supply-{front}", 0)
                    .jam("glad-hand-control-{front}", 0)
                    .jam("crossed-supply-{front}", 1)
                    .jam("crossed-control-{front}", 1);

    static final FaultSpec SHUT_OFF_SHUT =
            unit(
                            "Shut-off valves in front of a towed unit shut",
                            "No air at the unit: its spring brakes stay on, no air at its drain.")
                    .jam("glad-hand-supply-{front}", 0)
                    .jam("glad-hand-control-{front}", 0);

    static final FaultSpec TRAILER_RELAY_SEAT_LEAK =
            unit(
                            "Trailer's relay valve does not seat",
                            "Air at the trailer's relay valve with the brakes released.")
                    .hole(0.3, 1, 3)
                    .bridge("unit{unit}.reservoir", "unit{unit}.service");

    static final FaultSpec TRAILER_RELAY_STUCK =
            unit(
                            "Trailer's relay valve does not open",
                            "The trailer's push rods do not move with pedal or hand valve.")
                    .jam("relay-unit{unit}", 0);

    static final FaultSpec TRAILER_CHECK_OPEN =
            unit(
                            "Trailer's check valve stuck open",
                            "With the supply line apart air blows from the trailer's end of it"
                                    + " until its reservoir is empty.")
                    .hole(1, 3, 7)
                    .bridge("unit{unit}.reservoir", "supply-line-{unit}");

    static final FaultSpec TRAILER_CHECK_SHUT =
            unit(
                            "Trailer's reservoir does not fill",
                            "The trailer's service brakes fade after a few applications; little or"
                                    + " no air at its drain.")
                    .jam("check-unit{unit}", 0);

    static final FaultSpec WATER_IN_TRAILER =
            unit(
                            "Water in the trailer's reservoir",
                            "Water at the trailer's drain; its brakes weaken with each"
                                    + " application.")
                    .part(0.1, 0.4, 0.8)
                    .water("unit{unit}.reservoir");

    static final FaultSpec TRAILER_DRAIN_FROZEN =
            unit("Trailer's drain frozen", "Nothing comes out of the trailer's drain.")
                    .jam("drain-unit{unit}.reservoir", 0);

    static final FaultSpec TRAILER_DRAIN_LEAKING =
            unit(
                            "Trailer's drain does not close",
                            "Hiss under the trailer; both needles fall slowly with the trailer"
                                    + " supply knob in.")
                    .part(0.005, 0.05, 1)
                    .stuck("drain-unit{unit}.reservoir");

    private TowedFaults() {}

    private static FaultSpec unit(String title, String shows) {
        return FaultSpec.of(FaultGroup.TOWED, title, shows).atUnit();
    }
}
