package org.fandown.vehicle;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.fandown.document.Fields;
import org.fandown.document.ListNode;
import org.fandown.document.Node;
import org.fandown.document.Values;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;

/** Reads one entry of {@code units}. */
final class UnitReader {
    private final Fields fields;

    private UnitReader(Fields fields) {
        this.fields = fields;
    }

    static VehicleUnit read(Node node) {
        return new UnitReader(Fields.of(node)).read();
    }

    private VehicleUnit read() {
        UnitKind kind = fields.choice("kind", UnitKind.values());
        String id = fields.text("id");
        Optional<TrailerForm> form = form(kind);
        Build build = new Build(built(), standards());
        BrakePower brakes =
                fields.optionalChoice("brakes", BrakePower.values()).orElse(BrakePower.AIR);
        Optional<Boolean> abs = fields.optionalTruth("abs");
        Ratings ratings = Guard.at(this::ratings, fields);
        Body body = Guard.at(() -> body(kind), fields);
        AirSupply air = Guard.at(() -> new AirSupplyReader(fields).read(), fields);
        List<Axle> axles = axles(kind, brakes);
        fields.end();
        return Guard.at(
                () ->
                        new VehicleUnit(
                                id, kind, form, build, brakes, abs, ratings, body, air, axles),
                fields);
    }

    private Optional<TrailerForm> form(UnitKind kind) {
        Optional<TrailerForm> written = fields.optionalChoice("form", TrailerForm.values());
        return kind == UnitKind.TRAILER && written.isEmpty()
                ? Optional.of(TrailerForm.SEMI)
                : written;
    }

    private Optional<BuildDate> built() {
        Optional<String> text = fields.optionalText("built");
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (text.get().length() > BuildDate.MONTH_LENGTH) {
            return Optional.of(BuildDate.of(fields.date("built")));
        }
        Optional<BuildDate> month = BuildDate.parseMonth(text.get());
        if (month.isEmpty()) {
            throw fields.refuse(
                    "built",
                    "it is neither a date nor a year with a month",
                    "a date such as 2018-05-14, or 2018-05 if only the month is known",
                    "write the build date from the plate or the papers");
        }
        return month;
    }

    private Set<BuildStandard> standards() {
        EnumSet<BuildStandard> standards = EnumSet.noneOf(BuildStandard.class);
        Optional<Node> node = fields.optionalNode("standard");
        if (node.isPresent()) {
            List<Node> names =
                    node.get() instanceof ListNode list ? list.items() : List.of(node.get());
            names.forEach(name -> standards.add(Values.choice(name, BuildStandard.values())));
        }
        return standards;
    }

    private Ratings ratings() {
        return new Ratings(mass("gross-mass"), mass("registered-mass"));
    }

    private Optional<Quantity> mass(String key) {
        return fields.optionalQuantity(key, Dimension.MASS);
    }

    private Body body(UnitKind kind) {
        boolean odometer = fields.optionalTruth("odometer").orElse(kind.isPowered());
        Optional<Integer> written = fields.optionalInteger("seats", 1, Body.MOST_SEATS);
        OptionalInt seats =
                written.isPresent() ? OptionalInt.of(written.get()) : OptionalInt.empty();
        return new Body(odometer, seats, fields.optionalChoice("chassis", Chassis.values()));
    }

    private List<Axle> axles(UnitKind kind, BrakePower brakes) {
        List<Axle> axles = new ArrayList<>();
        for (Node node : fields.list("axles")) {
            axles.add(AxleReader.read(node, kind, brakes));
        }
        return axles;
    }
}
