package org.fandown.bench.air;

import static org.assertj.core.api.Assertions.assertThat;

import org.fandown.air.StepControl;
import org.fandown.units.GaugePressure;
import org.fandown.units.TimeSpan;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The engine against Hipparchus' Dormand and Prince method of order 8, with equations of its own,
 * over an application, a fan down with both knobs pulled after it, and a rebuild: four reservoirs,
 * each second of four minutes.
 */
class SolverCrossCheckTest {
    /** The error allowed in a reservoir: far below the 1 psi to which a gauge is read. */
    private static final double RESERVOIR_PSI = 0.1;

    /** The same with steps of a millisecond, whose own error is a fortieth of it. */
    private static final double FINE_PSI = 0.0025;

    /** How much the solver itself may change if its tolerances are a thousand times wider. */
    private static final double SOLVER_PSI = 0.001;

    private static final Rig RIG = new Rig();
    private static double[][] expected = new double[0][];

    @BeforeAll
    static void solve() {
        expected = new DormandPrinceRun(RIG).run(1e-9, 1e-12);
    }

    @Test
    void the_solver_is_sure_of_what_is_expected() {
        double[][] looser = new DormandPrinceRun(RIG).run(1e-6, 1e-9);

        assertThat(PressureError.of(looser, expected).largest()).isLessThan(SOLVER_PSI);
    }

    @Test
    void the_script_fans_down_and_rebuilds() {
        assertThat(expected[89][1]).as("primary after the fan down").isLessThan(40);
        assertThat(expected[199][1]).as("primary after the rebuild").isGreaterThan(115);
    }

    @Test
    void even_steps_of_a_millisecond_agree() {
        TimeSpan step = TimeSpan.ofSeconds(0.001);
        double[][] found =
                new EngineRun(RIG).run(new StepControl(step, step, GaugePressure.ofPsi(1)));

        assertThat(PressureError.of(found, expected).largest()).isLessThan(FINE_PSI);
    }

    @Test
    void steps_of_the_benchmark_agree_as_well_as_those_of_the_solver_beside_it() {
        double[][] found = new EngineRun(RIG).run(AirBenchmark.RIG_STEPS);
        double[][] other =
                new DormandPrinceRun(RIG)
                        .run(AirBenchmark.RIG_RELATIVE, AirBenchmark.RIG_KILOGRAMS);

        double error = PressureError.of(found, expected).largest();
        assertThat(error).isLessThan(RESERVOIR_PSI);
        assertThat(error).isLessThan(PressureError.of(other, expected).largest());
    }
}
