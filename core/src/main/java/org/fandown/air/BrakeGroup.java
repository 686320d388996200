package org.fandown.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.vehicle.Axle;
import org.fandown.vehicle.AxlePosition;
import org.fandown.vehicle.Side;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;
import org.fandown.vehicle.WheelEnd;
import org.fandown.vehicle.WheelId;

/**
 * The brakes one valve serves: those of up to two axles.
 *
 * @param name name of the group, unique
 * @param ends its chambers
 */
record BrakeGroup(String name, List<BrakeEnd> ends) {
    private static final int AXLES_OF_A_VALVE = 2;

    boolean hasSprings() {
        return ends.stream().anyMatch(end -> end.hasSpring);
    }

    double ratedCubicInches() {
        double sum = 0;
        for (BrakeEnd end : ends) {
            sum += end.ratedCubicInches();
        }
        return sum;
    }

    /** Returns the brakes of a unit's steering axles, in one group or none. */
    static List<BrakeGroup> front(Vehicle vehicle, VehicleUnit unit, AirSetup setup) {
        return of(vehicle, unit, setup, "front", true);
    }

    /** Returns the brakes of a unit's other axles, two axles to a group. */
    static List<BrakeGroup> rear(Vehicle vehicle, VehicleUnit unit, AirSetup setup, String name) {
        return of(vehicle, unit, setup, name, false);
    }

    private static List<BrakeGroup> of(
            Vehicle vehicle, VehicleUnit unit, AirSetup setup, String name, boolean steer) {
        List<BrakeGroup> groups = new ArrayList<>();
        List<BrakeEnd> ends = new ArrayList<>();
        int axles = 0;
        int number = vehicle.firstAxleOf(unit);
        for (Axle axle : unit.axles()) {
            if ((axle.position() == AxlePosition.STEER) == steer) {
                List<BrakeEnd> both = ends(number, axle, setup);
                ends.addAll(both);
                axles += both.isEmpty() ? 0 : 1;
                if (axles == AXLES_OF_A_VALVE) {
                    groups.add(new BrakeGroup(name + number(groups), List.copyOf(ends)));
                    ends.clear();
                    axles = 0;
                }
            }
            number++;
        }
        if (!ends.isEmpty()) {
            groups.add(new BrakeGroup(name + number(groups), List.copyOf(ends)));
        }
        return groups;
    }

    private static String number(List<BrakeGroup> before) {
        return before.isEmpty() ? "" : "-" + (before.size() + 1);
    }

    private static List<BrakeEnd> ends(int number, Axle axle, AirSetup setup) {
        List<BrakeEnd> ends = new ArrayList<>();
        for (Side side : Side.values()) {
            WheelEnd end = axle.end(side);
            WheelId wheel = new WheelId(number, side);
            Optional.of(end)
                    .flatMap(WheelEnd::chamber)
                    .ifPresent(chamber -> ends.add(new BrakeEnd(wheel, end, chamber, setup)));
        }
        return ends;
    }

    /** Adds the service chambers behind a manifold. */
    void addService(Plumbing parts, AirNode manifold) {
        for (BrakeEnd end : ends) {
            AirNode chamber = parts.chamber(end.serviceName(), end.serviceLaw());
            parts.way("hose-" + end.serviceName(), manifold, chamber, AirDefault.HOSE_WAY);
        }
    }

    /** Adds the spring chambers behind a manifold. */
    void addSprings(Plumbing parts, AirNode manifold) {
        for (BrakeEnd end : ends) {
            if (end.hasSpring) {
                AirNode chamber = parts.chamber(end.springName(), end.springLaw());
                parts.way("hose-" + end.springName(), manifold, chamber, AirDefault.HOSE_WAY);
            }
        }
    }
}
