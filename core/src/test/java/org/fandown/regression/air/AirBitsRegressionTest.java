package org.fandown.regression.air;

import static org.assertj.core.api.Assertions.assertThat;

import org.fandown.air.AirState;
import org.fandown.air.AirStepper;
import org.fandown.air.StepControl;
import org.fandown.air.TractorTrailer;
import org.fandown.units.GaugePressure;
import org.fandown.units.TimeSpan;
import org.junit.jupiter.api.Test;

/**
 * Self-made, guards change alone: the bits of a brake application and release. They must be the
 * same on every machine. Whoever changes the engine on purpose puts the new number here and says
 * why.
 */
class AirBitsRegressionTest {
    private static final long BITS = -777_719_900_738_045_465L;

    @Test
    void an_application_and_release_gives_the_same_bits_everywhere() {
        TractorTrailer vehicle = new TractorTrailer();
        AirStepper stepper = new AirStepper(vehicle.network);
        AirState state = vehicle.charged();
        StepControl control =
                new StepControl(
                        TimeSpan.ofSeconds(0.002),
                        TimeSpan.ofSeconds(0.25),
                        GaugePressure.ofPsi(0.5));
        for (int half = 1; half <= 4; half++) {
            double pedal = half % 2 == 1 ? 80 : 0;
            state.setInflow(vehicle.compressor, half > 2 ? 0.01 : 0);
            vehicle.work(state, pedal);
            state.restartStep();
            stepper.advance(
                    state, half * 5, control, (after, seconds) -> vehicle.work(after, pedal));
        }

        assertThat(state.fingerprint()).isEqualTo(BITS);
    }
}
