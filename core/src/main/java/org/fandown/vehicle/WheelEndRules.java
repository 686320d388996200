package org.fandown.vehicle;

import java.util.Optional;

/** What makes an end of an axle impossible. */
final class WheelEndRules {
    private WheelEndRules() {}

    static void require(BrakeKind brake, Optional<Chamber> chamber, boolean springBrake) {
        if (brake == BrakeKind.NONE) {
            refuse(chamber.isPresent(), "chamber", brake, "a brake chamber");
            refuse(springBrake, "spring-brake", brake, "a spring brake");
        }
        if (springBrake && chamber.isEmpty()) {
            throw new ImpossibleVehicleException(
                    "spring-brake",
                    "a spring brake works through a chamber, and none is given",
                    "spring-brake: yes together with a chamber",
                    "give the chamber, or write 'spring-brake: no'");
        }
        if (springBrake && chamber.get().mount() == Mount.DD3) {
            throw new ImpossibleVehicleException(
                    "spring-brake",
                    "a dd3 chamber parks by locking rollers and has no spring",
                    "spring-brake: no on dd3",
                    "write 'spring-brake: no'");
        }
    }

    static void requireParts(
            BrakeKind brake,
            boolean chamber,
            Optional<Adjuster> adjuster,
            boolean arm,
            Optional<Lining> lining,
            boolean drumRadius) {
        if (brake == BrakeKind.NONE) {
            boolean adjusts = adjuster.isPresent() && adjuster.get() != Adjuster.NONE;
            refuse(adjusts, "adjuster", brake, "an adjuster");
            refuse(lining.isPresent(), "lining", brake, "a lining");
        }
        refuse(
                adjuster.isPresent()
                        && adjuster.get() == Adjuster.INTERNAL
                        && chamber
                        && brake == BrakeKind.DRUM,
                "adjuster",
                brake,
                "an internal adjuster (write manual or automatic)");
        refuse(
                arm && (!chamber || brake == BrakeKind.WEDGE),
                "arm",
                brake,
                chamber ? "a slack adjuster arm" : "a slack adjuster arm without a chamber");
        boolean pads = lining.isPresent() && lining.get() == Lining.PADS;
        refuse(pads && brake != BrakeKind.DISC, "lining", brake, "pads");
        refuse(lining.isPresent() && !pads && brake == BrakeKind.DISC, "lining", brake, "shoes");
        boolean drum = brake == BrakeKind.DRUM || brake == BrakeKind.WEDGE;
        refuse(drumRadius && !drum, "drum-radius", brake, "a drum");
    }

    private static void refuse(boolean present, String key, BrakeKind brake, String part) {
        if (present) {
            throw new ImpossibleVehicleException(
                    key,
                    "brake '" + Labels.of(brake) + "' cannot have " + part,
                    "a " + key + " that fits the kind of brake",
                    "take '" + key + "' out, or correct 'brake'");
        }
    }
}
