package org.fandown.vehicle;

import org.fandown.units.Dimension;
import org.fandown.units.Quantity;

/** Refuses sizes of the wrong dimension and sizes that are not positive. */
final class Sizes {
    private Sizes() {}

    static void length(String key, Quantity length) {
        require(key, length, Dimension.LENGTH);
    }

    static void volume(String key, Quantity volume) {
        require(key, volume, Dimension.VOLUME);
    }

    static void mass(String key, Quantity mass) {
        require(key, mass, Dimension.MASS);
    }

    static void pressure(String key, Quantity pressure) {
        require(key, pressure, Dimension.GAUGE_PRESSURE);
    }

    private static void require(String key, Quantity size, Dimension dimension) {
        if (size.dimension() != dimension) {
            throw new IllegalArgumentException(
                    key + " '" + size + "' is not " + dimension.phrase() + ".");
        }
        if (!(size.value() > 0)) {
            throw new ImpossibleVehicleException(
                    key,
                    "'" + size + "' is not possible",
                    "more than zero",
                    "check the number, or take the line out if the value is unknown");
        }
    }
}
