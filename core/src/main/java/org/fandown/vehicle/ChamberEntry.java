package org.fandown.vehicle;

import java.util.Optional;
import org.fandown.units.Quantity;

/**
 * What the table knows of one chamber type. Legal stroke limits are not here: they belong to rules.
 *
 * @param mount its family
 * @param type its type within the family
 * @param area its effective area (square inches)
 * @param fullStroke its full stroke in the standard form, empty if not known
 * @param longStroke its full stroke in the usual long-stroke form, empty if there is none
 * @param ratedVolume the volume a reservoir rule reckons, empty if no table has it
 */
public record ChamberEntry(
        Mount mount,
        String type,
        Cited<Double> area,
        Optional<Cited<Quantity>> fullStroke,
        Optional<Cited<Quantity>> longStroke,
        Optional<Cited<RatedVolume>> ratedVolume) {

    /** Returns the effective area (square inches). */
    public double areaSquareInches() {
        return area.value();
    }
}
