package org.fandown.procedure;

import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;

/** What the trade does beyond the rules, and where checks are made in passing. */
final class GoodPractice {
    private GoodPractice() {}

    /** Whether a thorough order of work takes in the check even where no rule asks. */
    static boolean asks(Check check) {
        return switch (check) {
            case GOVERNOR_CUT_OUT,
                    GOVERNOR_CUT_IN,
                    LOW_AIR_WARNING,
                    LOW_AIR_WARNING_WORKS,
                    PARKING_VALVE_CLOSING,
                    TRAILER_SUPPLY_CLOSING,
                    TRACTOR_PROTECTION,
                    PRESSURE_BEFORE_DRIVING,
                    BUILD_UP,
                    AIR_LOSS_APPLIED,
                    AIR_LOSS_RELEASED,
                    PUSHROD_APPLIED_STROKE,
                    PUSHROD_FREE_STROKE,
                    GAUGE_WORKS,
                    NO_AUDIBLE_LEAK,
                    SERVICE_LINE_TIGHT,
                    SUPPLY_LINE_TIGHT,
                    TRAILER_BRAKES_APPLY,
                    TRAILER_BRAKES_RELEASE,
                    TRAILER_BRAKES_HOLD,
                    AIR_REACHES_TRAILERS,
                    TRAILER_SERVICE_BRAKES,
                    PARKING_BRAKE_HOLD,
                    PARKING_BRAKE_RELEASE,
                    SERVICE_BRAKE_RESPONSE,
                    CHECK_VALVE,
                    RESERVOIR_DRAIN,
                    EXHAUST_VALVES,
                    ABS_LAMP,
                    TRAILER_ABS_LAMP,
                    STOP_LAMPS,
                    WALK_ROUND ->
                    true;
            default -> false;
        };
    }

    /**
     * Kinds of checks, each in the order in which the trade makes them. An order of more than
     * twenty checks keeps to it, because free orders of so many checks are too many to compare.
     */
    static final List<List<Check>> KINDS =
            List.of(
                    List.of(
                            Check.WALK_ROUND,
                            Check.RESERVOIR_DRAIN,
                            Check.STOP_LAMPS,
                            Check.NO_AUDIBLE_LEAK,
                            Check.EXHAUST_VALVES,
                            Check.PUSHROD_APPLIED_STROKE,
                            Check.PUSHROD_FREE_STROKE,
                            Check.TRAILER_BRAKES_RELEASE,
                            Check.AIR_REACHES_TRAILERS),
                    List.of(
                            Check.ABS_LAMP,
                            Check.TRAILER_ABS_LAMP,
                            Check.BUILD_UP,
                            Check.GOVERNOR_CUT_OUT,
                            Check.GOVERNOR_CUT_IN,
                            Check.SERVICE_LINE_TIGHT,
                            Check.TRAILER_BRAKES_APPLY,
                            Check.SUPPLY_LINE_TIGHT,
                            Check.TRACTOR_PROTECTION,
                            Check.AIR_LOSS_RELEASED,
                            Check.AIR_LOSS_APPLIED,
                            Check.CHECK_VALVE,
                            Check.LOW_AIR_WARNING,
                            Check.TRAILER_SUPPLY_CLOSING,
                            Check.PARKING_VALVE_CLOSING),
                    List.of(
                            Check.PARKING_BRAKE_HOLD,
                            Check.TRAILER_BRAKES_HOLD,
                            Check.PARKING_BRAKE_RELEASE,
                            Check.TRAILER_SERVICE_BRAKES,
                            Check.SERVICE_BRAKE_RESPONSE,
                            Check.PRESSURE_BEFORE_DRIVING));

    /** The check in whose step another is made in passing, empty if it is a step of its own. */
    static Optional<Check> host(Check check) {
        return switch (check) {
            case GAUGE_WORKS -> Optional.of(Check.GOVERNOR_CUT_OUT);
            case LOW_AIR_WARNING_WORKS -> Optional.of(Check.LOW_AIR_WARNING);
            case BRAKES_OVER_LIMIT, STROKE_INDICATOR_HIDDEN, CAM_ANGLE ->
                    Optional.of(Check.PUSHROD_APPLIED_STROKE);
            case COMPONENT_CONDITION,
                    LINES_AND_HOSES,
                    COMPRESSOR_DRIVE,
                    ALCOHOL_EVAPORATOR,
                    LINING_THICKNESS,
                    WEDGE_LINING_MOVEMENT ->
                    Optional.of(Check.WALK_ROUND);
            default -> Optional.empty();
        };
    }

    /** Why a check is no part of an order of work. */
    static String whyNot(Check check) {
        return switch (check.kind()) {
            case DESIGN, AXLE_MATCH -> "it follows from the vehicle file";
            case REPORT, DUTY -> "it is about papers";
            default -> "it needs a tester, a test track or a workshop";
        };
    }
}
