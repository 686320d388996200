package org.fandown.vehicle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.document.Names;
import org.fandown.document.Node;
import org.fandown.document.Tree;
import org.fandown.units.Quantity;

/** One key of an axle that can differ between its two ends, with its value as a file has it. */
record EndItem(String key, Node value) {

    static List<EndItem> of(WheelEnd end) {
        List<EndItem> items = new ArrayList<>();
        items.add(word("brake", end.brake()));
        end.chamber().ifPresent(chamber -> items.add(new EndItem("chamber", chamber(chamber))));
        if (end.chamber().isPresent()) {
            items.add(new EndItem("spring-brake", Tree.truth(end.springBrake())));
        }
        end.adjuster().ifPresent(adjuster -> items.add(word("adjuster", adjuster)));
        length(items, "arm", end.arm());
        end.lining().ifPresent(lining -> items.add(word("lining", lining)));
        length(items, "drum-radius", end.drumRadius());
        length(items, "tyre-radius", end.tyreRadius());
        return items;
    }

    private static Node chamber(Chamber chamber) {
        if (chamber.mount() != Mount.OTHER && chamber.markedLimit().isEmpty()) {
            return Tree.text(chamber.text());
        }
        Tree.MapBuilder map = Tree.map().put("mount", chamber.mount()).put("type", chamber.type());
        map.put("long-stroke", chamber.longStroke());
        VehicleDocument.quantity(map, "rated-stroke", chamber.ratedStroke());
        VehicleDocument.quantity(map, "marked-limit", chamber.markedLimit());
        return map.build();
    }

    private static EndItem word(String key, Enum<?> value) {
        return new EndItem(key, Tree.text(Names.kebab(value)));
    }

    private static void length(List<EndItem> items, String key, Optional<Quantity> length) {
        length.ifPresent(value -> items.add(new EndItem(key, Tree.text(value.written()))));
    }
}
