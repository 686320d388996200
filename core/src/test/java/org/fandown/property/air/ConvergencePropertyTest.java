package org.fandown.property.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.fandown.air.AirNode;
import org.fandown.air.AirState;
import org.fandown.air.AirStepper;
import org.fandown.air.StepControl;
import org.fandown.air.TractorTrailer;
import org.fandown.units.TimeSpan;
import org.junit.jupiter.api.Test;

/** How the error of a brake application and release depends on the step. */
class ConvergencePropertyTest {
    /** Its own error is a hundredth of that of the finest step looked at. */
    private static final double REFERENCE_STEP = 5e-6;

    private static final double SAMPLE = 0.01;
    private static final int APPLIED_FOR = 60;
    private static final int SAMPLES = 120;

    /** Halving the step halves the error; corners of valves and chambers leave a tenth. */
    private static final double RATIO = 0.2;

    @Test
    void halving_the_step_halves_the_error() {
        List<double[]> reference = application(REFERENCE_STEP);

        double two = error(application(2e-3), reference);
        double one = error(application(1e-3), reference);
        double half = error(application(0.5e-3), reference);

        assertThat(two / one).isEqualTo(2, within(RATIO));
        assertThat(one / half).isEqualTo(2, within(RATIO));
    }

    private static List<double[]> application(double step) {
        TractorTrailer vehicle = new TractorTrailer();
        AirState state = vehicle.charged();
        AirStepper stepper = new AirStepper(vehicle.network);
        StepControl steps = StepControl.fixed(TimeSpan.ofSeconds(step));
        List<double[]> samples = new ArrayList<>();
        for (int i = 1; i <= SAMPLES; i++) {
            double pedal = i <= APPLIED_FOR ? 80 : 0;
            vehicle.work(state, pedal);
            stepper.advance(
                    state, i * SAMPLE, steps, (after, seconds) -> vehicle.work(after, pedal));
            samples.add(
                    vehicle.network.nodes().stream()
                            .mapToDouble((AirNode node) -> state.gauge(node).inPsi())
                            .toArray());
        }
        return samples;
    }

    private static double error(List<double[]> samples, List<double[]> reference) {
        double largest = 0;
        for (int i = 0; i < samples.size(); i++) {
            for (int k = 0; k < reference.get(i).length; k++) {
                largest = Math.max(largest, Math.abs(samples.get(i)[k] - reference.get(i)[k]));
            }
        }
        return largest;
    }
}
