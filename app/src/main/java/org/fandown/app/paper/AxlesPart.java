package org.fandown.app.paper;

import java.util.List;
import java.util.Objects;
import java.util.TreeMap;
import org.fandown.judgement.Judgement;
import org.fandown.judgement.Status;
import org.fandown.judgement.StrokeLimits;
import org.fandown.vehicle.Axle;
import org.fandown.vehicle.AxlePosition;
import org.fandown.vehicle.Side;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;
import org.fandown.vehicle.WheelId;

/**
 * The axles from front to back, with the stroke of each wheel drawn outward from the vehicle in the
 * middle.
 */
final class AxlesPart {
    private static final double HEADROOM = 1.1;
    private static final int LONGEST_NAME = 30;

    private final Fittings fittings;
    private final Vehicle vehicle;
    private final TreeMap<WheelId, WheelStroke> strokes = new TreeMap<>();
    private final double scale;

    private AxlesPart(Judgement judgement, Density density) {
        this.fittings = new Fittings(density);
        this.vehicle = judgement.inspection().vehicle();
        StrokeLimits limits = StrokeLimits.of(judgement);
        for (WheelId wheel : vehicle.wheels()) {
            strokes.put(wheel, WheelStroke.of(judgement, limits, wheel));
        }
        this.scale =
                HEADROOM
                        * strokes.values().stream()
                                .mapToDouble(s -> Math.max(s.limitMm(), s.strokeMm()))
                                .max()
                                .orElse(0);
    }

    static void print(Tag parent, Judgement judgement, Density density) {
        new AxlesPart(judgement, density).print(parent);
    }

    private void print(Tag parent) {
        parent.add("h2").text("Axles and applied strokes");
        Tag table = parent.add("table", "axletable").columns(List.of(25, 17, 16, 10, 16, 17));
        Tag head = table.add("tr", "sides");
        head.add("td").text("front \u2191");
        head.add("td", "left").set("colspan", "2").text("left");
        head.add("td");
        head.add("td").set("colspan", "2").text("right");
        int number = 1;
        for (VehicleUnit unit : vehicle.units()) {
            unit(table.add("tr", "unit"), unit);
            for (Axle axle : unit.axles()) {
                axle(table.add("tr", "axle"), axle, number++);
            }
        }
        parent.add("div", "small")
                .text(
                        vehicle.wheelsWithPushRod().isEmpty()
                                ? "No wheel has a push rod to measure."
                                : "Bar: applied stroke and its doubt. Thick line: limit. Hatched: over"
                                        + " the limit. Dotted: not measured.");
    }

    private void unit(Tag row, VehicleUnit unit) {
        String built = unit.built().map(date -> ", built " + date).orElse("");
        row.add("td")
                .set("colspan", "3")
                .text(
                        Words.capital(IdentityPart.kind(unit))
                                + " "
                                + Clean.cut(unit.id(), LONGEST_NAME)
                                + built);
        AxleDrawing.head(row.add("td", "plan"), unit.isPowered());
        row.add("td").set("colspan", "2");
    }

    private void axle(Tag row, Axle axle, int number) {
        Tag name = row.add("td", "name");
        name.add("span", "strong").text(number + " " + position(axle.position()));
        List<String> fitted = fittings.of(axle);
        fitted.forEach(line -> name.add("div", "minor").text(line));
        WheelStroke left = stroke(number, Side.LEFT);
        WheelStroke right = stroke(number, Side.RIGHT);
        value(row.add("td", "left"), left);
        AxleDrawing.bar(row.add("td", "bar"), left, Side.LEFT, scale);
        boolean last = number == vehicle.axleCount();
        AxleDrawing.axle(row.add("td", "plan"), axle, last, fitted.size());
        AxleDrawing.bar(row.add("td", "bar"), right, Side.RIGHT, scale);
        value(row.add("td"), right);
    }

    private WheelStroke stroke(int axle, Side side) {
        return Objects.requireNonNull(strokes.get(new WheelId(axle, side)));
    }

    private void value(Tag cell, WheelStroke wheel) {
        boolean open = wheel.status().map(s -> s != Status.MET).orElse(false);
        if (open) {
            Mark.of(wheel.status().get()).addTo(cell);
        }
        cell.add("span", wheel.stroke().isPresent() ? "strong" : "minor").text(wheel.strokeText());
        if (scale > 0) {
            cell.add("div", "minor").text(wheel.limitText());
        }
    }

    private static String position(AxlePosition position) {
        return org.fandown.document.Names.kebab(position);
    }
}
