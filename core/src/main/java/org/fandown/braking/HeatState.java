package org.fandown.braking;

import java.util.List;
import org.fandown.units.Quantity;
import org.fandown.vehicle.WheelId;

/**
 * The whole estimate at one temperature of the drums.
 *
 * @param drums temperature of the drums
 * @param wheels wheel by wheel, in the order of the vehicle's wheels
 * @param axles axle by axle
 * @param force brake force of all wheels together (lbf), or why it is not known
 * @param shareOfAdjusted that force as a part of the force of the same vehicle cold and fully
 *     adjusted (percent), or why it is not known
 * @param stop the stop, or why it is not known
 * @param hold what the spring brakes hold, or why it is not known
 */
public record HeatState(
        Quantity drums,
        List<WheelEstimate> wheels,
        List<AxleEstimate> axles,
        Answer<Range> force,
        Answer<Range> shareOfAdjusted,
        Answer<Stop> stop,
        Answer<Hold> hold) {

    /** Copies the lists in. */
    public HeatState {
        wheels = List.copyOf(wheels);
        axles = List.copyOf(axles);
    }

    /**
     * Returns the estimate for one wheel.
     *
     * @throws IllegalArgumentException if the vehicle has no such wheel
     */
    public WheelEstimate wheel(WheelId id) {
        return wheels.stream()
                .filter(estimate -> estimate.wheel().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no wheel " + id + "."));
    }
}
