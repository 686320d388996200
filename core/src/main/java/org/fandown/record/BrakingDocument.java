package org.fandown.record;

import org.fandown.braking.Answer;
import org.fandown.braking.Assumption;
import org.fandown.braking.AxleEstimate;
import org.fandown.braking.BrakingEstimate;
import org.fandown.braking.HeatState;
import org.fandown.braking.Hold;
import org.fandown.braking.Range;
import org.fandown.braking.Stop;
import org.fandown.braking.WheelEstimate;
import org.fandown.document.MapNode;
import org.fandown.document.Names;
import org.fandown.document.Tree;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/** What the strokes mean, as a document; every assumption is listed. */
final class BrakingDocument {
    private static final int DECIMALS = 3;

    private BrakingDocument() {}

    static MapNode of(BrakingEstimate estimate) {
        Tree.ListBuilder states = Tree.list().add(state(estimate.cold()));
        estimate.hot().forEach(hot -> states.add(state(hot)));
        Tree.ListBuilder assumptions = Tree.list();
        for (Assumption assumption : estimate.assumptions()) {
            assumptions.add(
                    Tree.map()
                            .put("assumption", assumption.label())
                            .put("value", assumption.value())
                            .put("basis", Names.kebab(assumption.basis()))
                            .put("source", assumption.source()));
        }
        return Tree.map().put("states", states).put("assumptions", assumptions).build();
    }

    private static MapNode state(HeatState state) {
        Tree.MapBuilder map = Tree.map().put("drums", quantity(state.drums()));
        Tree.ListBuilder wheels = Tree.list();
        state.wheels().forEach(wheel -> wheels.add(wheel(wheel)));
        Tree.ListBuilder axles = Tree.list();
        state.axles().forEach(axle -> axles.add(axle(axle)));
        map.put("wheels", wheels).put("axles", axles);
        range(map, "share-of-fully-adjusted", state.shareOfAdjusted());
        stop(map, state.stop());
        hold(map, state.hold());
        return map.build();
    }

    private static MapNode wheel(WheelEstimate wheel) {
        Tree.MapBuilder map =
                Tree.map()
                        .put("wheel", wheel.wheel().toString())
                        .put("status", Names.kebab(wheel.status()));
        wheel.stroke().ifPresent(s -> map.put("stroke", quantity(s)));
        wheel.force().value().ifPresent(f -> map.put("force-at-tyre", range(f.atTyre())));
        map.put("bottomed", wheel.isBottomed());
        return map.build();
    }

    private static MapNode axle(AxleEstimate axle) {
        Tree.MapBuilder map = Tree.map().put("axle", axle.axle());
        axle.force().value().ifPresent(f -> map.put("force", range(f)));
        axle.imbalance().ifPresent(i -> map.put("imbalance", quantity(i)));
        return map.build();
    }

    private static void stop(Tree.MapBuilder map, Answer<Stop> stop) {
        if (stop.value().isEmpty()) {
            map.put("stop-unknown", stop.reason());
            return;
        }
        Stop known = stop.value().get();
        map.put("deceleration", range(known.deceleration()))
                .put("braking-force", range(known.shareOfWeight()));
        known.shortest().ifPresent(d -> map.put("shortest-stop", quantity(d)));
        known.longest().ifPresent(d -> map.put("longest-stop", quantity(d)));
    }

    private static void hold(Tree.MapBuilder map, Answer<Hold> hold) {
        if (hold.value().isEmpty()) {
            map.put("parking-unknown", hold.reason());
            return;
        }
        map.put("parking-force", range(hold.value().get().force()));
        range(map, "parking-grade", hold.value().get().grade());
    }

    private static void range(Tree.MapBuilder map, String key, Answer<Range> answer) {
        if (answer.value().isPresent()) {
            map.put(key, range(answer.value().get()));
        } else {
            map.put(key + "-unknown", answer.reason());
        }
    }

    private static MapNode range(Range range) {
        Tree.MapBuilder map = Tree.map().put("unit", range.least().unit().symbol());
        return map.put("least", range.least().value(), DECIMALS)
                .put("most", range.most().value(), DECIMALS)
                .build();
    }

    private static MapNode quantity(Quantity quantity) {
        Unit unit = quantity.unit();
        return Tree.map()
                .put("value", quantity.value(), DECIMALS)
                .put("unit", unit.symbol())
                .build();
    }
}
