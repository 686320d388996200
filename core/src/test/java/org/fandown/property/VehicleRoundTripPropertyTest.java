package org.fandown.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.fandown.document.Json;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.Adjuster;
import org.fandown.vehicle.AirSupply;
import org.fandown.vehicle.Axle;
import org.fandown.vehicle.AxlePosition;
import org.fandown.vehicle.BrakeKind;
import org.fandown.vehicle.BuildDate;
import org.fandown.vehicle.BuildStandard;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.ChamberTable;
import org.fandown.vehicle.Mount;
import org.fandown.vehicle.Reservoir;
import org.fandown.vehicle.ReservoirRole;
import org.fandown.vehicle.SupplyKind;
import org.fandown.vehicle.TrailerForm;
import org.fandown.vehicle.UnitKind;
import org.fandown.vehicle.Use;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleDocument;
import org.fandown.vehicle.VehicleReader;
import org.fandown.vehicle.VehicleUnit;
import org.fandown.vehicle.VehicleUnitBuilder;
import org.fandown.vehicle.WarningDevice;
import org.fandown.vehicle.WheelEnd;

class VehicleRoundTripPropertyTest {
    @Property(tries = 500)
    void a_vehicle_reads_back_from_its_own_file(@ForAll("vehicles") Vehicle vehicle) {
        String file = Json.write(VehicleDocument.toTree(vehicle));

        Vehicle again = VehicleReader.read(Json.read("vehicle.json", file));

        assertThat(again).isEqualTo(vehicle);
        assertThat(Json.write(VehicleDocument.toTree(again))).isEqualTo(file);
    }

    @Provide
    Arbitrary<Vehicle> vehicles() {
        Arbitrary<VehicleUnit> powered =
                Combinators.combine(
                                Arbitraries.of(UnitKind.TRUCK, UnitKind.TRACTOR, UnitKind.BUS),
                                ends(),
                                axles(AxlePosition.DRIVE),
                                air(),
                                Arbitraries.of(BuildStandard.class).set().ofMaxSize(3))
                        .as(
                                (kind, steer, rear, air, standards) -> {
                                    VehicleUnitBuilder builder =
                                            VehicleUnit.builder(kind, "P")
                                                    .axle(Axle.of(AxlePosition.STEER, steer))
                                                    .axles(rear)
                                                    .air(air)
                                                    .standards(standards)
                                                    .built(BuildDate.ofMonth(2019, 3));
                                    return kind == UnitKind.BUS
                                            ? builder.seats(48).build()
                                            : builder.abs(false).build();
                                });
        Arbitrary<List<VehicleUnit>> towed =
                Combinators.combine(axles(AxlePosition.TRAILER), Arbitraries.of(TrailerForm.class))
                        .as(
                                (axles, form) ->
                                        VehicleUnit.builder(UnitKind.TRAILER, "R")
                                                .form(form)
                                                .axles(axles)
                                                .grossMass(Quantity.parse("30 000 kg"))
                                                .build())
                        .list()
                        .ofMaxSize(1);
        return Combinators.combine(powered, towed, Arbitraries.of(Use.class))
                .as(
                        (front, behind, use) -> {
                            List<VehicleUnit> units = new ArrayList<>(List.of(front));
                            units.addAll(behind);
                            return new Vehicle("Number 12", use, units);
                        });
    }

    private static Arbitrary<List<Axle>> axles(AxlePosition position) {
        return Combinators.combine(ends(), ends(), masses(), masses())
                .as((left, right, gross, load) -> new Axle(position, left, right, gross, load))
                .list()
                .ofMinSize(1)
                .ofMaxSize(4);
    }

    private static Arbitrary<WheelEnd> ends() {
        return Combinators.combine(
                        Arbitraries.of(BrakeKind.DRUM, BrakeKind.DISC, BrakeKind.WEDGE),
                        chambers(),
                        Arbitraries.of(true, false),
                        Arbitraries.of(Adjuster.MANUAL, Adjuster.AUTOMATIC),
                        lengths("in", 4, 7),
                        lengths("mm", 400, 600))
                .as(
                        (brake, chamber, spring, adjuster, arm, tyre) -> {
                            boolean sprung = spring && chamber.mount() != Mount.DD3;
                            WheelEnd end =
                                    WheelEnd.of(brake, chamber, sprung).withAdjuster(adjuster);
                            end = tyre.map(end::withTyreRadius).orElse(end);
                            return brake == BrakeKind.WEDGE
                                    ? end
                                    : arm.map(end::withArm).orElse(end);
                        });
    }

    private static Arbitrary<Chamber> chambers() {
        Arbitrary<Chamber> listed =
                Arbitraries.of(ChamberTable.entries())
                        .flatMap(
                                entry ->
                                        Arbitraries.of(true, false)
                                                .map(
                                                        wished ->
                                                                Chamber.of(
                                                                        entry.mount(),
                                                                        entry.type(),
                                                                        wished
                                                                                && entry.longStroke()
                                                                                        .isPresent())));
        Arbitrary<Chamber> marked =
                lengths("in", 2, 3)
                        .map(
                                limit -> {
                                    Chamber chamber =
                                            Chamber.of(Mount.OTHER, "M 24 special", true)
                                                    .withRatedStroke(Quantity.of(3, Unit.INCH));
                                    return limit.map(chamber::withMarkedLimit).orElse(chamber);
                                });
        Arbitrary<Chamber> threeInch =
                Arbitraries.of(20, 24)
                        .map(
                                type ->
                                        Chamber.clampLong(type)
                                                .withRatedStroke(Quantity.parse("3 in")));
        return Arbitraries.oneOf(listed, marked, threeInch);
    }

    private static Arbitrary<AirSupply> air() {
        return Combinators.combine(
                        Arbitraries.of(SupplyKind.class).optional(),
                        lengths("L", 10, 60),
                        Arbitraries.of(WarningDevice.class).optional())
                .as(
                        (kind, volume, warning) ->
                                new AirSupply(
                                        kind,
                                        List.of(
                                                new Reservoir(ReservoirRole.PRIMARY, volume),
                                                new Reservoir(ReservoirRole.SECONDARY, volume)),
                                        Optional.empty(),
                                        Optional.empty(),
                                        warning));
    }

    private static Arbitrary<Optional<Quantity>> masses() {
        return Arbitraries.integers()
                .between(1000, 20_000)
                .map(kilograms -> Quantity.parse(kilograms + " kg"))
                .optional();
    }

    private static Arbitrary<Optional<Quantity>> lengths(String unit, int least, int most) {
        return Arbitraries.integers()
                .between(least * 8, most * 8)
                .map(eighths -> Quantity.parse(eighths / 8.0 + " " + unit))
                .optional();
    }
}
