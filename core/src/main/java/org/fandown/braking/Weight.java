package org.fandown.braking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.Axle;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;

/** The weight of the whole vehicle (lbf), and of each axle where known; otherwise no axles. */
record Weight(double pounds, List<Double> axles) {
    Weight {
        axles = List.copyOf(axles);
    }

    static Answer<Weight> of(Vehicle vehicle, Assumed assumed) {
        Optional<List<Double>> axles = axleLoads(vehicle, assumed);
        if (axles.isPresent()) {
            double sum = 0;
            for (double load : axles.get()) {
                sum += load;
            }
            return Answer.known(new Weight(sum, axles.get()));
        }
        double sum = 0;
        for (VehicleUnit unit : vehicle.units()) {
            if (unit.grossMass().isEmpty()) {
                return Answer.unknown(
                        "the weight is not known; give 'load' or 'gross-mass' of every axle, or"
                                + " 'gross-mass' of every unit");
            }
            sum += unit.grossMass().get().valueIn(Unit.POUND);
        }
        assumed.note(
                vehicle.isCombination()
                        ? Assumption.WEIGHT_FROM_UNIT_RATINGS
                        : Assumption.WEIGHT_FROM_GROSS_RATING);
        return Answer.known(new Weight(sum, List.of()));
    }

    private static Optional<List<Double>> axleLoads(Vehicle vehicle, Assumed assumed) {
        List<Double> loads = new ArrayList<>();
        boolean rated = false;
        for (Axle axle : vehicle.axles()) {
            Optional<Quantity> load = axle.load().isPresent() ? axle.load() : axle.grossMass();
            if (load.isEmpty()) {
                return Optional.empty();
            }
            rated |= axle.load().isEmpty();
            loads.add(load.get().valueIn(Unit.POUND));
        }
        if (rated) {
            assumed.note(Assumption.WEIGHT_FROM_AXLE_RATINGS);
        }
        return Optional.of(loads);
    }

    /** What the road lets pass of the axles' forces. */
    Span throughRoad(List<Span> axleForces, double roadFriction) {
        if (axles.isEmpty()) {
            return Span.sum(axleForces).atMost(roadFriction * pounds);
        }
        List<Span> passed = new ArrayList<>();
        for (int i = 0; i < axles.size(); i++) {
            passed.add(axleForces.get(i).atMost(roadFriction * axles.get(i)));
        }
        return Span.sum(passed);
    }
}
