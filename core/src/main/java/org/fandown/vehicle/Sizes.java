package org.fandown.vehicle;

import org.fandown.units.Dimension;
import org.fandown.units.Quantities;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/** Refuses sizes of the wrong dimension, and sizes no road vehicle has. */
final class Sizes {
    private Sizes() {}

    static void arm(Quantity length) {
        require("arm", length, Unit.MM, 25, 500);
    }

    static void drumRadius(Quantity length) {
        require("drum-radius", length, Unit.MM, 50, 500);
    }

    static void tyreRadius(Quantity length) {
        require("tyre-radius", length, Unit.MM, 100, 2000);
    }

    static void volume(String key, Quantity volume) {
        require(key, volume, Unit.LITRE, 0.01, 10_000);
    }

    static void mass(String key, Quantity mass) {
        require(key, mass, Unit.KILOGRAM, 1, 1_000_000);
    }

    static void pressure(String key, Quantity pressure) {
        require(key, pressure, Unit.KPA, 10, 2000);
    }

    private static void require(
            String key, Quantity size, Unit unit, double least, double greatest) {
        Dimension dimension = unit.dimension();
        if (size.dimension() != dimension) {
            throw new IllegalArgumentException(
                    key + " '" + size + "' is not " + dimension.phrase() + ".");
        }
        double value = size.valueIn(unit);
        if (!(value >= least && value <= greatest)) {
            throw new ImpossibleVehicleException(
                    key,
                    "'" + size + "' is not possible",
                    Quantities.print(least, unit) + " to " + Quantities.print(greatest, unit),
                    "check number and unit, or take the line out if the value is unknown");
        }
    }
}
