package org.fandown.vehicle;

import java.util.Optional;
import org.fandown.units.Quantity;

/**
 * The masses on a unit's plate and papers.
 *
 * @param gross the maker's greatest laden mass (GVWR), empty if unknown
 * @param registered the mass it is registered for, empty if unknown
 */
public record Ratings(Optional<Quantity> gross, Optional<Quantity> registered) {

    /** Nothing is known. */
    public static final Ratings UNKNOWN = new Ratings(Optional.empty(), Optional.empty());

    /** Refuses a mass no road vehicle has. */
    public Ratings {
        gross.ifPresent(mass -> Sizes.mass("gross-mass", mass));
        registered.ifPresent(mass -> Sizes.mass("registered-mass", mass));
    }
}
