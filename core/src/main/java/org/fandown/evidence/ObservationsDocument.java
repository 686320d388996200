package org.fandown.evidence;

import java.util.List;
import java.util.Map;
import org.fandown.check.CheckKind;
import org.fandown.check.Circumstance;
import org.fandown.check.Component;
import org.fandown.document.MapNode;
import org.fandown.document.Tree;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.jspecify.annotations.Nullable;

/** Writes what a person observed, in the keys of an inspection. */
public final class ObservationsDocument {
    private ObservationsDocument() {}

    /**
     * Writes observations so that an inspection with these keys is read back to equal ones.
     *
     * @param observations the observations
     * @return a map of those of the keys {@code readings}, {@code wheels} and {@code parts} that
     *     hold something
     */
    public static MapNode of(Observations observations) {
        return add(Tree.map(), observations).build();
    }

    /** Adds the same keys to a map that holds others. */
    public static Tree.MapBuilder add(Tree.MapBuilder map, Observations observations) {
        if (!observations.readings().isEmpty()) {
            Tree.MapBuilder readings = Tree.map();
            observations
                    .readings()
                    .forEach((check, reading) -> readings.put(check.id(), reading(reading)));
            map.put("readings", readings);
        }
        if (!observations.wheels().isEmpty()) {
            Tree.MapBuilder wheels = Tree.map();
            observations
                    .wheels()
                    .forEach((id, wheel) -> wheels.put(id.toString(), WheelDocument.of(wheel)));
            map.put("wheels", wheels);
        }
        if (!observations.parts().isEmpty() || observations.allOtherPartsSeen()) {
            map.put("parts", parts(observations));
        }
        return map;
    }

    private static Tree.MapBuilder reading(Reading reading) {
        Tree.MapBuilder map = Tree.map();
        if (reading instanceof Reading.Value value) {
            map.put(ReadingReader.key(value.check()), figures(value.values()));
            value.to().ifPresent(to -> map.put("to", text(to)));
        } else if (reading instanceof Reading.Span span) {
            span(map, span);
        } else if (reading instanceof Reading.Reserve reserve) {
            map.put("before", text(reserve.before())).put("after", text(reserve.after()));
        } else if (reading instanceof Reading.Answer answer) {
            map.put("answer", answer.yes());
        } else {
            estimate(map, (Reading.Estimate) reading);
        }
        reading.by().ifPresent(by -> map.put("instruments", instruments(by)));
        circumstances(map, reading.at());
        return reading.note().isEmpty() ? map : map.put("note", reading.note());
    }

    private static Tree.ListBuilder figures(List<Quantity> values) {
        Tree.ListBuilder list = Tree.list();
        values.forEach(value -> list.add(text(value)));
        return list;
    }

    private static void estimate(Tree.MapBuilder map, Reading.Estimate estimate) {
        boolean loss = estimate.over().isPresent();
        map.put(loss ? "loss" : ReadingReader.key(estimate.check()), text(estimate.value()));
        map.put("within", text(estimate.within()));
        estimate.over().ifPresent(time -> map.put("time", text(time)));
    }

    /** The steps of what reads needles over time. */
    private static Tree.MapBuilder instruments(Instruments by) {
        Tree.MapBuilder map = Tree.map();
        put(map, "gauge", by.steps().get(Dimension.GAUGE_PRESSURE));
        put(map, "clock", by.steps().get(Dimension.TIME));
        return map;
    }

    private static void put(Tree.MapBuilder map, String key, @Nullable Quantity step) {
        if (step != null) {
            map.put(key, text(step));
        }
    }

    /** A loss of which only the difference was noted is the one span without a start. */
    private static void span(Tree.MapBuilder map, Reading.Span span) {
        boolean differenceOnly =
                span.check().kind() == CheckKind.AIR_LOSS
                        && span.at().quantity(Circumstance.START_PRESSURE).isEmpty();
        if (differenceOnly) {
            map.put("loss", text(span.first().pressure())).put("time", text(span.last().time()));
            return;
        }
        Tree.ListBuilder points = Tree.list();
        for (Sample sample : span.samples()) {
            points.add(
                    Tree.map()
                            .put("at", text(sample.time()))
                            .put("gauge", text(sample.pressure())));
        }
        map.put("points", points);
    }

    static void circumstances(Tree.MapBuilder map, Circumstances at) {
        at.states().forEach((circumstance, state) -> map.put(circumstance.id(), state));
        at.quantities()
                .forEach(
                        (circumstance, quantity) -> {
                            if (circumstance == Circumstance.APPLICATIONS) {
                                map.put(circumstance.id(), (long) quantity.value());
                            } else {
                                map.put(circumstance.id(), text(quantity));
                            }
                        });
    }

    private static Tree.MapBuilder parts(Observations observations) {
        Tree.MapBuilder map = Tree.map();
        for (Map.Entry<Component, PartReading> part : observations.parts().entrySet()) {
            List<PartReading.Found> found = part.getValue().found();
            if (found.isEmpty()) {
                map.put(part.getKey().id(), "ok");
                continue;
            }
            Tree.ListBuilder list = Tree.list();
            found.forEach(one -> list.add(found(one)));
            map.put(part.getKey().id(), list);
        }
        return observations.allOtherPartsSeen() ? map.put("all-others", "ok") : map;
    }

    private static Tree.MapBuilder found(PartReading.Found found) {
        Tree.MapBuilder map = Tree.map().put("condition", found.condition());
        found.severity().ifPresent(severity -> map.put("severity", severity));
        return found.note().isEmpty() ? map : map.put("note", found.note());
    }

    /** The text as written, unless a computed number needs more decimals than its text has. */
    static String text(Quantity quantity) {
        return quantity.exactText();
    }
}
