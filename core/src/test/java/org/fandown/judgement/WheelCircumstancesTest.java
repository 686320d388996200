package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.Circumstance;
import org.fandown.evidence.Circumstances;
import org.fandown.evidence.Observations;
import org.fandown.evidence.WheelReading;
import org.fandown.evidence.WheelReading.Measured;
import org.fandown.units.Quantity;
import org.fandown.vehicle.WheelId;
import org.junit.jupiter.api.Test;

/** What was measured at one wheel at different times keeps what held then. */
class WheelCircumstancesTest {
    private static final WheelId WHEEL = WheelId.parse("2L");
    private static final Circumstances APPLIED = pedal("applied");
    private static final Circumstances RELEASED = pedal("released");

    @Test
    void strokes_of_one_wheel_keep_the_pedal_each_was_measured_with() {
        WheelReading both =
                seen(Check.PUSHROD_APPLIED_STROKE, "1 1/2 in", APPLIED)
                        .then(seen(Check.PUSHROD_FREE_STROKE, "1/2 in", RELEASED))
                        .wheels()
                        .get(WHEEL);

        assertThat(both.value(Check.PUSHROD_APPLIED_STROKE).map(both::at)).contains(APPLIED);
        assertThat(both.value(Check.PUSHROD_FREE_STROKE).map(both::at)).contains(RELEASED);
    }

    @Test
    void what_was_measured_once_holds_with_the_wheel() {
        WheelReading one = seen(Check.PUSHROD_FREE_STROKE, "1/2 in", RELEASED).wheels().get(WHEEL);

        assertThat(one.value(Check.PUSHROD_FREE_STROKE).map(one::at)).contains(RELEASED);
        assertThat(one.value(Check.PUSHROD_FREE_STROKE).orElseThrow().own()).isEmpty();
    }

    private static Observations seen(Check check, String length, Circumstances at) {
        WheelReading reading =
                new WheelReading(
                        WHEEL,
                        Map.of(check, new Measured(Quantity.parse(length), 1)),
                        Map.of(),
                        Optional.empty(),
                        List.of(),
                        at);
        return new Observations(Map.of(), Map.of(WHEEL, reading), Map.of(), false);
    }

    private static Circumstances pedal(String state) {
        return new Circumstances(Map.of(Circumstance.SERVICE_BRAKE, state), Map.of());
    }
}
