package org.fandown.air;

import org.fandown.vehicle.Vehicle;

/** Each fault at its usual size, on a vehicle that can have it. */
public final class UsualFaults {
    private static final String DRIVE_WHEEL = "2L";

    private UsualFaults() {}

    /** Returns the fault on {@link #vehicle}. */
    public static FaultCase of(Fault fault) {
        if (fault == Fault.SHUT_OFF_SHUT) {
            return FaultCase.at(fault, "unit3");
        }
        return fault.atWheel() ? FaultCase.at(fault, DRIVE_WHEEL) : FaultCase.of(fault);
    }

    /** Returns the vehicle it is tried on: the combination, unless it has not the part. */
    public static Vehicle vehicle(Fault fault) {
        return switch (fault) {
            case PARKING_RESERVOIR_LEAK, NO_MODULATION -> AirVehicles.bus();
            case BOOSTER_LEAK -> AirVehicles.hydraulicTruck();
            case SHUT_OFF_SHUT -> AirVehicles.doubles();
            default -> AirVehicles.tractorTrailer();
        };
    }
}
