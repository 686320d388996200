package org.fandown.braking;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fandown.units.Length;
import org.fandown.units.Temperature;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/**
 * What the measured strokes of a vehicle mean for stopping and holding it, cold and hot.
 *
 * <p>An estimate, not a measurement and not a verdict: it rests on {@link #assumptions}, which must
 * be shown with it. A wheel whose stroke was not read makes the results a range, from no force at
 * that wheel to full adjustment. Fully adjusted means a free stroke of 0.5 in, the middle of what a
 * component maker recommends, and not a part of a legal limit, so that no law bends the physics.
 *
 * @param conditions what was asked for
 * @param cold the estimate with drums as cold as when the strokes were measured
 * @param hot the same for each hot temperature asked for
 * @param assumptions what was taken for granted, in the order of the enumeration
 */
public record BrakingEstimate(
        Conditions conditions, HeatState cold, List<HeatState> hot, Set<Assumption> assumptions) {

    /**
     * Makes the estimate.
     *
     * @param vehicle the vehicle
     * @param appliedStrokes applied strokes as measured cold; wheels left out were not read
     * @param conditions what is asked for
     * @throws IllegalArgumentException if a stroke is given for a wheel without a push rod
     */
    public static BrakingEstimate of(
            Vehicle vehicle, Map<WheelId, Length> appliedStrokes, Conditions conditions) {
        requireWheels(vehicle, appliedStrokes);
        Assumed assumed = new Assumed();
        WheelModels models = new WheelModels(vehicle, measuredAt(conditions, assumed), assumed);
        Map<WheelId, WheelModel> wheels = new LinkedHashMap<>();
        for (WheelId id : vehicle.wheels()) {
            wheels.put(id, models.of(id, Optional.ofNullable(appliedStrokes.get(id))));
        }
        StateMaker maker =
                new StateMaker(
                        wheels,
                        Weight.of(vehicle, assumed),
                        application(conditions, assumed),
                        rolling(conditions, assumed),
                        new RoadEstimator(conditions.speed(), assumed));
        HeatState cold = maker.at(Temperature.ofFahrenheit(assumed.use(Assumption.COLD_DRUM)));
        List<HeatState> hot = conditions.hotDrums().stream().map(maker::at).toList();
        if (!hot.isEmpty()) {
            assumed.note(Assumption.DRUM_GROWTH);
            assumed.note(Assumption.NO_FADE);
        }
        return new BrakingEstimate(conditions, cold, hot, assumed.all());
    }

    private record StateMaker(
            Map<WheelId, WheelModel> wheels,
            Answer<Weight> weight,
            double psi,
            double rolling,
            RoadEstimator road) {
        HeatState at(Temperature drum) {
            WheelEstimator each = new WheelEstimator(psi, drum, rolling);
            return new StateEstimator(wheels, each, weight, road).estimate();
        }
    }

    private static double rolling(Conditions conditions, Assumed assumed) {
        if (conditions.rollingStop().isEmpty()) {
            return 0;
        }
        assumed.note(Assumption.ROLLING_STROKE);
        assumed.note(Assumption.ROLLING_STROKE_RATE);
        return StrokeModel.rollingGrowth(conditions.rollingStop().get()).inInches();
    }

    private static double measuredAt(Conditions conditions, Assumed assumed) {
        return conditions.measuredAt().isPresent()
                ? conditions.measuredAt().get().inPsi()
                : assumed.use(Assumption.MEASURED_AT);
    }

    private static double application(Conditions conditions, Assumed assumed) {
        return conditions.application().isPresent()
                ? conditions.application().get().inPsi()
                : assumed.use(Assumption.APPLIED_AT);
    }

    private static void requireWheels(Vehicle vehicle, Map<WheelId, Length> strokes) {
        List<WheelId> measurable = vehicle.wheelsWithPushRod();
        for (WheelId id : strokes.keySet()) {
            if (!measurable.contains(id)) {
                throw new IllegalArgumentException(
                        "Wheel " + id + " of '" + vehicle.name() + "' has no push rod to measure.");
            }
        }
    }
}
