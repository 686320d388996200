package org.fandown.vehicle;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fandown.units.Quantity;

/**
 * The air compressor of a powered unit.
 *
 * @param displacement the volume swept in one turn of the compressor, empty if unknown
 * @param driveRatio turns of the compressor for one turn of the engine, empty if unknown; 0.1 to 5
 */
public record Compressor(Optional<Quantity> displacement, OptionalDouble driveRatio) {

    static final double LEAST_RATIO = 0.1;
    static final double GREATEST_RATIO = 5;

    /** Refuses a displacement no compressor has and a ratio outside 0.1 to 5. */
    public Compressor {
        displacement.ifPresent(size -> Sizes.volume("displacement", size));
        if (driveRatio.isPresent()) {
            double ratio = driveRatio.getAsDouble();
            if (!(ratio >= LEAST_RATIO && ratio <= GREATEST_RATIO)) {
                throw new ImpossibleVehicleException(
                        "drive-ratio",
                        "compressor turns for one engine turn are out of range",
                        "0.1 to 5",
                        "give the turns of the compressor for one turn of the engine");
            }
        }
    }
}
