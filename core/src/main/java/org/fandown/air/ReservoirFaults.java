package org.fandown.air;

/** Faults of the reservoirs of a powered unit, their drains and check valves. */
final class ReservoirFaults {
    static final FaultSpec SUPPLY_LEAK =
            fault(
                            "Leak at the supply reservoir",
                            "Hiss under the supply reservoir; both needles hold behind their check"
                                    + " valves while the compressor works more often.")
                    .hole(0.3, 1.5, 5)
                    .leak("supply");

    static final FaultSpec PRIMARY_LEAK =
            fault(
                            "Leak in the primary circuit",
                            "The primary needle falls with the engine off, brakes released or"
                                    + " applied; the secondary one holds.")
                    .hole(0.3, 1, 5)
                    .leak("primary");

    static final FaultSpec SECONDARY_LEAK =
            fault(
                            "Leak in the secondary circuit",
                            "The secondary needle falls with the engine off; the primary one"
                                    + " holds.")
                    .hole(0.3, 1, 5)
                    .leak("secondary");

    static final FaultSpec PARKING_RESERVOIR_LEAK =
            fault(
                            "Leak at the parking reservoir",
                            "Hiss under the parking reservoir; no needle shows it.")
                    .hole(0.3, 1, 5)
                    .leak("parking");

    static final FaultSpec WATER_IN_SUPPLY =
            fault(
                            "Water in the supply reservoir",
                            "Water at the drain; quick build-up, and quick fall when braking.")
                    .part(0.1, 0.4, 0.8)
                    .water("supply");

    static final FaultSpec WATER_IN_PRIMARY =
            fault(
                            "Water in the primary reservoir",
                            "Water at the drain; the primary needle falls far with each"
                                    + " application.")
                    .part(0.1, 0.4, 0.8)
                    .water("primary");

    static final FaultSpec WATER_IN_SECONDARY =
            fault(
                            "Water in the secondary reservoir",
                            "Water at the drain; the secondary needle falls far with each"
                                    + " application.")
                    .part(0.1, 0.4, 0.8)
                    .water("secondary");

    static final FaultSpec SUPPLY_DRAIN_FROZEN = frozen("Supply", "supply");
    static final FaultSpec DRAIN_FROZEN = frozen("Primary", "primary");
    static final FaultSpec SECONDARY_DRAIN_FROZEN = frozen("Secondary", "secondary");

    static final FaultSpec SUPPLY_DRAIN_LEAKING =
            leaking(
                    "Supply",
                    "supply",
                    "Hiss under the supply reservoir; both needles hold behind their check valves.");

    static final FaultSpec DRAIN_LEAKING =
            leaking("Primary", "primary", "Hiss under the primary reservoir; its needle falls.");

    static final FaultSpec SECONDARY_DRAIN_LEAKING =
            leaking(
                    "Secondary",
                    "secondary",
                    "Hiss under the secondary reservoir; its needle falls.");

    static final FaultSpec PRIMARY_CHECK_OPEN = checkOpen("Primary", "primary");
    static final FaultSpec SECONDARY_CHECK_OPEN = checkOpen("Secondary", "secondary");
    static final FaultSpec PRIMARY_CHECK_SHUT = checkShut("Primary", "primary");
    static final FaultSpec SECONDARY_CHECK_SHUT = checkShut("Secondary", "secondary");

    static final FaultSpec CIRCUITS_JOINED =
            fault(
                            "Leak between the circuits",
                            "Both needles fall together when one reservoir is drained.")
                    .hole(1, 3, 7)
                    .bridge("primary", "secondary");

    static final FaultSpec DASH_CHECK_STUCK =
            fault(
                            "Double check valve of the dash stuck",
                            "The knobs have air from the primary circuit alone: with that drained"
                                    + " the spring brakes come on though the secondary one is"
                                    + " full.")
                    .jam("dash-check-primary", 1)
                    .jam("dash-check-secondary", 0)
                    .jam("dash-back-primary", 1)
                    .jam("dash-back-secondary", 0);

    private ReservoirFaults() {}

    private static FaultSpec fault(String title, String shows) {
        return FaultSpec.of(FaultGroup.RESERVOIRS, title, shows);
    }

    private static FaultSpec frozen(String name, String reservoir) {
        return fault(name + " drain frozen", "Nothing comes out of the " + reservoir + " drain.")
                .jam("drain-" + reservoir, 0);
    }

    private static FaultSpec leaking(String name, String reservoir, String shows) {
        return fault(name + " drain does not close", shows)
                .part(0.005, 0.05, 1)
                .stuck("drain-" + reservoir);
    }

    private static FaultSpec checkOpen(String name, String reservoir) {
        return fault(
                        name + " check valve stuck open",
                        "When the supply reservoir is drained the "
                                + reservoir
                                + " needle falls too.")
                .hole(1, 4, 7)
                .bridge(reservoir, "supply");
    }

    private static FaultSpec checkShut(String name, String reservoir) {
        return fault(
                        name + " check valve stuck shut",
                        "The " + reservoir + " needle does not rise; the low-air warning stays on.")
                .jam("check-" + reservoir, 0);
    }
}
