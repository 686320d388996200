package org.fandown.vehicle;

import java.util.Optional;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * The pressures at which the maker set the compressor to stop and to start pumping.
 *
 * @param cutIn gauge pressure at which pumping starts again, empty if unknown
 * @param cutOut gauge pressure at which pumping stops, empty if unknown
 */
public record Governor(Optional<Quantity> cutIn, Optional<Quantity> cutOut) {

    /** Refuses pressures no brake system works at, and a cut-in that is not below the cut-out. */
    public Governor {
        cutIn.ifPresent(pressure -> Sizes.pressure("cut-in", pressure));
        cutOut.ifPresent(pressure -> Sizes.pressure("cut-out", pressure));
        if (cutIn.isPresent() && cutOut.isPresent() && !below(cutIn.get(), cutOut.get())) {
            throw new ImpossibleVehicleException(
                    "cut-in",
                    "cut-in " + cutIn.get() + " is not below cut-out " + cutOut.get(),
                    "a cut-in below the cut-out",
                    "look whether the two values are swapped");
        }
    }

    private static boolean below(Quantity low, Quantity high) {
        return low.valueIn(Unit.KPA) < high.valueIn(Unit.KPA);
    }
}
