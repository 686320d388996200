package org.fandown.air;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fandown.units.Length;
import org.fandown.vehicle.Chamber;

/**
 * What is special about the brake at one wheel. Immutable; the {@code with} methods change one
 * thing.
 *
 * @param freeStroke its free stroke, if it is not the default
 * @param spring how its spring brake is, if it is not sound
 * @param chamber the chamber that is fitted, if it is not that of the vehicle file
 * @param movement part of its stroke the brake still lets the push rod make, 0 to 1, if not all
 */
public record WheelSetup(
        Optional<Length> freeStroke,
        Optional<AirSetup.Spring> spring,
        Optional<Chamber> chamber,
        OptionalDouble movement) {
    /** A brake as it should be. */
    public static final WheelSetup SOUND =
            new WheelSetup(
                    Optional.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty());

    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the movement is not in 0 to 1
     */
    public WheelSetup {
        double part = movement.orElse(1);
        if (!(part >= 0 && part <= 1)) {
            throw new IllegalArgumentException(
                    "The part of its stroke that a push rod still makes must be 0 to 1.");
        }
    }

    WheelSetup withFreeStroke(Length stroke) {
        return new WheelSetup(Optional.of(stroke), spring, chamber, movement);
    }

    WheelSetup withSpring(AirSetup.Spring state) {
        return new WheelSetup(freeStroke, Optional.of(state), chamber, movement);
    }

    WheelSetup withChamber(Chamber fitted) {
        return new WheelSetup(freeStroke, spring, Optional.of(fitted), movement);
    }

    WheelSetup withMovement(double part) {
        return new WheelSetup(freeStroke, spring, chamber, OptionalDouble.of(part));
    }
}
