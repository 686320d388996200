package org.fandown.practice;

import java.util.List;
import java.util.Map;
import org.fandown.air.FaultCase;
import org.fandown.air.FaultSize;
import org.fandown.check.Component;
import org.fandown.document.MapNode;
import org.fandown.document.Names;
import org.fandown.document.Tree;
import org.fandown.vehicle.VehicleDocument;

/**
 * Writes a scenario as the tree of a scenario file, its vehicle written out. {@link ScenarioReader}
 * reads the tree back to an equal scenario, to the last bit of every number, if its amounts were
 * read from a file.
 */
public final class ScenarioDocument {
    private ScenarioDocument() {}

    /**
     * Writes a scenario.
     *
     * @param scenario the scenario; its seed must be 0 to 999 999 999
     * @throws IllegalArgumentException if the seed is out of range
     */
    public static MapNode of(Scenario scenario) {
        if (scenario.seed() < 0 || scenario.seed() > ScenarioReader.MOST_SEED) {
            throw new IllegalArgumentException(
                    "The seed " + scenario.seed() + " must be 0 to 999999999 to be written.");
        }
        Tree.MapBuilder map = Tree.map().put("title", scenario.title());
        if (!scenario.told().isEmpty()) {
            map.put("told", scenario.told());
        }
        scenario.place().ifPresent(place -> map.put("place", place.code()));
        map.put("vehicle", VehicleDocument.toTree(scenario.vehicle()));
        map.put("start", start(scenario.start()));
        map.put("ground", ground(scenario.ground()));
        map.put("transmission", scenario.transmission());
        if (!scenario.faults().isEmpty()) {
            map.put("faults", faults(scenario.faults()));
        }
        if (!scenario.parts().isEmpty()) {
            map.put("parts", parts(scenario.parts()));
        }
        return map.put("seed", scenario.seed()).build();
    }

    private static Tree.MapBuilder start(StartState start) {
        return Tree.map()
                .put("pressure", Amounts.ofPascals(start.pressure().pascals()))
                .put(
                        "parking-brake",
                        start.parked() ? ScenarioReader.Brake.SET : ScenarioReader.Brake.RELEASED)
                .put(
                        "trailer-supply",
                        start.trailerCharged()
                                ? ScenarioReader.Supply.OPEN
                                : ScenarioReader.Supply.CLOSED);
    }

    private static Tree.MapBuilder ground(Ground ground) {
        return Tree.map()
                .put("grade", Amounts.ofShare(ground.grade()))
                .put("air", Amounts.ofKelvins(ground.air().kelvins()));
    }

    private static Tree.ListBuilder faults(List<FaultCase> faults) {
        Tree.ListBuilder list = Tree.list();
        for (FaultCase fault : faults) {
            Tree.MapBuilder map = Tree.map().put("fault", fault.fault().id());
            if (!fault.place().isEmpty()) {
                map.put("at", fault.place());
            }
            FaultSize size = fault.fault().size();
            if (!size.equals(FaultSize.NONE)) {
                map.put("size", FaultUnits.exact(fault.size(), size));
            }
            list.add(map);
        }
        return list;
    }

    private static Tree.MapBuilder parts(Map<Component, List<String>> parts) {
        Tree.MapBuilder map = Tree.map();
        parts.forEach(
                (part, found) -> {
                    Tree.ListBuilder list = Tree.list();
                    found.forEach(list::add);
                    map.put(Names.kebab(part), list);
                });
        return map;
    }
}
