package org.fandown.contract.serve;

import java.nio.file.Path;
import org.fandown.app.files.DocumentFiles;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.document.Tree;
import org.fandown.record.CanonicalJson;

/** Records as devices send them. */
public final class Records {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final Node INSPECTION = inspection();

    private Records() {}

    /** One record, as it is kept. */
    public static String record(String id) {
        return CanonicalJson.write(
                Tree.map()
                        .put("format", "fandown-record/1")
                        .put("id", id)
                        .put("kind", "inspection")
                        .put("made", "2026-11-30T06:40:00-05:00")
                        .put("inspection", INSPECTION)
                        .build());
    }

    /** What is sent to have records kept. */
    public static String body(String... records) {
        return "{\"records\":[" + String.join(",", records) + "]}";
    }

    private static Node inspection() {
        MapNode read =
                (MapNode)
                        DocumentFiles.read(
                                EXAMPLES.resolve("inspections/ontario-truck-in-order.yaml"));
        Tree.MapBuilder map = Tree.map();
        read.entries()
                .forEach(
                        (key, entry) -> {
                            if (!key.equals("vehicle")) {
                                map.put(key, entry.value());
                            }
                        });
        Path vehicle = EXAMPLES.resolve("vehicles/straight-truck.yaml");
        return map.put("vehicle", DocumentFiles.read(vehicle)).build();
    }
}
