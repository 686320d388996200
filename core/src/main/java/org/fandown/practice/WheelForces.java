package org.fandown.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.air.AirSystem;
import org.fandown.braking.WheelBrake;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.vehicle.BrakePower;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/** What all brakes of a vehicle hold, from the state of its air system. */
final class WheelForces {
    private static final double GRAVITY = 9.80665;
    private static final GaugePressure NONE = GaugePressure.ofPsi(0);

    /** A push rod this near to its free stroke has brought the linings to the drum, in. */
    private static final double TOUCHING = 0.01;

    private final AirSystem air;
    private final VehicleWeight weight;
    private final List<Wheel> wheels = new ArrayList<>();
    private final boolean hydraulic;
    private boolean handBrake;

    private record Wheel(
            WheelId id, WheelBrake brake, Length free, double springLeft, double road) {}

    WheelForces(Vehicle vehicle, AirSystem air, VehicleWeight weight) {
        this.air = air;
        this.weight = weight;
        hydraulic = vehicle.powerUnit().brakes() == BrakePower.AIR_OVER_HYDRAULIC;
        for (WheelId id : vehicle.wheels()) {
            Optional<WheelBrake> brake = WheelBrake.of(vehicle, id);
            Optional<Length> free = air.freeStroke(id);
            if (brake.isPresent() && free.isPresent()) {
                double road = PracticeDefault.ROAD_FRICTION.number() * weight.onWheel(id) * GRAVITY;
                double left = air.springLeft(id);
                wheels.add(new Wheel(id, brake.get(), free.get(), left, road));
            }
        }
    }

    /** Sets or releases a parking brake that is worked without air. */
    void handBrake(boolean set) {
        handBrake = set;
    }

    boolean handBrake() {
        return handBrake;
    }

    /** What the brakes hold now, N. */
    double newtons() {
        double sum = 0;
        for (Wheel wheel : wheels) {
            sum += Math.min(wheel.road(), newtons(wheel));
        }
        return sum + withoutChambers();
    }

    private double newtons(Wheel wheel) {
        Length stroke = air.pushRod(wheel.id()).orElse(wheel.free());
        if (stroke.inInches() < wheel.free().inInches() - TOUCHING) {
            return 0;
        }
        GaugePressure service = air.find(wheel.id() + ".service").orElse(NONE);
        GaugePressure hold = air.find(wheel.id() + ".spring").orElse(NONE);
        return wheel.brake().atTyre(service, hold, wheel.springLeft(), stroke).newtons();
    }

    private double withoutChambers() {
        double newtons = weight.kilograms() * GRAVITY;
        double held = handBrake ? PracticeDefault.MECHANICAL_PARKING.number() * newtons : 0;
        if (hydraulic) {
            double psi =
                    (booster("primary-booster").inPsi() + booster("secondary-booster").inPsi()) / 2;
            held += PracticeDefault.HYDRAULIC.number() * newtons * Math.min(1, psi / 100);
        }
        return held;
    }

    private GaugePressure booster(String name) {
        return air.find(name).orElse(NONE);
    }
}
