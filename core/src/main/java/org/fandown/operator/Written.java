package org.fandown.operator;

import java.util.List;
import org.fandown.check.Check;
import org.fandown.check.CheckKind;
import org.fandown.evidence.Observations;
import org.fandown.evidence.WheelReading;
import org.fandown.procedure.CheckStep;
import org.fandown.vehicle.WheelId;

/** What has to be written down of a check before it is made. */
final class Written {
    private Written() {}

    /** The checks of a step that a person writes something down of. */
    static List<Check> of(CheckStep step) {
        return step.checks().stream().filter(check -> isWritten(check.kind())).toList();
    }

    /** Those of which nothing is written down yet, or not of every wheel. */
    static List<Check> open(CheckStep step, Observations noted) {
        return of(step).stream().filter(check -> !isNoted(check, step, noted)).toList();
    }

    private static boolean isWritten(CheckKind kind) {
        return switch (kind) {
            case VALUE, BUILD_UP, AIR_LOSS, RESERVE, YES_NO, WHEEL_VALUE, WALK_ROUND, COMPONENT ->
                    true;
            case WHEEL_YES_NO, BRAKE_COUNT, AXLE_MATCH, DESIGN, REPORT, DUTY -> false;
        };
    }

    private static boolean isNoted(Check check, CheckStep step, Observations noted) {
        return switch (check.kind()) {
            case WHEEL_VALUE -> {
                List<WheelId> wheels = step.manner().wheels();
                yield wheels.isEmpty()
                        ? noted.wheels().values().stream().anyMatch(w -> has(w, check))
                        : wheels.stream()
                                .allMatch(
                                        wheel ->
                                                noted.wheels().containsKey(wheel)
                                                        && has(noted.wheels().get(wheel), check));
            }
            case WALK_ROUND, COMPONENT ->
                    noted.allOtherPartsSeen()
                            || (!step.manner().parts().isEmpty()
                                    && noted.parts().keySet().containsAll(step.manner().parts()));
            default -> noted.reading(check).isPresent();
        };
    }

    private static boolean has(WheelReading wheel, Check check) {
        return wheel.values().containsKey(check);
    }
}
