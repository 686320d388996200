package org.fandown.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fandown.units.GaugePressure;
import org.fandown.units.Quantity;
import org.fandown.vehicle.Axle;
import org.fandown.vehicle.AxlePosition;
import org.fandown.vehicle.BrakeKind;
import org.fandown.vehicle.BrakePower;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.Mount;
import org.fandown.vehicle.UnitKind;
import org.fandown.vehicle.Use;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;
import org.fandown.vehicle.WheelEnd;
import org.fandown.vehicle.WheelId;
import org.junit.jupiter.api.Test;

/** The expected numbers were worked by hand from the formulas, step by step. */
class BrakingEstimateTest {
    /** The hand calculation kept six digits. */
    private static final double SIX_DIGITS = 0.01;

    private static final WheelId STEER_LEFT = WheelId.parse("1L");
    private static final WheelId DRIVE_LEFT = WheelId.parse("2L");
    private static final WheelId DRIVE_RIGHT = WheelId.parse("2R");

    @Test
    void forces_follow_from_strokes() {
        HeatState cold = estimate(Trucks.twoAxle(), 1.25, 1.25, 1.75, 1.75).cold();

        // 20 in2 x (95 - 5) psi, and 30 in2 x (95 - 5) psi: both strokes are below the knee
        assertThat(force(cold, STEER_LEFT).pushRod().most().value())
                .isEqualTo(1800, within(SIX_DIGITS));
        assertThat(force(cold, DRIVE_LEFT).pushRod().most().value())
                .isEqualTo(2700, within(SIX_DIGITS));
        // 2 x push x 5.5 x 0.35 x drum x 0.6 / (0.5 x 19.5), drums of 7.5 and 8.25 in
        assertThat(force(cold, STEER_LEFT).atTyre().most().value())
                .isEqualTo(3198.46, within(SIX_DIGITS));
        assertThat(force(cold, DRIVE_LEFT).atTyre().most().value())
                .isEqualTo(5277.46, within(SIX_DIGITS));
        assertThat(known(cold.force()).isExact()).isTrue();
        assertThat(known(cold.force()).most().value()).isEqualTo(16_951.85, within(SIX_DIGITS));
        assertThat(known(cold.shareOfAdjusted()).most().value()).isEqualTo(100, within(SIX_DIGITS));
    }

    @Test
    void a_stop_follows_from_forces_and_axle_loads() {
        Stop stop = known(estimate(Trucks.twoAxle(), 1.25, 1.25, 1.75, 1.75).cold().stop());

        assertThat(stop.shareOfWeight().most().value()).isEqualTo(52.97, within(SIX_DIGITS));
        assertThat(stop.deceleration().most().value()).isEqualTo(17.04, within(SIX_DIGITS));
        assertThat(stop.longest().orElseThrow().value()).isEqualTo(33.93, within(SIX_DIGITS));
        assertThat(stop.shortest()).isEqualTo(stop.longest());
    }

    @Test
    void a_parking_hold_follows_from_the_springs() {
        Hold hold = known(estimate(Trucks.twoAxle(), 1.25, 1.25, 1.75, 1.75).cold().hold());

        // crossing of spring and brake at 1.3411 in: 1681.78 lbf, less 150 lbf return spring
        assertThat(hold.force().most().value()).isEqualTo(5988.07, within(SIX_DIGITS));
        assertThat(known(hold.grade()).most().value()).isEqualTo(19.05, within(SIX_DIGITS));
    }

    @Test
    void hot_drums_take_force_from_a_brake_near_the_end_of_its_stroke() {
        BrakingEstimate estimate = estimate(Trucks.twoAxle(), 1.25, 1.25, 1.75, 1.75);
        HeatState hot = estimate.hot().get(1);

        assertThat(hot.drums().value()).isEqualTo(600, within(SIX_DIGITS));
        // 1.75 + 0.625 = 2.375 in: factor 0.652778, (2850 x 0.652778 - 150) / 2700
        assertThat(share(hot, DRIVE_LEFT)).isEqualTo(63.35, within(SIX_DIGITS));
        // 1.25 + 0.625 = 1.875 in of 2.25: factor 0.901235, (1900 x 0.901235 - 100) / 1800
        assertThat(share(hot, STEER_LEFT)).isEqualTo(89.57, within(SIX_DIGITS));
        assertThat(estimate.assumptions())
                .contains(Assumption.DRUM_GROWTH, Assumption.NO_FADE, Assumption.COLD_DRUM);
    }

    @Test
    void unequal_strokes_pull_to_one_side() {
        HeatState cold = estimate(Trucks.twoAxle(), 1.25, 1.25, 1.75, 2.25).cold();

        // 2.25 in of 2.5: factor 0.777778, 2850 x 0.777778 - 150 = 2066.67 against 2700
        assertThat(cold.axles().get(1).imbalance().orElseThrow().value())
                .isEqualTo(23.46, within(SIX_DIGITS));
        assertThat(cold.axles().get(0).imbalance().orElseThrow().value()).isZero();
    }

    @Test
    void a_used_up_stroke_gives_no_force() {
        WheelEstimate wheel =
                estimate(Trucks.twoAxle(), 1.25, 1.25, 1.75, 2.5).cold().wheel(DRIVE_RIGHT);

        assertThat(wheel.isBottomed()).isTrue();
        assertThat(known(wheel.force()).atTyre().most().value()).isZero();
    }

    @Test
    void a_stroke_the_chamber_cannot_make_is_noted() {
        HeatState cold = estimate(Trucks.twoAxle(), 1.25, 2.75, 1.75, 1.75).cold();

        assertThat(cold.wheel(WheelId.parse("1R")).notes())
                .containsExactly(StrokeNote.BOTTOMED, StrokeNote.LONGER_THAN_CHAMBER);
    }

    @Test
    void a_brake_that_hardly_moves_is_not_believed() {
        HeatState cold = estimate(Trucks.twoAxle(), 1.25, 1.25, 1.75, 0.1).cold();
        WheelEstimate wheel = cold.wheel(DRIVE_RIGHT);

        assertThat(wheel.notes()).containsExactly(StrokeNote.SUSPICIOUSLY_SHORT);
        assertThat(known(wheel.force()).atTyre().least().value()).isZero();
        assertThat(known(wheel.force()).atTyre().most().value()).isPositive();
        assertThat(cold.axles().get(1).imbalance()).isEmpty();
    }

    @Test
    void a_wheel_without_a_reading_makes_a_range() {
        BrakingEstimate estimate = estimate(Trucks.twoAxle(), 1.25, 1.25, 1.75, -1);
        HeatState cold = estimate.cold();

        assertThat(cold.wheel(DRIVE_RIGHT).status()).isEqualTo(WheelStatus.NOT_READ);
        assertThat(known(cold.force()).most().value()).isEqualTo(16_951.85, within(SIX_DIGITS));
        // less the 5277.46 lbf of the wheel that may give nothing
        assertThat(known(cold.force()).least().value()).isEqualTo(11_674.38, within(SIX_DIGITS));
        assertThat(cold.axles().get(1).imbalance()).isEmpty();
        assertThat(estimate.assumptions()).contains(Assumption.UNREAD_WHEELS);
    }

    @Test
    void without_any_reading_the_vehicle_may_not_stop() {
        Stop stop = known(estimate(Trucks.twoAxle()).cold().stop());

        assertThat(stop.shortest()).isPresent();
        assertThat(stop.longest()).isEmpty();
    }

    @Test
    void without_a_weight_there_is_a_reason_and_no_stop() {
        HeatState cold =
                estimate(
                                Trucks.truck(
                                        Trucks.steer(BrakeKind.DRUM), Trucks.drive(BrakeKind.DRUM)),
                                1.25,
                                1.25,
                                1.75,
                                1.75)
                        .cold();

        assertThat(cold.force().isKnown()).isTrue();
        assertThat(cold.stop().isKnown()).isFalse();
        assertThat(cold.stop().reason()).contains("weight is not known").contains("gross-mass");
        assertThat(known(cold.hold()).grade().isKnown()).isFalse();
    }

    @Test
    void ratings_stand_in_for_loads_and_are_named() {
        Axle steer = Trucks.steer(BrakeKind.DRUM).withGrossMass(Quantity.parse("12 000 lb"));
        Axle drive = Trucks.drive(BrakeKind.DRUM).withGrossMass(Quantity.parse("20 000 lb"));
        BrakingEstimate estimate = estimate(Trucks.truck(steer, drive), 1.25, 1.25, 1.75, 1.75);

        assertThat(estimate.assumptions()).contains(Assumption.WEIGHT_FROM_AXLE_RATINGS);
        assertThat(known(estimate.cold().stop()).shareOfWeight().most().value())
                .isEqualTo(52.97, within(SIX_DIGITS));
    }

    @Test
    void the_road_passes_no_more_than_its_friction() {
        Axle steer = Trucks.steer(BrakeKind.DRUM).withLoad(Quantity.parse("3000 lb"));
        Axle drive = Trucks.drive(BrakeKind.DRUM).withLoad(Quantity.parse("3000 lb"));
        Stop stop =
                known(estimate(Trucks.truck(steer, drive), 1.25, 1.25, 1.75, 1.75).cold().stop());

        assertThat(stop.shareOfWeight().most().value()).isEqualTo(70, within(SIX_DIGITS));
    }

    @Test
    void hydraulic_wheels_leave_the_whole_unknown() {
        WheelEnd end = WheelEnd.of(BrakeKind.DISC);
        VehicleUnit unit =
                VehicleUnit.builder(UnitKind.TRUCK, "12")
                        .brakes(BrakePower.AIR_OVER_HYDRAULIC)
                        .axle(Axle.of(AxlePosition.STEER, end))
                        .axle(Axle.of(AxlePosition.DRIVE, end))
                        .build();
        HeatState cold = estimate(new Vehicle("N", Use.PROPERTY, List.of(unit))).cold();

        assertThat(cold.wheel(STEER_LEFT).status()).isEqualTo(WheelStatus.NOT_ESTIMABLE);
        assertThat(cold.force().reason()).contains("wheel 1L").contains("without a push rod");
        assertThat(cold.hold().reason()).contains("no wheel has a spring brake");
    }

    @Test
    void an_unlisted_actuator_leaves_the_whole_unknown() {
        WheelEnd end = WheelEnd.of(BrakeKind.DRUM, Chamber.of(Mount.OTHER, "X", false), true);
        Vehicle vehicle =
                Trucks.truck(Trucks.steer(BrakeKind.DRUM), Axle.of(AxlePosition.DRIVE, end));

        assertThat(estimate(vehicle, 1.25, 1.25, 1.75, 1.75).cold().force().reason())
                .contains("wheel 2L")
                .contains("area is not known");
    }

    @Test
    void discs_gain_no_stroke_when_hot() {
        Vehicle vehicle = Trucks.truck(Trucks.steer(BrakeKind.DISC), Trucks.drive(BrakeKind.DISC));
        BrakingEstimate estimate = estimate(vehicle, 1.25, 1.25, 1.75, 1.75);

        assertThat(share(estimate.hot().get(1), DRIVE_LEFT))
                .isEqualTo(share(estimate.cold(), DRIVE_LEFT));
        assertThat(estimate.assumptions())
                .contains(Assumption.NO_DISC_GROWTH, Assumption.DISC_LEVER)
                .doesNotContain(Assumption.CAM_RADIUS);
    }

    @Test
    void assumptions_are_those_that_were_needed() {
        WheelEnd end =
                WheelEnd.of(BrakeKind.DRUM, Chamber.clamp(30), true)
                        .withArm(Quantity.parse("6 in"))
                        .withDrumRadius(Quantity.parse("8 in"))
                        .withTyreRadius(Quantity.parse("20 in"));
        Vehicle vehicle =
                Trucks.truck(Axle.of(AxlePosition.STEER, end), Axle.of(AxlePosition.DRIVE, end));
        Conditions conditions =
                Conditions.usual()
                        .withMeasuredAt(GaugePressure.ofPsi(90))
                        .withApplication(GaugePressure.ofPsi(60));

        BrakingEstimate estimate =
                BrakingEstimate.of(vehicle, Trucks.strokes(1.5, 1.5, 1.5, 1.5), conditions);

        assertThat(estimate.assumptions())
                .doesNotContain(
                        Assumption.ARM,
                        Assumption.DRUM_RADIUS,
                        Assumption.STEER_DRUM_RADIUS,
                        Assumption.TYRE_RADIUS,
                        Assumption.MEASURED_AT,
                        Assumption.APPLIED_AT,
                        Assumption.FULL_STROKE_REMEMBERED,
                        Assumption.UNREAD_WHEELS)
                .contains(Assumption.LINING_FRICTION, Assumption.CAM_RADIUS);
        // 2 x (30 x 55) x 6 x 0.35 x 8 x 0.6 / (0.5 x 20)
        assertThat(force(estimate.cold(), DRIVE_LEFT).atTyre().most().value())
                .isEqualTo(3326.4, within(SIX_DIGITS));
        // 1.5 in at 90 psi, 30 psi less: 1.5 - 0.315
        assertThat(estimate.cold().wheel(DRIVE_LEFT).stroke().orElseThrow().value())
                .isEqualTo(1.185, within(SIX_DIGITS));
    }

    @Test
    void a_stroke_for_a_wheel_that_is_not_there_is_the_callers_mistake() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> estimate(Trucks.twoAxle(), 1, 1, 1, 1, 1))
                .withMessageContaining("3L");
    }

    @Test
    void conditions_outside_the_model_are_the_callers_mistake() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Conditions.usual().withMeasuredAt(GaugePressure.ofPsi(8)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Conditions.usual().withApplication(GaugePressure.ofPsi(300)));
    }

    @Test
    void every_assumption_says_what_it_is() {
        for (Assumption assumption : Assumption.values()) {
            assertThat(assumption.label()).as(assumption.name()).isNotBlank();
            assertThat(assumption.basis()).as(assumption.name()).isNotNull();
        }
        assertThat(Assumption.DRUM_GROWTH.value()).isEqualTo("0.001179 in/F");
        assertThat(Assumption.CAM_RADIUS.value()).isEqualTo("0.5 in");
        assertThat(Assumption.NO_FADE.value()).isEmpty();
    }

    private static BrakingEstimate estimate(Vehicle vehicle, double... inches) {
        return BrakingEstimate.of(vehicle, Trucks.strokes(inches), Conditions.usual());
    }

    private static WheelForce force(HeatState state, WheelId wheel) {
        return known(state.wheel(wheel).force());
    }

    private static double share(HeatState state, WheelId wheel) {
        return force(state, wheel).shareOfAdjusted().orElseThrow().most().value();
    }

    private static <T> T known(Answer<T> answer) {
        assertThat(answer.reason()).isEmpty();
        return answer.value().orElseThrow();
    }
}
