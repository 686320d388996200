package org.fandown.practice;

import org.fandown.units.Unit;
import org.fandown.vehicle.Axle;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/** The mass of the vehicle and what of it rests on each axle, kg. */
final class VehicleWeight {
    private final double[] axles;
    private final double sum;

    VehicleWeight(Vehicle vehicle) {
        axles = new double[vehicle.axleCount()];
        double all = 0;
        for (int i = 0; i < axles.length; i++) {
            axles[i] = load(vehicle.axle(i + 1));
            all += axles[i];
        }
        sum = all;
    }

    private static double load(Axle axle) {
        return axle.load()
                .or(axle::grossMass)
                .map(mass -> mass.valueIn(Unit.KILOGRAM))
                .orElse(PracticeDefault.AXLE_LOAD.number());
    }

    double kilograms() {
        return sum;
    }

    double onAxle(int number) {
        return axles[number - 1];
    }

    double onWheel(WheelId wheel) {
        return onAxle(wheel.axle()) / 2;
    }
}
