package org.fandown.practice;

import org.fandown.air.AirSystem;
import org.fandown.units.GaugePressure;
import org.fandown.vehicle.VehicleUnit;

/**
 * What really goes on in a practice truck, whether or not anybody can see it: for those who mark a
 * run, never for those who make it.
 *
 * @param compressorPumps whether the governor lets the compressor pump while the engine turns it
 * @param parkingReleased whether the parking brakes are released by their control
 * @param supplyPsi pressure in the supply reservoir, psi; that of the primary one where there is no
 *     supply reservoir
 * @param towedPsi the lowest pressure in a reservoir of a towed unit, psi; 0 if none is towed
 */
public record Inside(
        boolean compressorPumps, boolean parkingReleased, double supplyPsi, double towedPsi) {

    /** Looks inside, now. */
    public static Inside of(PracticeTruck truck) {
        AirSystem air = truck.air();
        boolean released = air.parkingKnobIn().orElse(!truck.brakes.handBrake());
        double supply = air.find("supply").orElse(air.pressure("primary")).inPsi();
        return new Inside(air.compressorLoaded(), released, supply, towed(truck));
    }

    private static double towed(PracticeTruck truck) {
        double lowest = Double.POSITIVE_INFINITY;
        int number = 1;
        for (VehicleUnit unit : truck.vehicle().towedUnits()) {
            number++;
            if (unit.hasAirBrakes()) {
                double psi =
                        truck.air()
                                .find("unit" + number + ".reservoir")
                                .map(GaugePressure::inPsi)
                                .orElse(lowest);
                lowest = Math.min(lowest, psi);
            }
        }
        return lowest == Double.POSITIVE_INFINITY ? 0 : lowest;
    }
}
