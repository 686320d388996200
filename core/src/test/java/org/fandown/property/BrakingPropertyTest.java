package org.fandown.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.fandown.braking.Answer;
import org.fandown.braking.BrakingEstimate;
import org.fandown.braking.ChamberAir;
import org.fandown.braking.Conditions;
import org.fandown.braking.HeatState;
import org.fandown.braking.Hold;
import org.fandown.braking.PushRodForce;
import org.fandown.braking.Range;
import org.fandown.braking.StrokeModel;
import org.fandown.units.AbsolutePressure;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.units.Quantity;
import org.fandown.units.Volume;
import org.fandown.vehicle.Axle;
import org.fandown.vehicle.AxlePosition;
import org.fandown.vehicle.BrakeKind;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.ChamberEntry;
import org.fandown.vehicle.ChamberTable;
import org.fandown.vehicle.Mount;
import org.fandown.vehicle.UnitKind;
import org.fandown.vehicle.Use;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;
import org.fandown.vehicle.WheelEnd;
import org.fandown.vehicle.WheelId;

class BrakingPropertyTest {
    /** Rounding of sums and conversions, in the unit of the value at hand. */
    private static final double ROUNDING = 1e-6;

    private static final Length FULL = Length.ofInches(2.5);

    @Property
    void push_rod_force_is_never_negative_and_grows_with_pressure(
            @ForAll @DoubleRange(min = 0, max = 200) double psi,
            @ForAll @DoubleRange(min = 0, max = 200) double more,
            @ForAll @DoubleRange(min = 0, max = 4) double inches) {
        PushRodForce chamber = PushRodForce.of(30, FULL);
        Length stroke = Length.ofInches(inches);

        double low = chamber.net(GaugePressure.ofPsi(psi), stroke).newtons();
        double high = chamber.net(GaugePressure.ofPsi(psi + more), stroke).newtons();

        assertThat(low).isNotNegative();
        assertThat(high).isGreaterThanOrEqualTo(low);
    }

    @Property
    void push_rod_force_never_grows_with_stroke(
            @ForAll @DoubleRange(min = 0, max = 150) double psi,
            @ForAll @DoubleRange(min = 0, max = 3) double inches,
            @ForAll @DoubleRange(min = 0, max = 3) double more) {
        PushRodForce chamber = PushRodForce.of(30, FULL);
        GaugePressure pressure = GaugePressure.ofPsi(psi);

        assertThat(chamber.net(pressure, Length.ofInches(inches + more)).newtons())
                .isLessThanOrEqualTo(chamber.net(pressure, Length.ofInches(inches)).newtons());
    }

    @Property
    void stroke_model_gives_the_measured_stroke_back(
            @ForAll @DoubleRange(min = 0, max = 2.5) double inches,
            @ForAll @DoubleRange(min = 20, max = 150) double psi) {
        GaugePressure at = GaugePressure.ofPsi(psi);
        StrokeModel model = StrokeModel.ofAppliedStroke(30, FULL, Length.ofInches(inches), at);

        assertThat(model.strokeAt(at).inInches()).isEqualTo(inches, within(ROUNDING));
    }

    @Property
    void stroke_grows_with_pressure(
            @ForAll @DoubleRange(min = 0, max = 3) double free,
            @ForAll @DoubleRange(min = 0, max = 150) double psi,
            @ForAll @DoubleRange(min = 0, max = 150) double more) {
        StrokeModel model = StrokeModel.ofFreeStroke(30, FULL, Length.ofInches(free));

        assertThat(model.strokeAt(GaugePressure.ofPsi(psi + more)))
                .isGreaterThanOrEqualTo(model.strokeAt(GaugePressure.ofPsi(psi)));
    }

    @Property
    void pressure_of_the_air_in_a_chamber_reads_back(
            @ForAll @DoubleRange(min = -14, max = 200) double psi,
            @ForAll @DoubleRange(min = 0, max = 4) double free) {
        StrokeModel model = StrokeModel.ofFreeStroke(30, FULL, Length.ofInches(free));
        ChamberAir air = ChamberAir.of(model, 30, Volume.ofCubicInches(14));
        GaugePressure pressure = GaugePressure.ofPsi(psi);
        AbsolutePressure ambient = AbsolutePressure.STANDARD_ATMOSPHERE;
        double amount =
                pressure.toAbsolute(ambient).inPsi() * air.volumeAt(pressure).inCubicInches();

        assertThat(air.pressureOf(amount, ambient).inPsi()).isEqualTo(psi, within(ROUNDING));
    }

    @Property
    void imbalance_is_the_same_seen_from_either_side(
            @ForAll @DoubleRange(min = 0.6, max = 2.8) double left,
            @ForAll @DoubleRange(min = 0.6, max = 2.8) double right) {
        Vehicle vehicle = vehicle(Chamber.clamp(30), BrakeKind.DRUM);

        Quantity one = imbalance(vehicle, left, right);
        Quantity other = imbalance(vehicle, right, left);

        assertThat(one.value()).isBetween(0.0, 100.0);
        assertThat(one.value()).isEqualTo(other.value(), within(ROUNDING));
    }

    @Property
    void hot_is_never_better_than_cold(
            @ForAll("chambers") Chamber chamber,
            @ForAll("kinds") BrakeKind kind,
            @ForAll @DoubleRange(min = 0, max = 3.5) double left,
            @ForAll @DoubleRange(min = 0, max = 3.5) double right) {
        BrakingEstimate estimate = estimate(vehicle(chamber, kind), left, right);

        HeatState before = estimate.cold();
        for (HeatState hotter : estimate.hot()) {
            requireNotMore(known(hotter.force()), known(before.force()));
            Hold hot = known(hotter.hold());
            requireNotMore(hot.force(), known(before.hold()).force());
            requireNotMore(
                    known(hotter.stop()).deceleration(), known(before.stop()).deceleration());
            before = hotter;
        }
    }

    @Property
    void a_reading_never_leaves_the_range_without_it_but_for_over_tight_brakes(
            @ForAll @DoubleRange(min = 1.45, max = 3) double left,
            @ForAll @DoubleRange(min = 1.45, max = 3) double right) {
        Vehicle vehicle = vehicle(Chamber.clamp(30), BrakeKind.DRUM);
        Range open = known(estimate(vehicle, Map.of()).cold().force());
        Range read = known(estimate(vehicle, left, right).cold().force());

        assertThat(read.isExact() || read.least().value() < read.most().value()).isTrue();
        assertThat(read.least().value()).isGreaterThanOrEqualTo(open.least().value());
        assertThat(read.most().value()).isLessThanOrEqualTo(open.most().value() + ROUNDING);
    }

    @Provide
    Arbitrary<Chamber> chambers() {
        List<ChamberEntry> entries =
                ChamberTable.entries().stream()
                        .filter(entry -> entry.mount() != Mount.DD3)
                        .toList();
        return Arbitraries.of(entries)
                .map(
                        entry ->
                                Chamber.of(
                                        entry.mount(),
                                        entry.type(),
                                        entry.longStroke().isPresent()));
    }

    @Provide
    Arbitrary<BrakeKind> kinds() {
        return Arbitraries.of(BrakeKind.DRUM, BrakeKind.DISC, BrakeKind.WEDGE);
    }

    private static Vehicle vehicle(Chamber chamber, BrakeKind kind) {
        Axle axle =
                Axle.of(AxlePosition.STEER, WheelEnd.of(kind, chamber, true))
                        .withLoad(Quantity.parse("10 t"));
        VehicleUnit unit = VehicleUnit.builder(UnitKind.BUS, "4").axle(axle).axle(axle).build();
        return new Vehicle("Number 4", Use.PASSENGER, List.of(unit));
    }

    private static BrakingEstimate estimate(Vehicle vehicle, double left, double right) {
        Map<WheelId, Length> strokes = new LinkedHashMap<>();
        for (int axle = 1; axle <= 2; axle++) {
            strokes.put(WheelId.parse(axle + "L"), Length.ofInches(left));
            strokes.put(WheelId.parse(axle + "R"), Length.ofInches(right));
        }
        return estimate(vehicle, strokes);
    }

    private static BrakingEstimate estimate(Vehicle vehicle, Map<WheelId, Length> strokes) {
        return BrakingEstimate.of(vehicle, strokes, Conditions.usual());
    }

    private static Quantity imbalance(Vehicle vehicle, double left, double right) {
        return estimate(vehicle, left, right).cold().axles().get(0).imbalance().orElseThrow();
    }

    private static void requireNotMore(Range hotter, Range colder) {
        assertThat(hotter.least().value()).isLessThanOrEqualTo(colder.least().value() + ROUNDING);
        assertThat(hotter.most().value()).isLessThanOrEqualTo(colder.most().value() + ROUNDING);
    }

    private static <T> T known(Answer<T> answer) {
        assertThat(answer.reason()).isEmpty();
        return answer.value().orElseThrow();
    }
}
