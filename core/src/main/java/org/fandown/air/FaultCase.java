package org.fandown.air;

import java.util.List;
import java.util.Optional;
import org.fandown.units.Decimals;
import org.fandown.vehicle.Vehicle;

/**
 * A fault of a certain size at a certain place.
 *
 * @param fault the fault
 * @param size its size, within the range of the fault, in its unit
 * @param place the wheel, such as {@code 2L}, if the fault is at a wheel; the towed unit, such as
 *     {@code unit3}, or empty text for the first, if it is at a towed unit; else empty text
 */
public record FaultCase(Fault fault, double size, String place) {
    /**
     * Checks size and place.
     *
     * @throws IllegalArgumentException if the size is out of range or is not one there is, or a
     *     place is missing, too many or none there can be
     */
    public FaultCase {
        FaultSize range = fault.size();
        if (!(size >= range.least() && size <= range.most())) {
            throw new IllegalArgumentException(
                    "The size of "
                            + fault.id()
                            + " must be "
                            + Decimals.formatShort(range.least(), 6)
                            + " to "
                            + Decimals.formatShort(range.most(), 6)
                            + " "
                            + range.unit()
                            + ".");
        }
        if (!fits(fault, place)) {
            throw new IllegalArgumentException(placeWanted(fault));
        }
        fault.spec().apply(AirSetup.SOUND, size, new FaultSite(place));
    }

    private static boolean fits(Fault fault, String place) {
        if (fault.atUnit()) {
            return place.isEmpty() || FaultSite.isUnit(place);
        }
        return fault.atWheel() != place.isEmpty();
    }

    private static String placeWanted(Fault fault) {
        if (fault.atWheel()) {
            return fault.id() + " needs a wheel, for example 2L.";
        }
        return fault.atUnit()
                ? fault.id() + " takes a towed unit, unit2 to unit9, or no place."
                : fault.id() + " has no place to choose.";
    }

    /** Makes one of usual size, of a fault that is not at a wheel. */
    public static FaultCase of(Fault fault) {
        return new FaultCase(fault, fault.size().usual(), "");
    }

    /** Makes one of usual size at a wheel or towed unit. */
    public static FaultCase at(Fault fault, String place) {
        return new FaultCase(fault, fault.size().usual(), place);
    }

    /** Returns a setup with this fault in it. */
    public AirSetup in(AirSetup setup) {
        return fault.spec().apply(setup, size, new FaultSite(place));
    }

    /**
     * Returns why a vehicle cannot have this fault, empty if it can.
     *
     * @param vehicle the vehicle
     */
    public Optional<String> refusal(Vehicle vehicle) {
        try {
            AirSystem.of(vehicle, in(AirSetup.SOUND));
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.of(fault.title() + ": " + e.getMessage());
        }
    }

    /** Returns a setup with all these faults in it. */
    public static AirSetup all(AirSetup setup, List<FaultCase> faults) {
        AirSetup changed = setup;
        for (FaultCase fault : faults) {
            changed = fault.in(changed);
        }
        return changed;
    }
}
