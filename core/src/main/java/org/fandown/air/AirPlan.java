package org.fandown.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.air.AirSetup.Defect;
import org.fandown.units.GaugePressure;
import org.fandown.vehicle.UnitKind;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;
import org.fandown.vehicle.WheelId;

/** Lays out the whole air system of a vehicle. */
final class AirPlan {
    final AirNetwork network;
    final AfterStepList elements;
    final SupplyPart supply;
    final ServicePart service;
    final AirMemory primaryNeedle;
    final AirMemory secondaryNeedle;
    final AirMemory lowAir;
    final AirMemory stopLamp;
    final AirMemory pumped;
    final Optional<ParkingPart> parking;
    final List<BrakeEnd> brakes = new ArrayList<>();
    final boolean tows;
    final List<AirOutlet.Spec> outlets;
    private final Plumbing parts;
    private final Vehicle vehicle;

    AirPlan(Vehicle vehicle, AirSetup setup, Ambient ambient) {
        this.vehicle = vehicle;
        parts = new Plumbing(ambient, setup);
        VehicleUnit unit = vehicle.powerUnit();
        List<BrakeGroup> front = BrakeGroup.front(vehicle, unit, setup);
        List<BrakeGroup> rear = BrakeGroup.rear(vehicle, unit, setup, "rear");
        supply = new SupplyPart(parts, unit, chambers(front) + chambers(rear));
        service = new ServicePart(parts, supply);
        tows = tows();
        boolean springs =
                front.stream().anyMatch(BrakeGroup::hasSprings)
                        || rear.stream().anyMatch(BrakeGroup::hasSprings);
        parking =
                springs || tows
                        ? Optional.of(new ParkingPart(parts, supply, service, tows))
                        : Optional.empty();
        front.forEach(group -> springs(group, service.addFront(group)));
        rear.forEach(group -> springs(group, service.addRear(group)));
        service.addBoosters(unit);
        if (tows) {
            parking.ifPresent(part -> addTowed(part.addLines()));
        }
        primaryNeedle = parts.network.memory("primary-needle", 0);
        secondaryNeedle = parts.network.memory("secondary-needle", 0);
        lowAir = parts.network.memory("low-air", 0);
        stopLamp = parts.network.memory("stop-lamp", 0);
        pumped = parts.network.memory("pumped", 0);
        supply.addInstruments(primaryNeedle, secondaryNeedle, lowAir);
        addStopLamp();
        brakes.addAll(0, all(rear));
        brakes.addAll(0, all(front));
        addFittings();
        parts.addFaults();
        setup.wheels().forEach(this::requireWheel);
        outlets = List.copyOf(parts.outlets);
        network = parts.network.build();
        elements = new AfterStepList(parts.elements, supply.compressor, pumped);
    }

    private void addFittings() {
        if (!brakes.isEmpty()) {
            parts.fitted("brake-chamber");
        }
        if (vehicle.powerUnit().abs().orElse(false)) {
            parts.fitted("abs-lamp");
        }
        if (vehicle.towedUnits().stream().anyMatch(unit -> unit.abs().orElse(false))) {
            parts.fitted("trailer-abs-lamp");
        }
    }

    private void requireWheel(WheelId wheel, WheelSetup state) {
        Optional<BrakeEnd> brake =
                brakes.stream().filter(end -> end.wheel.equals(wheel)).findFirst();
        require(wheel, brake.isPresent(), "chamber");
        boolean sprung = brake.map(end -> end.hasSpring).orElse(false);
        require(wheel, state.spring().isEmpty() || sprung, "spring brake");
        if (state.chamber().isPresent() && brake.map(BrakeEnd::isAsFiled).orElse(false)) {
            throw new IllegalArgumentException(
                    "The chamber at "
                            + wheel
                            + " is a "
                            + state.chamber().get().text()
                            + " already; choose another type.");
        }
    }

    private static void require(WheelId wheel, boolean found, String what) {
        if (!found) {
            throw new IllegalArgumentException(
                    "This vehicle has no " + what + " at " + wheel + ".");
        }
    }

    /** Whether a volume is under pressure when all is charged and nobody brakes. */
    boolean holdsAirAtRest(AirNode node) {
        String name = node.name();
        return node.equals(supply.supply)
                || node.equals(supply.primary)
                || node.equals(supply.secondary)
                || name.equals("parking")
                || name.equals("dash")
                || name.equals("park-line")
                || name.endsWith(".reservoir")
                || name.startsWith("supply-line-")
                || name.endsWith("spring");
    }

    /** Pushes the knobs in if the pressure keeps them there. */
    void pushKnobs(AirState state, GaugePressure pressure) {
        boolean stays = pressure.inPsi() >= parts.setup.value(AirDefault.KNOB_HOLD);
        parking.ifPresent(
                part -> {
                    state.remember(part.parkingKnob, stays ? 1 : 0);
                    state.remember(part.trailerKnob, stays ? 1 : 0);
                });
    }

    private static double chambers(List<BrakeGroup> groups) {
        double sum = 0;
        for (BrakeGroup group : groups) {
            sum += group.ratedCubicInches();
        }
        return sum;
    }

    private static List<BrakeEnd> all(List<BrakeGroup> groups) {
        return groups.stream().flatMap(group -> group.ends().stream()).toList();
    }

    private boolean tows() {
        return vehicle.powerUnit().kind() == UnitKind.TRACTOR
                || vehicle.towedUnits().stream().anyMatch(VehicleUnit::hasAirBrakes);
    }

    private void springs(BrakeGroup group, AirNode manifold) {
        parking.ifPresent(part -> part.addSprings(group, manifold));
    }

    /** Couples the towed units one behind the other, up to the first without air brakes. */
    private void addTowed(GladHands.Lines lines) {
        GladHands.Lines front = lines;
        int number = 1;
        for (VehicleUnit unit : vehicle.towedUnits()) {
            if (!unit.hasAirBrakes()) {
                return;
            }
            number++;
            TowedPart towed = new TowedPart(parts, vehicle, unit, number);
            brakes.addAll(towed.brakes());
            parts.elements.add(new GladHands(parts, number - 1, front, towed.lines));
            front = towed.lines;
        }
    }

    private void addStopLamp() {
        if (!parts.setup.has(Defect.STOP_LAMP_SWITCH_DEAD)) {
            parts.elements.add(
                    new PressureSwitch(
                            service.primaryDelivery,
                            service.secondaryDelivery,
                            stopLamp,
                            parts.absolute(AirDefault.STOP_LAMP),
                            false));
        }
    }
}
