package org.fandown.braking;

import java.util.Optional;
import org.fandown.units.Force;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/**
 * The brake of one wheel at one moment: from the pressures in its chambers and the travel of its
 * push rod to the force at the tyre.
 *
 * <p>Service and spring force add up on the push rod, less what the return spring takes. Rests on
 * the same {@link Assumption}s as {@link BrakingEstimate}. Immutable.
 */
public final class WheelBrake {
    private final BrakeModel model;
    private final SpringBrake spring;

    private WheelBrake(BrakeModel model) {
        this.model = model;
        this.spring = SpringBrake.of(model.curve().area());
    }

    /** Returns the brake of a wheel, empty if it has none or no force of it is known. */
    public static Optional<WheelBrake> of(Vehicle vehicle, WheelId wheel) {
        WheelModels models =
                new WheelModels(vehicle, Assumption.MEASURED_AT.number(), new Assumed());
        return models.of(wheel, Optional.empty()) instanceof BrakeModel brake
                ? Optional.of(new WheelBrake(brake))
                : Optional.empty();
    }

    /** Returns whether a spring holds the wheel when parked. */
    public boolean hasSpring() {
        return model.parking() == BrakeModel.Parking.SPRING;
    }

    /**
     * Returns the force at the tyre while the linings touch.
     *
     * @param service pressure in the service chamber
     * @param hold pressure that holds the spring back; of no effect without a spring
     * @param sound part of the spring's force that is left, 0 to 1
     * @param stroke travel of the push rod
     */
    public Force atTyre(GaugePressure service, GaugePressure hold, double sound, Length stroke) {
        double inches = stroke.inInches();
        double push =
                model.curve().gross(service.inPsi(), inches)
                        + spring(hold.inPsi(), sound, inches)
                        - model.curve().returnSpring();
        return Force.ofPoundsForce(model.brake().atTyre(Math.max(0, push)));
    }

    private double spring(double psi, double sound, double inches) {
        if (!hasSpring() || model.curve().isBottomed(inches)) {
            return 0;
        }
        return Math.max(0, sound * spring.force(inches) - psi * model.curve().area());
    }
}
