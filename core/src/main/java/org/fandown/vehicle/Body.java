package org.fandown.vehicle;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * What is fitted to a unit apart from its brakes.
 *
 * @param odometer whether an odometer is fitted
 * @param seats the number of seats, the driver's included; empty if unknown
 * @param chassis the chassis it is built on, empty if unknown
 */
public record Body(boolean odometer, OptionalInt seats, Optional<Chassis> chassis) {

    /** The most seats a file can give. */
    public static final int MOST_SEATS = 400;

    /** Refuses a number of seats outside 1 to {@value #MOST_SEATS}. */
    public Body {
        if (seats.isPresent() && (seats.getAsInt() < 1 || seats.getAsInt() > MOST_SEATS)) {
            throw new ImpossibleVehicleException(
                    "seats",
                    seats.getAsInt() + " seats are not possible",
                    "1 to " + MOST_SEATS,
                    "count the seats, the driver's included");
        }
    }
}
