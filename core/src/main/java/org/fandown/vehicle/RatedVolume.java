package org.fandown.vehicle;

import org.fandown.units.Quantity;

/**
 * The volume a reservoir rule reckons for a chamber, with the span of full strokes it stands for.
 *
 * @param volume the rated volume, the space before the stroke included
 * @param fromStroke the least full stroke of the row
 * @param toStroke the greatest full stroke of the row
 */
public record RatedVolume(Quantity volume, Quantity fromStroke, Quantity toStroke) {}
