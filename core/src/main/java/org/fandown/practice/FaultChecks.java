package org.fandown.practice;

import java.util.List;
import org.fandown.air.Fault;
import org.fandown.check.Check;
import org.fandown.check.Component;

/**
 * Which check is meant to find which fault: what a person would do who suspects it.
 *
 * <p>Other checks may show it too, and a fault may be too small for its check. The table in {@code
 * docs/faults.md} says what the model shows at the usual size.
 */
public final class FaultChecks {
    private FaultChecks() {}

    /** Returns the checks that are meant to find a fault; empty if it is only looked at. */
    public static List<Check> checks(Fault fault) {
        return switch (fault.group()) {
            case SUPPLY -> supply(fault);
            case RESERVOIRS -> reservoirs(fault);
            case SERVICE -> service(fault);
            case PARKING -> parking(fault);
            case TOWED -> towed(fault);
            case WHEELS -> wheels(fault);
            case INSTRUMENTS -> instruments(fault);
        };
    }

    /** Returns the parts that show a fault to a person who looks at them or listens. */
    public static List<Component> parts(Fault fault) {
        return switch (fault) {
            case PURGE_STUCK_SHUT, DRYER_CHECK_OPEN -> List.of(Component.AIR_SYSTEM);
            case SPRING_CAGED, SPRING_BROKEN -> List.of(Component.PARKING_BRAKE);
            case BRAKE_SEIZED -> List.of(Component.SERVICE_BRAKES, Component.PARKING_BRAKE);
            default -> List.of();
        };
    }

    private static List<Check> supply(Fault fault) {
        return switch (fault) {
            case GOVERNOR_HIGH, GOVERNOR_LOW, GOVERNOR_STUCK_LOADED ->
                    List.of(Check.GOVERNOR_CUT_OUT);
            case GOVERNOR_STICKING -> List.of(Check.GOVERNOR_CUT_OUT, Check.GOVERNOR_CUT_IN);
            case CUT_IN_LOW -> List.of(Check.GOVERNOR_CUT_IN);
            case GOVERNOR_STUCK_UNLOADED, PURGE_STUCK_OPEN ->
                    List.of(Check.BUILD_UP, Check.GOVERNOR_CUT_OUT);
            case COMPRESSOR_WORN, COMPRESSOR_SLIPPING, DISCHARGE_LEAK, DRYER_BLOCKED ->
                    List.of(Check.BUILD_UP);
            case OIL_CARRIED_OVER -> List.of(Check.RESERVOIR_DRAIN);
            case SAFETY_VALVE_WEAK, SAFETY_VALVE_STUCK -> List.of(Check.SAFETY_VALVE_OPENING);
            default -> List.of();
        };
    }

    private static List<Check> reservoirs(Fault fault) {
        return switch (fault) {
            case SUPPLY_LEAK, PARKING_RESERVOIR_LEAK, SUPPLY_DRAIN_LEAKING ->
                    List.of(Check.NO_AUDIBLE_LEAK);
            case PRIMARY_LEAK, SECONDARY_LEAK, DRAIN_LEAKING, SECONDARY_DRAIN_LEAKING ->
                    List.of(Check.AIR_LOSS_RELEASED, Check.NO_AUDIBLE_LEAK);
            case PRIMARY_CHECK_OPEN, SECONDARY_CHECK_OPEN -> List.of(Check.CHECK_VALVE);
            case PRIMARY_CHECK_SHUT, SECONDARY_CHECK_SHUT -> List.of(Check.BUILD_UP);
            case DASH_CHECK_STUCK -> List.of(Check.SPRING_BRAKE_FEED);
            default -> List.of(Check.RESERVOIR_DRAIN);
        };
    }

    private static List<Check> service(Fault fault) {
        return switch (fault) {
            case FOOT_VALVE_SEAT_LEAK, FOOT_VALVE_SECONDARY_SEAT_LEAK, RELAY_SEAT_LEAK ->
                    List.of(Check.AIR_LOSS_RELEASED, Check.NO_AUDIBLE_LEAK);
            case FOOT_VALVE_NARROW, RELAY_SLOW, QUICK_RELEASE_SLOW, HOSE_NARROW ->
                    List.of(Check.APPLICATION_TIME, Check.RELEASE_TIME);
            case RELAY_STUCK_SHUT -> List.of(Check.SERVICE_BRAKE_RESPONSE);
            case STOP_LAMP_SWITCH_DEAD -> List.of(Check.STOP_LAMPS);
            default -> List.of(Check.AIR_LOSS_APPLIED);
        };
    }

    private static List<Check> parking(Fault fault) {
        return switch (fault) {
            case PARKING_VALVE_LEAK, SPRING_RELAY_LEAK, SPRING_DIAPHRAGM_LEAK ->
                    List.of(Check.AIR_LOSS_RELEASED, Check.NO_AUDIBLE_LEAK);
            case SPRING_DRAGGING -> List.of(Check.PARKING_BRAKE_RELEASE);
            case PARKING_POPS_EARLY, PARKING_POPS_LATE, PARKING_KNOB_STICKS ->
                    List.of(Check.PARKING_VALVE_CLOSING);
            case NO_ANTI_COMPOUND -> List.of(Check.EXHAUST_VALVES);
            case NO_MODULATION -> List.of(Check.EMERGENCY_CONTROL);
            default -> List.of();
        };
    }

    private static List<Check> towed(Fault fault) {
        return switch (fault) {
            case TRAILER_RESERVOIR_LEAK,
                    SUPPLY_LINE_LEAK,
                    SUPPLY_GLAD_HAND_LEAK,
                    TRAILER_RELAY_SEAT_LEAK,
                    TRAILER_DRAIN_LEAKING ->
                    List.of(Check.AIR_LOSS_RELEASED, Check.NO_AUDIBLE_LEAK);
            case CONTROL_LINE_LEAK, CONTROL_GLAD_HAND_LEAK -> List.of(Check.AIR_LOSS_APPLIED);
            case SUPPLY_LINE_NARROW ->
                    List.of(Check.TRAILER_BRAKES_APPLY, Check.TRAILER_BRAKES_RELEASE);
            case CONTROL_LINE_NARROW -> List.of(Check.APPLICATION_TIME, Check.RELEASE_TIME);
            case LINES_CROSSED ->
                    List.of(Check.TRAILER_BRAKES_RELEASE, Check.TRAILER_SERVICE_BRAKES);
            case SHUT_OFF_SHUT, TRAILER_CHECK_SHUT -> List.of(Check.AIR_REACHES_TRAILERS);
            case TRAILER_RELAY_STUCK, PROTECTION_STUCK_SHUT, HAND_VALVE_DEAD, HAND_CHECK_STUCK ->
                    List.of(Check.TRAILER_SERVICE_BRAKES);
            case TRAILER_CHECK_OPEN -> List.of(Check.SUPPLY_LINE_TIGHT);
            case WATER_IN_TRAILER, TRAILER_DRAIN_FROZEN -> List.of(Check.RESERVOIR_DRAIN);
            case TRAILER_KNOB_POPS_EARLY, TRAILER_KNOB_POPS_LATE ->
                    List.of(Check.TRAILER_SUPPLY_CLOSING);
            case TRAILER_KNOB_STICKS ->
                    List.of(Check.TRAILER_SUPPLY_CLOSING, Check.TRACTOR_PROTECTION);
            case PROTECTION_STUCK_OPEN -> List.of(Check.TRACTOR_PROTECTION_FITTED);
            default -> List.of();
        };
    }

    private static List<Check> wheels(Fault fault) {
        return switch (fault) {
            case ADJUSTER_OUT -> List.of(Check.PUSHROD_APPLIED_STROKE, Check.PUSHROD_FREE_STROKE);
            case BRAKE_SEIZED -> List.of(Check.SERVICE_BRAKE_RESPONSE);
            case CHAMBER_UNEQUAL -> List.of(Check.CHAMBER_MATCH);
            default -> List.of(Check.PUSHROD_FREE_STROKE);
        };
    }

    private static List<Check> instruments(Fault fault) {
        return switch (fault) {
            case LOW_AIR_SET_LOW -> List.of(Check.LOW_AIR_WARNING);
            case LOW_AIR_SWITCH_DEAD -> List.of(Check.LOW_AIR_WARNING, Check.LOW_AIR_WARNING_WORKS);
            case LOW_AIR_LAMP_DEAD, LOW_AIR_BUZZER_DEAD -> List.of(Check.LOW_AIR_WARNING_WORKS);
            case PRIMARY_GAUGE_OFF, SECONDARY_GAUGE_OFF -> List.of(Check.GAUGE_ERROR);
            case PRIMARY_GAUGE_STUCK, SECONDARY_GAUGE_STUCK -> List.of(Check.GAUGE_WORKS);
            case ABS_LAMP_STAYS_ON, ABS_LAMP_DEAD -> List.of(Check.ABS_LAMP);
            case TRAILER_ABS_LAMP_STAYS_ON, TRAILER_ABS_LAMP_DEAD ->
                    List.of(Check.TRAILER_ABS_LAMP);
            default -> List.of();
        };
    }
}
