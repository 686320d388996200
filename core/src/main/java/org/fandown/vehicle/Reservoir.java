package org.fandown.vehicle;

import java.util.Optional;
import org.fandown.units.Quantity;

/**
 * One air reservoir.
 *
 * @param role what it is for
 * @param volume its volume, empty if unknown
 */
public record Reservoir(ReservoirRole role, Optional<Quantity> volume) {

    /** Refuses a volume no road vehicle has. */
    public Reservoir {
        volume.ifPresent(size -> Sizes.volume("volume", size));
    }
}
