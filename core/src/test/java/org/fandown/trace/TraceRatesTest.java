package org.fandown.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Traces as networks give them: pressures once a second, other channels many times between, so that
 * most moments hold no pressure.
 */
class TraceRatesTest {
    /** One step of the message with pressures, psi: 8 kPa of 6.894757 kPa. */
    private static final double STEP = 8 / 6.894757;

    private final List<Recognised> found = new ArrayList<>();
    private final TraceWatch watch = new TraceWatch(found::add);

    /** From 60 psi up by 1 psi a second to 120 psi, then a minute without the engine. */
    private static double psi(double seconds) {
        return seconds < 60 ? 60 + seconds : Math.min(120, 120 - (seconds - 100) / 30);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 10, 50})
    void tests_are_recognised_whatever_the_rate_of_the_engine(int perSecond) {
        for (int i = 0; i < 220 * perSecond; i++) {
            double seconds = (double) i / perSecond;
            double rpm = seconds < 90 ? 900 : 0;
            watch.sample(Channel.ENGINE_SPEED, seconds, rpm);
            if (i % perSecond == perSecond / 2) {
                double shown = Math.rint(psi(seconds) / STEP) * STEP;
                watch.sample(Channel.PRIMARY, seconds, shown);
                watch.sample(Channel.SECONDARY, seconds, shown);
            }
        }
        watch.finish();

        assertThat(found)
                .extracting(Recognised::kind)
                .containsExactly(
                        Recognised.Kind.BUILD_UP, Recognised.Kind.CUT_OUT, Recognised.Kind.LOSS);
        assertThat(found.get(1).value()).isEqualTo(120, within(STEP));
        // 2 psi in a minute, in steps of 1.16 psi over two minutes.
        assertThat(found.get(2).value()).isEqualTo(2, within(STEP));
        assertThat(found.get(2).start()).isEqualTo(120, within(STEP));
    }
}
