package org.fandown.vehicle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fandown.document.MapNode;
import org.fandown.document.Names;
import org.fandown.document.Node;
import org.fandown.document.Tree;
import org.fandown.units.Quantity;

/**
 * Writes a vehicle as the tree of a vehicle file.
 *
 * <p>{@link VehicleReader} reads the tree back to an equal vehicle. Quantities are written as they
 * were entered; what is unknown is left out; a default is written only where it differs.
 */
public final class VehicleDocument {
    private VehicleDocument() {}

    /**
     * Writes a vehicle.
     *
     * @param vehicle the vehicle
     * @return the tree of its file
     */
    public static MapNode toTree(Vehicle vehicle) {
        Tree.ListBuilder units = Tree.list();
        vehicle.units().forEach(unit -> units.add(unit(unit)));
        return Tree.map()
                .put("name", vehicle.name())
                .put("use", vehicle.use())
                .put("units", units)
                .build();
    }

    private static MapNode unit(VehicleUnit unit) {
        Tree.MapBuilder map = Tree.map().put("kind", unit.kind());
        word(map, "form", unit.form());
        map.put("id", unit.id());
        unit.built().ifPresent(date -> map.put("built", date.toString()));
        if (!unit.standards().isEmpty()) {
            map.put("standard", standards(unit.standards()));
        }
        map.put("brakes", unit.brakes());
        unit.abs().ifPresent(fitted -> map.put("abs", fitted));
        quantity(map, "gross-mass", unit.grossMass());
        quantity(map, "registered-mass", unit.registeredMass());
        map.put("odometer", unit.hasOdometer());
        unit.seats().ifPresent(seats -> map.put("seats", seats));
        word(map, "chassis", unit.chassis());
        air(map, unit.air());
        Tree.ListBuilder axles = Tree.list();
        unit.axles().forEach(axle -> axles.add(axle(axle)));
        return map.put("axles", axles).build();
    }

    private static Node standards(Set<BuildStandard> standards) {
        Tree.ListBuilder list = Tree.list();
        standards.forEach(standard -> list.add(Names.kebab(standard)));
        return list.build();
    }

    private static void air(Tree.MapBuilder map, AirSupply air) {
        word(map, "supply", air.kind());
        if (!air.reservoirs().isEmpty()) {
            Tree.ListBuilder list = Tree.list();
            air.reservoirs().forEach(reservoir -> list.add(reservoir(reservoir)));
            map.put("reservoirs", list);
        }
        air.compressor().ifPresent(compressor -> map.put("compressor", compressor(compressor)));
        air.governor().ifPresent(governor -> map.put("governor", governor(governor)));
        word(map, "low-air-warning", air.lowAirWarning());
    }

    private static MapNode reservoir(Reservoir reservoir) {
        Tree.MapBuilder map = Tree.map().put("role", reservoir.role());
        quantity(map, "volume", reservoir.volume());
        return map.build();
    }

    private static MapNode compressor(Compressor compressor) {
        Tree.MapBuilder map = Tree.map();
        quantity(map, "displacement", compressor.displacement());
        compressor.driveRatio().ifPresent(ratio -> map.put("drive-ratio", ratio));
        return map.build();
    }

    private static MapNode governor(Governor governor) {
        Tree.MapBuilder map = Tree.map();
        quantity(map, "cut-in", governor.cutIn());
        quantity(map, "cut-out", governor.cutOut());
        return map.build();
    }

    private static MapNode axle(Axle axle) {
        Tree.MapBuilder map = Tree.map().put("position", axle.position());
        List<EndItem> left = EndItem.of(axle.left());
        List<EndItem> right = EndItem.of(axle.right());
        List<EndItem> both = new ArrayList<>(left);
        both.retainAll(right);
        both.forEach(item -> map.put(item.key(), item.value()));
        left.removeAll(both);
        right.removeAll(both);
        side(map, "left", left);
        side(map, "right", right);
        quantity(map, "gross-mass", axle.grossMass());
        quantity(map, "load", axle.load());
        return map.build();
    }

    private static void side(Tree.MapBuilder axle, String key, List<EndItem> items) {
        if (!items.isEmpty()) {
            Tree.MapBuilder map = Tree.map();
            items.forEach(item -> map.put(item.key(), item.value()));
            axle.put(key, map);
        }
    }

    static void word(Tree.MapBuilder map, String key, Optional<? extends Enum<?>> word) {
        word.ifPresent(value -> map.put(key, Names.kebab(value)));
    }

    static void quantity(Tree.MapBuilder map, String key, Optional<Quantity> quantity) {
        quantity.ifPresent(value -> map.put(key, value.written()));
    }
}
