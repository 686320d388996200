package org.fandown.air;

import java.util.List;
import java.util.Optional;
import org.fandown.units.Quantity;
import org.fandown.vehicle.AirSupply;
import org.fandown.vehicle.Axle;
import org.fandown.vehicle.AxlePosition;
import org.fandown.vehicle.BrakeKind;
import org.fandown.vehicle.BrakePower;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.Reservoir;
import org.fandown.vehicle.ReservoirRole;
import org.fandown.vehicle.SupplyKind;
import org.fandown.vehicle.TrailerForm;
import org.fandown.vehicle.UnitKind;
import org.fandown.vehicle.Use;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;
import org.fandown.vehicle.WheelEnd;

/** Vehicles of our own invention to run air systems of. */
public final class AirVehicles {
    private AirVehicles() {}

    /** A tractor of three axles: 5568 in3 of reservoirs, twelve times its chambers. */
    public static Vehicle tractor() {
        return vehicle("Tractor 5", tractorUnit());
    }

    /** The tractor with a semitrailer of two axles: ten brakes. */
    public static Vehicle tractorTrailer() {
        return vehicle("Tractor 5 with trailer 6", tractorUnit(), trailer("6", 2, true));
    }

    /** The tractor with two semitrailers, the second on a dolly. */
    public static Vehicle doubles() {
        VehicleUnit dolly =
                VehicleUnit.builder(UnitKind.DOLLY, "8")
                        .axle(axle(AxlePosition.TRAILER, 30, true))
                        .build();
        return vehicle(
                "Tractor 5 with two trailers",
                tractorUnit(),
                trailer("6", 2, true),
                dolly,
                trailer("9", 1, true));
    }

    /** A truck of two axles with a full trailer without spring brakes. */
    public static Vehicle truckFullTrailer() {
        return vehicle(
                "Truck 3 with trailer 4",
                truckUnit(SupplyKind.SUPPLY_RESERVOIR),
                trailer("4", 4, false));
    }

    /** A truck of two axles with an integrated dryer unit; sizes not given. */
    public static Vehicle integratedTruck() {
        return vehicle("Truck 3", truckUnit(SupplyKind.INTEGRATED_DRYER_UNIT));
    }

    /** A bus of two axles whose parking brakes have a reservoir of their own. */
    public static Vehicle bus() {
        VehicleUnit unit =
                VehicleUnit.builder(UnitKind.BUS, "7")
                        .air(
                                supply(
                                        reservoir(ReservoirRole.SUPPLY, "1200 in3"),
                                        reservoir(ReservoirRole.PRIMARY, "1800 in3"),
                                        reservoir(ReservoirRole.SECONDARY, "1800 in3"),
                                        reservoir(ReservoirRole.PARKING, "600 in3")))
                        .axle(axle(AxlePosition.STEER, 20, false))
                        .axle(axle(AxlePosition.DRIVE, 30, true))
                        .build();
        return new Vehicle("Bus 7", Use.PASSENGER, List.of(unit));
    }

    /** A truck whose air works hydraulic brakes. */
    public static Vehicle hydraulicTruck() {
        VehicleUnit unit =
                VehicleUnit.builder(UnitKind.TRUCK, "2")
                        .brakes(BrakePower.AIR_OVER_HYDRAULIC)
                        .axle(Axle.of(AxlePosition.STEER, WheelEnd.of(BrakeKind.DISC)))
                        .axle(Axle.of(AxlePosition.DRIVE, WheelEnd.of(BrakeKind.DRUM)))
                        .build();
        return vehicle("Truck 2", unit);
    }

    /** All of them. */
    public static List<Vehicle> all() {
        return List.of(
                tractor(),
                tractorTrailer(),
                doubles(),
                truckFullTrailer(),
                integratedTruck(),
                bus(),
                hydraulicTruck());
    }

    private static Vehicle vehicle(String name, VehicleUnit... units) {
        return new Vehicle(name, Use.PROPERTY, List.of(units));
    }

    private static VehicleUnit tractorUnit() {
        return VehicleUnit.builder(UnitKind.TRACTOR, "5")
                .abs(true)
                .air(
                        supply(
                                reservoir(ReservoirRole.SUPPLY, "1368 in3"),
                                reservoir(ReservoirRole.PRIMARY, "2200 in3"),
                                reservoir(ReservoirRole.SECONDARY, "2000 in3")))
                .axle(axle(AxlePosition.STEER, 20, false))
                .axle(axle(AxlePosition.DRIVE, 30, true))
                .axle(axle(AxlePosition.DRIVE, 30, true))
                .build();
    }

    private static VehicleUnit truckUnit(SupplyKind kind) {
        return VehicleUnit.builder(UnitKind.TRUCK, "3")
                .air(
                        new AirSupply(
                                Optional.of(kind),
                                List.of(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty()))
                .axle(axle(AxlePosition.STEER, 20, false))
                .axle(axle(AxlePosition.DRIVE, 30, true))
                .build();
    }

    private static VehicleUnit trailer(String id, int axles, boolean springs) {
        var unit =
                VehicleUnit.builder(UnitKind.TRAILER, id)
                        .form(springs ? TrailerForm.SEMI : TrailerForm.FULL)
                        .abs(springs);
        for (int i = 0; i < axles; i++) {
            unit.axle(axle(AxlePosition.TRAILER, 30, springs));
        }
        return unit.build();
    }

    private static AirSupply supply(Reservoir... reservoirs) {
        return new AirSupply(
                Optional.of(SupplyKind.SUPPLY_RESERVOIR),
                List.of(reservoirs),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Reservoir reservoir(ReservoirRole role, String volume) {
        return new Reservoir(role, Optional.of(Quantity.parse(volume)));
    }

    private static Axle axle(AxlePosition position, int type, boolean spring) {
        return Axle.of(position, WheelEnd.of(BrakeKind.DRUM, Chamber.clamp(type), spring));
    }
}
