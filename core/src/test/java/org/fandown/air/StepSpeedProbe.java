package org.fandown.air;

import java.lang.management.ManagementFactory;
import java.util.Locale;
import org.fandown.units.GaugePressure;
import org.fandown.units.TimeSpan;

/**
 * Prints how fast a tractor and semi-trailer go through time, in processor time of one thread, and
 * how far the reservoirs are from those of a fine step. To look at, not to judge.
 */
public final class StepSpeedProbe {
    private static final double CYCLE = 20;
    private static final double SPAN = 200;
    private static final double FINE = 1e-4;

    private final TractorTrailer vehicle = new TractorTrailer();
    private final AirStepper stepper = new AirStepper(vehicle.network);

    /** Runs the probe; takes no arguments. */
    public static void main(String[] arguments) {
        StepSpeedProbe probe = new StepSpeedProbe();
        probe.print();
    }

    private void print() {
        AirState fine = run(StepControl.fixed(TimeSpan.ofSeconds(FINE)), new int[1]);
        for (int warm = 0; warm < 3; warm++) {
            print("warming up", StepControl.LIVE, fine);
        }
        print("fixed 5 ms", StepControl.LIVE, fine);
        print("fixed 10 ms", StepControl.fixed(TimeSpan.ofSeconds(0.01)), fine);
        print("2 to 100 ms, 0.5 psi", control(0.002, 0.1, 0.5), fine);
        print("2 to 250 ms, 0.5 psi", control(0.002, 0.25, 0.5), fine);
        print("5 to 250 ms, 1 psi", control(0.005, 0.25, 1), fine);
    }

    private static StepControl control(double shortest, double longest, double psi) {
        return new StepControl(
                TimeSpan.ofSeconds(shortest),
                TimeSpan.ofSeconds(longest),
                GaugePressure.ofPsi(psi));
    }

    private void print(String name, StepControl control, AirState fine) {
        int[] steps = new int[1];
        long roundsBefore = stepper.rounds();
        long begun = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        AirState state = run(control, steps);
        double taken = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - begun;
        double error =
                Math.max(
                        Math.abs(state.pascals(vehicle.primary) - fine.pascals(vehicle.primary)),
                        Math.abs(
                                state.pascals(vehicle.secondary)
                                        - fine.pascals(vehicle.secondary)));
        System.out.printf(
                Locale.ROOT,
                "%-22s %7d steps %6.0f ns/step %8.0f x real time %5.2f rounds/step, off %.4f psi%n",
                name,
                steps[0],
                taken / steps[0],
                SPAN * 1e9 / taken,
                (double) (stepper.rounds() - roundsBefore) / steps[0],
                new GaugePressure(error).inPsi());
    }

    /** Applies 80 psi for half of each cycle and releases for the other half. */
    private AirState run(StepControl control, int[] steps) {
        AirState state = vehicle.charged();
        for (int half = 0; half * CYCLE / 2 < SPAN; half++) {
            double pedal = half % 2 == 0 ? 80 : 0;
            vehicle.work(state, pedal);
            state.restartStep();
            stepper.advance(
                    state,
                    (half + 1) * CYCLE / 2,
                    control,
                    (after, seconds) -> {
                        vehicle.work(after, pedal);
                        steps[0]++;
                    });
        }
        return state;
    }
}
