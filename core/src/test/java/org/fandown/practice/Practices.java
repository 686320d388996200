package org.fandown.practice;

import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.evidence.VehicleSource;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;
import org.fandown.yard.Trucks;

/** Scenarios and scripts as texts, with single quotes for double ones. */
final class Practices {
    private Practices() {}

    static Vehicle combination() {
        return VehicleReader.read(json(Trucks.COMBINATION));
    }

    static Vehicle truck() {
        return VehicleReader.read(json(Trucks.TRUCK));
    }

    /** A scenario with the vehicle under a name, and further keys. */
    static Scenario scenario(String vehicle, String keys) {
        String text = "{'title': 'T', 'vehicle': '" + vehicle + "'" + keys + "}";
        return new ScenarioReader(Practices::fetch).read(json(text));
    }

    static Script script(Vehicle vehicle, String steps) {
        return new ScriptReader(vehicle).read(json("{'steps': [" + steps + "]}"));
    }

    static Node json(String text) {
        return Json.read("a.json", text.replace('\'', '"'));
    }

    static Node fetch(String name) {
        return switch (name.length()) {
            case 5 -> json(Trucks.TRUCK);
            case 11 -> json(Trucks.COMBINATION);
            default -> VehicleSource.NONE.fetch(name);
        };
    }
}
