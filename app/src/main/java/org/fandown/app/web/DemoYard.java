package org.fandown.app.web;

import java.util.List;
import org.fandown.app.files.DocumentText;
import org.fandown.app.files.ProgramFiles;
import org.fandown.app.files.RulePacks;
import org.fandown.check.PlaceCode;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.document.Tree;
import org.fandown.practice.Scenario;
import org.fandown.practice.ScenarioDocument;
import org.fandown.practice.ScenarioReader;
import org.fandown.rulebook.Pack;
import org.fandown.rulebook.PackReader;
import org.fandown.vehicle.VehicleDocument;
import org.fandown.vehicle.VehicleReader;

/**
 * What the pages need beside the core, as JSON: the rule packs, and the vehicles and exercises of
 * the demonstration yard, which are the examples.
 */
final class DemoYard {
    private static final String FOLDER = "/org/fandown/app/demo/";
    private static final String VEHICLES = "vehicles/";
    private static final String SCENARIOS = "scenarios/";

    private DemoYard() {}

    /** List of places: code, name, parent if it has one, day of the last check, and the pack. */
    static String packs(RulePacks packs) {
        Tree.ListBuilder list = Tree.list();
        for (PlaceCode place : packs.places()) {
            Node document = packs.document(place);
            Pack pack = PackReader.read(document);
            Tree.MapBuilder map =
                    Tree.map()
                            .put("code", place.code())
                            .put("name", pack.name())
                            .put("checkedOn", pack.checkedOn().toString());
            pack.parent().ifPresent(parent -> map.put("parent", parent.code()));
            list.add(map.put("pack", document));
        }
        return Json.writeCompact(list.build());
    }

    /** List of {@code id}, {@code name}, {@code vehicle}. */
    static String vehicles() {
        Tree.ListBuilder list = Tree.list();
        for (String name : names(VEHICLES)) {
            var vehicle = VehicleReader.read(document(VEHICLES + name));
            list.add(
                    Tree.map()
                            .put("id", id(name))
                            .put("name", vehicle.name())
                            .put("vehicle", VehicleDocument.toTree(vehicle)));
        }
        return Json.writeCompact(list.build());
    }

    /** List of {@code id}, {@code title}, {@code told}, {@code vehicleName}, {@code scenario}. */
    static String scenarios() {
        Tree.ListBuilder list = Tree.list();
        for (String name : names(SCENARIOS)) {
            Scenario scenario =
                    new ScenarioReader(DemoYard::beside).read(document(SCENARIOS + name));
            list.add(
                    Tree.map()
                            .put("id", id(name))
                            .put("title", scenario.title())
                            .put("told", scenario.told())
                            .put("vehicleName", scenario.vehicle().name())
                            .put("scenario", ScenarioDocument.of(scenario)));
        }
        return Json.writeCompact(list.build());
    }

    private static List<String> names(String folder) {
        return ProgramFiles.below(FOLDER + folder);
    }

    /** A vehicle that a scenario names by its path beside it. */
    private static Node beside(String path) {
        return document(path.replace("../", ""));
    }

    private static Node document(String name) {
        return DocumentText.of(name, ProgramFiles.bytes(FOLDER + name));
    }

    private static String id(String file) {
        return file.substring(0, file.lastIndexOf('.'));
    }
}
