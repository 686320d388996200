package org.fandown.operator;

import java.util.ArrayList;
import java.util.List;
import org.fandown.practice.Station;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/** The places on the way round a vehicle. */
final class Rounds {
    private Rounds() {}

    /** Where air can be heard: reservoirs, lines and braked wheels, from front to rear. */
    static List<Station> ofAir(Vehicle vehicle) {
        List<Station> all = new ArrayList<>();
        for (int unit = 1; unit <= vehicle.units().size(); unit++) {
            all.add(Station.reservoirs(unit));
            if (unit < vehicle.units().size()) {
                all.add(Station.coupling(unit));
            }
        }
        for (WheelId wheel : vehicle.wheels()) {
            if (vehicle.wheel(wheel).isBraked()) {
                all.add(Station.at(wheel));
            }
        }
        return all;
    }

    /** The places beside the valves of each unit with air brakes. */
    static List<Station> valves(Vehicle vehicle) {
        List<Station> all = new ArrayList<>();
        for (int unit = 1; unit <= vehicle.units().size(); unit++) {
            if (vehicle.units().get(unit - 1).hasAirBrakes() || unit == 1) {
                all.add(Station.reservoirs(unit));
            }
        }
        return all;
    }
}
