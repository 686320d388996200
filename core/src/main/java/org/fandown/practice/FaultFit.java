package org.fandown.practice;

import java.util.ArrayList;
import java.util.List;
import org.fandown.air.AirSetup;
import org.fandown.air.AirSystem;
import org.fandown.air.Fault;
import org.fandown.air.FaultCase;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/** Which faults a vehicle can have: those of parts that it has. */
public final class FaultFit {
    private FaultFit() {}

    /**
     * Returns the faults that a vehicle can have, in the order of the catalogue.
     *
     * @param vehicle the vehicle
     * @throws IllegalArgumentException if it has no air system
     */
    public static List<Fault> of(Vehicle vehicle) {
        AirSystem sound = AirSystem.of(vehicle, AirSetup.SOUND);
        if (sound.volumes().isEmpty()) {
            throw new IllegalArgumentException("'" + vehicle.name() + "' has no air system.");
        }
        List<Fault> possible = new ArrayList<>();
        for (Fault fault : Fault.values()) {
            if (isPossible(vehicle, fault)) {
                possible.add(fault);
            }
        }
        return possible;
    }

    private static boolean isPossible(Vehicle vehicle, Fault fault) {
        if (!fault.atWheel()) {
            return FaultCase.of(fault).refusal(vehicle).isEmpty();
        }
        for (WheelId wheel : vehicle.wheels()) {
            if (FaultCase.at(fault, wheel.toString()).refusal(vehicle).isEmpty()) {
                return true;
            }
        }
        return false;
    }
}
