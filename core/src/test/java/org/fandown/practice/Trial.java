package org.fandown.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.fandown.air.AirControls;
import org.fandown.air.AirControls.Knob;
import org.fandown.air.AirOutlet;
import org.fandown.air.AirOutlet.Kind;
import org.fandown.air.AirSetup;
import org.fandown.air.AirSystem;
import org.fandown.air.InCab;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.units.RotationalSpeed;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;
import org.fandown.vehicle.WheelId;

/**
 * A vehicle with its faults, on which procedures are tried; each starts from a fresh system.
 *
 * @param vehicle the vehicle
 * @param setup what is wrong with it
 */
record Trial(Vehicle vehicle, AirSetup setup) {
    /** The least flow of air that a person near it hears, kg/s: a hole of some 0.3 mm. */
    static final double HEARD = 1e-4;

    InCab cab() {
        return new InCab(vehicle, setup);
    }

    AirSystem charged(double psi) {
        return cab().charged(psi);
    }

    /** Number of units of the combination that air brakes work. */
    int units() {
        return 1 + (int) vehicle.towedUnits().stream().filter(VehicleUnit::hasAirBrakes).count();
    }

    boolean tows() {
        return units() > 1;
    }

    static double psi(AirSystem system, String volume) {
        return system.find(volume).map(GaugePressure::inPsi).orElse(0.0);
    }

    static boolean has(AirSystem system, String volume) {
        return system.find(volume).isPresent();
    }

    static double rod(AirSystem system, WheelId wheel) {
        return system.pushRod(wheel).map(Length::inInches).orElse(0.0);
    }

    /** Wheels of the powered unit with a chamber, or those of the towed units. */
    List<WheelId> wheels(AirSystem system, boolean powered) {
        int last = vehicle.powerUnit().axles().size();
        return system.wheels().stream().filter(w -> (w.axle() <= last) == powered).toList();
    }

    static List<WheelId> sprung(AirSystem system) {
        return system.wheels().stream().filter(w -> has(system, w + ".spring")).toList();
    }

    /** The names of the ways that can be heard now, drains and couplings as well. */
    static List<String> heard(AirSystem system) {
        List<String> heard = new ArrayList<>();
        for (AirOutlet way : system.outlets()) {
            if (way.kind() != Kind.SEEP && way.kilogramsPerSecond() > HEARD) {
                heard.add(way.name());
            }
        }
        return heard;
    }

    static void run(AirSystem system, double rpm) {
        system.control(system.controls().withEngine(RotationalSpeed.ofRpm(rpm)));
    }

    static void foot(AirSystem system, double travel) {
        system.control(system.controls().withFoot(travel));
    }

    static void hand(AirSystem system, double travel) {
        system.control(system.controls().withHand(travel));
    }

    static void drain(AirSystem system, String... reservoirs) {
        system.control(system.controls().withDrains(Set.of(reservoirs)));
    }

    /** Does something to both knobs and leaves them alone. */
    static void knobs(AirSystem system, Knob parking, Knob trailer) {
        AirControls before = system.controls();
        system.control(before.withParking(parking).withTrailer(trailer));
        system.advance(1);
        system.control(before);
    }
}
