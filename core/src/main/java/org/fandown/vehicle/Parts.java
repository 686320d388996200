package org.fandown.vehicle;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/** Finds the parts of a vehicle. */
final class Parts {
    private final EnumSet<Part> found = EnumSet.noneOf(Part.class);

    private Parts() {}

    static Set<Part> of(Vehicle vehicle) {
        Parts parts = new Parts();
        for (VehicleUnit unit : vehicle.units()) {
            parts.addUnit(unit);
            for (Axle axle : unit.axles()) {
                parts.addEnd(unit, axle.left());
                parts.addEnd(unit, axle.right());
            }
        }
        return Collections.unmodifiableSet(parts.found);
    }

    private void addUnit(VehicleUnit unit) {
        found.add(
                switch (unit.kind()) {
                    case TRUCK -> Part.TRUCK;
                    case TRACTOR -> Part.TRACTOR;
                    case BUS -> Part.BUS;
                    case TRAILER -> Part.TRAILER;
                    case DOLLY -> Part.DOLLY;
                });
        add(unit.hasAirBrakes(), Part.AIR_BRAKES);
        add(unit.hasAirBrakes() && !unit.isPowered(), Part.AIR_BRAKED_TRAILER);
        add(unit.brakes() == BrakePower.AIR_OVER_HYDRAULIC, Part.AIR_OVER_HYDRAULIC);
        add(unit.abs().orElse(false), Part.ABS);
        add(unit.hasOdometer(), Part.ODOMETER);
        unit.air().kind().ifPresent(this::addSupply);
        boolean supply = unit.reservoirs().stream().anyMatch(r -> r.role() == ReservoirRole.SUPPLY);
        add(supply, Part.SUPPLY_RESERVOIR);
    }

    private void addSupply(SupplyKind kind) {
        found.add(
                switch (kind) {
                    case SUPPLY_RESERVOIR -> Part.SUPPLY_RESERVOIR;
                    case INTEGRATED_DRYER_UNIT -> Part.INTEGRATED_DRYER_UNIT;
                });
    }

    private void addEnd(VehicleUnit unit, WheelEnd end) {
        add(end.springBrake(), Part.SPRING_BRAKES);
        add(end.springBrake() && !unit.isPowered(), Part.TRAILER_SPRING_BRAKES);
        add(end.brake() == BrakeKind.DRUM, Part.DRUM_BRAKES);
        add(end.brake() == BrakeKind.DISC, Part.DISC_BRAKES);
        add(end.brake() == BrakeKind.WEDGE, Part.WEDGE_BRAKES);
        end.adjuster().ifPresent(this::addAdjuster);
        end.chamber().ifPresent(c -> add(c.longStroke(), Part.LONG_STROKE_CHAMBERS));
    }

    private void addAdjuster(Adjuster adjuster) {
        add(adjuster == Adjuster.MANUAL, Part.MANUAL_ADJUSTERS);
        add(adjuster == Adjuster.AUTOMATIC, Part.AUTOMATIC_ADJUSTERS);
    }

    private void add(boolean present, Part part) {
        if (present) {
            found.add(part);
        }
    }
}
