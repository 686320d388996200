package org.fandown.bench.air;

import java.util.List;
import java.util.Locale;
import org.fandown.air.AirSystem;
import org.fandown.air.StepControl;
import org.fandown.units.GaugePressure;
import org.fandown.units.TimeSpan;

/** Prints how far what is timed is from what is right, as a table in Markdown. */
public final class AirAccuracy {
    private static final double FINE_SECONDS = 0.00025;

    private static final List<String> VEHICLES =
            List.of(
                    "tractor-box-trailer",
                    "artic-disc",
                    "artic-tri-axle",
                    "doubles-with-dolly",
                    "truck-full-trailer",
                    "straight-truck",
                    "gravel-truck-manual-adjusters",
                    "city-bus",
                    "motor-coach-disc",
                    "air-over-hydraulic-truck");

    private AirAccuracy() {}

    /** Prints the tables; takes no arguments. */
    public static void main(String... arguments) {
        System.out.print(
                """
                | run | largest, psi | 99 of 100 within, psi | at the end, psi |
                | --- | ---: | ---: | ---: |
                """);
        Rig rig = new Rig();
        DormandPrinceRun solver = new DormandPrinceRun(rig);
        double[][] right = solver.run(1e-9, 1e-12);
        print("rigByEngine", new EngineRun(rig).run(AirBenchmark.RIG_STEPS), right);
        print(
                "rigByDormandPrince",
                solver.run(AirBenchmark.RIG_RELATIVE, AirBenchmark.RIG_KILOGRAMS),
                right);
        print("the rig in even steps of 0.25 ms", new EngineRun(rig).run(fine()), right);
        for (String vehicle : VEHICLES) {
            InCab test = new InCab(InCab.example(vehicle));
            print(vehicle, test.reservoirs(AirSystem.QUICK), test.reservoirs(fine()));
        }
    }

    private static StepControl fine() {
        TimeSpan step = TimeSpan.ofSeconds(FINE_SECONDS);
        return new StepControl(step, step, GaugePressure.ofPsi(1));
    }

    private static void print(String run, double[][] found, double[][] right) {
        PressureError error = PressureError.of(found, right);
        System.out.printf(
                Locale.ROOT,
                "| %s | %.4f | %.4f | %.4f |%n",
                run,
                error.largest(),
                error.mostly(),
                error.atEnd());
    }
}
