package org.fandown.rulebook;

import java.util.ArrayList;
import java.util.List;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/**
 * To which vehicles, and to which of their wheels, a rule applies. All criteria have to hold; a
 * fact the vehicle file does not give makes the answer unknown rather than no.
 *
 * @param vehicleCriteria about the vehicle as a whole
 * @param wheelCriteria about one wheel end, its axle or its unit
 * @param atWheels which wheels the rule's check concerns at all
 */
public record Applies(
        List<Criterion> vehicleCriteria,
        List<WheelCriterion> wheelCriteria,
        WheelCriterion atWheels) {

    /** Copies the lists. */
    public Applies {
        vehicleCriteria = List.copyOf(vehicleCriteria);
        wheelCriteria = List.copyOf(wheelCriteria);
    }

    /** Whether the vehicle as a whole is meant. */
    Fit fit(Vehicle vehicle) {
        Fit fit = Fit.YES;
        for (Criterion criterion : vehicleCriteria) {
            fit = fit.and(criterion.fit(vehicle));
        }
        return fit;
    }

    /** The wheels that are meant; a wheel whose facts are unknown counts as meant. */
    List<WheelId> wheels(Vehicle vehicle) {
        List<WheelId> wheels = new ArrayList<>();
        for (WheelId id : vehicle.wheels()) {
            if (atWheels.fit(vehicle, id).answer() == Fit.Answer.YES
                    && wheelFit(vehicle, id).answer() != Fit.Answer.NO) {
                wheels.add(id);
            }
        }
        return wheels;
    }

    /** Whether one wheel is meant. */
    public Fit wheelFit(Vehicle vehicle, WheelId wheel) {
        Fit fit = Fit.YES;
        for (WheelCriterion criterion : wheelCriteria) {
            fit = fit.and(criterion.fit(vehicle, wheel));
        }
        return fit;
    }

    /** A condition on the vehicle as a whole. */
    @FunctionalInterface
    public interface Criterion {
        /** Whether it holds. */
        Fit fit(Vehicle vehicle);
    }

    /** A condition on one wheel end, its axle or its unit. */
    @FunctionalInterface
    public interface WheelCriterion {
        /** Whether it holds at the wheel, which the vehicle has. */
        Fit fit(Vehicle vehicle, WheelId wheel);
    }
}
