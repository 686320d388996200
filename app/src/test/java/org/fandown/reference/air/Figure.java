package org.fandown.reference.air;

import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** What is found on a sound vehicle, with what the table in the documents calls it. */
// The functions capture nothing.
@SuppressWarnings("ImmutableEnumChecker")
enum Figure {
    CUT_OUT("cut-out, higher needle, psi", 1, v -> true, v -> v.tests.cutOut()),
    CUT_IN("cut-in, higher needle, psi", 1, v -> true, v -> v.tests.cutIn(Figure.GENTLE)),
    BUILD_UP("85 to 100 psi at 1300 rpm, s", 0, v -> true, v -> v.tests.buildUp(1300)),
    BUILD_UP_AT_600("at 600 rpm, s", 0, v -> true, v -> v.tests.buildUp(600)),
    BUILD_UP_AT_900("at 900 rpm, s", 0, v -> true, v -> v.tests.buildUp(900)),
    FROM_50("50 to 90 psi at 1200 rpm, s", 0, v -> true, v -> v.tests.buildUpFromFifty(1200)),
    LOW_AIR("low-air warning, lower needle, psi", 1, v -> true, v -> v.tests.lowAirLamp()),
    PARKING_POP("parking knob, psi", 1, v -> v.hasChambers(), v -> v.tests.parkingPop()),
    TRAILER_POP("trailer knob, psi", 1, v -> v.tows(), v -> v.tests.trailerPop()),
    LOSS_RELEASED("loss in 1 min, released, psi", 2, v -> true, v -> v.tests.lossReleased()),
    LOSS_APPLIED("applied, psi", 2, v -> true, v -> v.tests.lossApplied()),
    LEFT("left of 100 psi after one application, psi", 1, v -> true, HealthyVehicle::left),
    CHAMBERS(
            "least chamber over fullest reservoir, %",
            0, v -> v.hasChambers(), HealthyVehicle::percentInChambers),
    STOP_LAMPS("stop lamps, psi", 1, v -> true, HealthyVehicle::stopLampsAt),
    KEPT("kept when the lines part, psi", 1, v -> v.tows(), HealthyVehicle::keptAfterLinesParted);

    /** Pedal travel that takes a psi or two at a time. */
    private static final double GENTLE = 0.3;

    final String label;
    final int decimals;
    private final Predicate<HealthyVehicle> applies;
    private final ToDoubleFunction<HealthyVehicle> find;

    Figure(
            String label,
            int decimals,
            Predicate<HealthyVehicle> applies,
            ToDoubleFunction<HealthyVehicle> find) {
        this.label = label;
        this.decimals = decimals;
        this.applies = applies;
        this.find = find;
    }

    boolean appliesTo(HealthyVehicle vehicle) {
        return applies.test(vehicle);
    }

    double of(HealthyVehicle vehicle) {
        return find.applyAsDouble(vehicle);
    }
}
