package org.fandown.property.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.fandown.air.AirControls;
import org.fandown.air.AirControls.Coupling;
import org.fandown.air.AirControls.Knob;
import org.fandown.air.AirSetup;
import org.fandown.air.AirSystem;
import org.fandown.air.Fault;
import org.fandown.air.FaultCase;
import org.fandown.units.GaugePressure;
import org.fandown.units.Quantity;
import org.fandown.units.RotationalSpeed;
import org.fandown.vehicle.AirSupply;
import org.fandown.vehicle.Axle;
import org.fandown.vehicle.AxlePosition;
import org.fandown.vehicle.BrakeKind;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.Reservoir;
import org.fandown.vehicle.ReservoirRole;
import org.fandown.vehicle.SupplyKind;
import org.fandown.vehicle.TrailerForm;
import org.fandown.vehicle.UnitKind;
import org.fandown.vehicle.Use;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;
import org.fandown.vehicle.VehicleUnitBuilder;
import org.fandown.vehicle.WheelEnd;

/** A whole vehicle drawn by lot, with up to two faults, and a person who does anything to it. */
final class RandomDrive {
    private static final int[] TYPES = {9, 12, 16, 20, 24, 30, 36};
    private static final int MOST_FAULTS = 2;

    final Vehicle vehicle;
    final AirSetup setup;
    final double psi;
    private final SplittableRandom lot;
    private final List<FaultCase> faults = new ArrayList<>();

    RandomDrive(long seed) {
        lot = new SplittableRandom(seed);
        vehicle = vehicle();
        setup = setup();
        psi = lot.nextDouble(0, 130);
    }

    /** Makes the air system, filled to a pressure drawn by lot. */
    AirSystem system() {
        AirSystem system = AirSystem.of(vehicle, setup);
        system.fill(GaugePressure.ofPsi(psi));
        return system;
    }

    private Vehicle vehicle() {
        UnitKind kind = lot.nextInt(3) == 0 ? UnitKind.TRUCK : UnitKind.TRACTOR;
        List<VehicleUnit> units = new ArrayList<>();
        units.add(lot.nextInt(5) == 0 ? powered(UnitKind.BUS) : powered(kind));
        if (units.get(0).kind() != UnitKind.BUS) {
            int towed = lot.nextInt(3);
            for (int i = 0; i < towed; i++) {
                if (i > 0) {
                    units.add(towed(UnitKind.DOLLY, "D" + i, TrailerForm.SEMI));
                }
                TrailerForm form =
                        i == 0 && lot.nextBoolean() ? TrailerForm.FULL : TrailerForm.SEMI;
                units.add(towed(UnitKind.TRAILER, "R" + i, form));
            }
        }
        return new Vehicle("Drawn by lot", Use.PROPERTY, units);
    }

    private VehicleUnit powered(UnitKind kind) {
        VehicleUnitBuilder unit = VehicleUnit.builder(kind, "P").air(supply());
        unit.axle(axle(AxlePosition.STEER, false));
        int rear = 1 + lot.nextInt(3);
        for (int i = 0; i < rear; i++) {
            unit.axle(axle(AxlePosition.DRIVE, lot.nextInt(4) > 0));
        }
        return unit.build();
    }

    private VehicleUnit towed(UnitKind kind, String id, TrailerForm form) {
        VehicleUnitBuilder unit = VehicleUnit.builder(kind, id);
        if (kind == UnitKind.TRAILER) {
            unit.form(form);
        }
        boolean springs = lot.nextInt(3) > 0;
        int axles = 1 + lot.nextInt(3);
        for (int i = 0; i < axles; i++) {
            unit.axle(axle(AxlePosition.TRAILER, springs));
        }
        return unit.build();
    }

    private Axle axle(AxlePosition position, boolean spring) {
        Chamber chamber = Chamber.clamp(TYPES[lot.nextInt(TYPES.length)]);
        return Axle.of(position, WheelEnd.of(BrakeKind.DRUM, chamber, spring));
    }

    private AirSupply supply() {
        List<Reservoir> reservoirs = new ArrayList<>();
        for (ReservoirRole role :
                List.of(ReservoirRole.SUPPLY, ReservoirRole.PRIMARY, ReservoirRole.SECONDARY)) {
            if (lot.nextBoolean()) {
                reservoirs.add(reservoir(role));
            }
        }
        if (lot.nextInt(3) == 0) {
            reservoirs.add(reservoir(ReservoirRole.PARKING));
        }
        boolean integrated =
                reservoirs.stream().noneMatch(r -> r.role() == ReservoirRole.SUPPLY)
                        && lot.nextBoolean();
        return new AirSupply(
                Optional.of(
                        integrated
                                ? SupplyKind.INTEGRATED_DRYER_UNIT
                                : SupplyKind.SUPPLY_RESERVOIR),
                reservoirs,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private Reservoir reservoir(ReservoirRole role) {
        return new Reservoir(role, Optional.of(Quantity.parse(lot.nextInt(5, 70) + " L")));
    }

    /** Takes faults by lot, and keeps those of parts that this vehicle has. */
    private AirSetup setup() {
        AirSetup drawn = AirSetup.SOUND;
        int count = lot.nextInt(MOST_FAULTS + 1);
        for (int i = 0; i < count; i++) {
            FaultCase fault = fault();
            AirSetup more = fault.in(drawn);
            if (canBe(more)) {
                faults.add(fault);
                drawn = more;
            }
        }
        return drawn;
    }

    private boolean canBe(AirSetup more) {
        try {
            AirSystem.of(vehicle, more);
            return true;
        } catch (IllegalArgumentException missingPart) {
            return false;
        }
    }

    private FaultCase fault() {
        Fault fault = any(Fault.values());
        double least = fault.size().least();
        double most = fault.size().most();
        double size = least < most ? lot.nextDouble(least, most) : least;
        if (fault == Fault.CHAMBER_UNEQUAL) {
            size = fault.size().usual();
        }
        String wheel = 1 + lot.nextInt(vehicle.axleCount()) + (lot.nextBoolean() ? "L" : "R");
        return new FaultCase(fault, size, fault.atWheel() ? wheel : "");
    }

    /** Anything a person can do, whether it makes sense or not. */
    AirControls act() {
        AirControls controls =
                AirControls.NONE
                        .withEngine(RotationalSpeed.ofRpm(lot.nextInt(3) * lot.nextDouble(0, 1250)))
                        .withFoot(travel())
                        .withHand(travel())
                        .withParking(any(Knob.values()))
                        .withTrailer(any(Knob.values()));
        if (lot.nextInt(4) == 0) {
            controls =
                    controls.withDrains(
                            Set.of(any("supply", "primary", "secondary", "unit2.reservoir")));
        }
        return lot.nextInt(3) == 0
                ? controls.withCoupling(1 + lot.nextInt(3), any(Coupling.values()))
                : controls;
    }

    /** How long it is done: most often short, now and then long. */
    double seconds() {
        double part = lot.nextDouble();
        return 0.01 + 4 * part * part * part;
    }

    int acts() {
        return 1 + lot.nextInt(3);
    }

    private double travel() {
        return lot.nextBoolean() ? lot.nextInt(2) : lot.nextDouble();
    }

    @SafeVarargs
    private <T> T any(T... choices) {
        return choices[lot.nextInt(choices.length)];
    }

    @Override
    public String toString() {
        return vehicle + " filled to " + psi + " psi with " + faults;
    }
}
