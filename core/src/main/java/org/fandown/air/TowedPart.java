package org.fandown.air;

import java.util.List;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;

/** Lines, reservoir and brakes of a towed unit. */
final class TowedPart {
    final GladHands.Lines lines;
    final AirNode reservoir;
    private final Plumbing parts;
    private final String name;
    private final List<BrakeGroup> groups;

    /**
     * Adds a towed unit.
     *
     * @param parts where to
     * @param vehicle the combination
     * @param unit the unit
     * @param number its place in the combination, 2 or more
     */
    TowedPart(Plumbing parts, Vehicle vehicle, VehicleUnit unit, int number) {
        this.parts = parts;
        name = "unit" + number;
        lines =
                new GladHands.Lines(
                        parts.line("supply-line-" + number, AirDefault.SUPPLY_LINE),
                        parts.line("control-line-" + number, AirDefault.CONTROL_LINE));
        groups = BrakeGroup.rear(vehicle, unit, parts.setup, name);
        reservoir = addReservoir(unit);
        boolean springs = groups.stream().anyMatch(BrakeGroup::hasSprings);
        groups.forEach(group -> addBrakes(group, springs));
    }

    List<BrakeEnd> brakes() {
        return groups.stream().flatMap(group -> group.ends().stream()).toList();
    }

    private AirNode addReservoir(VehicleUnit unit) {
        double chambers = 0;
        for (BrakeGroup group : groups) {
            chambers += group.ratedCubicInches();
        }
        ReservoirSizes sizes =
                new ReservoirSizes(unit, chambers, parts.setup.value(AirDefault.TOWED_RATIO));
        AirNode node = parts.reservoir(name + ".reservoir", sizes.towed());
        double shut = parts.setup.value(AirDefault.TOWED_FILL_CLOSE);
        double open = parts.setup.value(AirDefault.TOWED_FILL_OPEN);
        parts.protection("check-" + name, lines.supply(), node, shut, open);
        return node;
    }

    private void addBrakes(BrakeGroup group, boolean unitHasSprings) {
        AirNode manifold = parts.line(group.name() + ".service", AirDefault.SHORT_LINE);
        AirLink relay =
                parts.lapping(
                        "relay-" + group.name(),
                        reservoir,
                        manifold,
                        AirDefault.RELAY_INLET,
                        AirDefault.RELAY_EXHAUST,
                        lines.control());
        parts.elements.add(
                unitHasSprings
                        ? new Follower(
                                relay, lines.control(), parts.pascals(AirDefault.RELAY_CRACK))
                        : new EmergencyRelay(parts, relay, lines));
        group.addService(parts, manifold);
        if (group.hasSprings()) {
            AirNode springs = parts.line(group.name() + ".spring", AirDefault.SHORT_LINE);
            AirLink valve =
                    parts.lapping(
                            "spring-valve-" + group.name(),
                            lines.supply(),
                            springs,
                            AirDefault.KNOB_WAY,
                            AirDefault.RELAY_EXHAUST,
                            lines.supply());
            parts.elements.add(new Follower(valve, lines.supply(), 0));
            group.addSprings(parts, springs);
        }
    }
}
