package org.fandown.vehicle;

import java.util.Optional;
import org.fandown.document.Fields;
import org.fandown.document.Node;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;

/** Reads one entry of {@code axles}. */
final class AxleReader {
    private final Fields fields;
    private final UnitKind kind;
    private final boolean air;

    private AxleReader(Fields fields, UnitKind kind, boolean air) {
        this.fields = fields;
        this.kind = kind;
        this.air = air;
    }

    static Axle read(Node node, UnitKind kind, BrakePower brakes) {
        return new AxleReader(Fields.of(node), kind, brakes == BrakePower.AIR).read();
    }

    private Axle read() {
        AxlePosition position = position();
        WheelEnd left = end("left");
        WheelEnd right = end("right");
        Optional<Quantity> grossMass = fields.optionalQuantity("gross-mass", Dimension.MASS);
        Optional<Quantity> load = fields.optionalQuantity("load", Dimension.MASS);
        fields.end();
        Guard.check(() -> UnitRules.requirePosition(kind, position), fields);
        return Guard.at(() -> new Axle(position, left, right, grossMass, load), fields);
    }

    private AxlePosition position() {
        return kind.isPowered()
                ? fields.choice("position", AxlePosition.values())
                : fields.optionalChoice("position", AxlePosition.values())
                        .orElse(AxlePosition.TRAILER);
    }

    private WheelEnd end(String side) {
        Optional<Fields> own = fields.optionalFields(side);
        WheelEnd end = new EndReader(fields, own, air).read();
        own.ifPresent(Fields::end);
        return end;
    }
}
