package org.fandown.air;

import java.util.List;
import org.fandown.units.Decimals;

/**
 * A fault of a certain size at a certain place.
 *
 * @param fault the fault
 * @param size its size, within the range of the fault, in its unit
 * @param place the wheel, such as {@code 2L}, if the fault is at a wheel; else empty text
 */
public record FaultCase(Fault fault, double size, String place) {
    /**
     * Checks size and place.
     *
     * @throws IllegalArgumentException if the size is out of range, or a place is missing or too
     *     many
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
        if (fault.atWheel() == place.isEmpty()) {
            throw new IllegalArgumentException(
                    fault.atWheel()
                            ? fault.id() + " needs a wheel, for example 2L."
                            : fault.id() + " has no place to choose.");
        }
    }

    /** Makes one of usual size, of a fault that is not at a wheel. */
    public static FaultCase of(Fault fault) {
        return new FaultCase(fault, fault.size().usual(), "");
    }

    /** Makes one of usual size at a wheel. */
    public static FaultCase at(Fault fault, String wheel) {
        return new FaultCase(fault, fault.size().usual(), wheel);
    }

    /** Returns a setup with this fault in it. */
    public AirSetup in(AirSetup setup) {
        return fault.change().apply(setup, size, place);
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
