package org.fandown.bench.air;

import java.util.Arrays;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.sampling.StepNormalizer;

/** The rig run by Hipparchus: Dormand and Prince's method of order 8, step by step of its own. */
final class DormandPrinceRun {
    private static final double SHORTEST = 1e-10;
    private static final double LONGEST = 1;

    /** Mass times temperature is some 300 times mass. */
    private static final double KELVINS = 300;

    private final Rig rig;

    DormandPrinceRun(Rig rig) {
        this.rig = rig;
    }

    /**
     * Runs the script, anew from each switching.
     *
     * @param relative error allowed in a step, of each unknown
     * @param kilograms the same for little air, kg
     * @return the pressure of each reservoir after each second, psi
     */
    double[][] run(double relative, double kilograms) {
        RigEquations equations = new RigEquations(rig);
        double[] y = equations.start();
        double[] absolute = new double[y.length];
        double[] relatively = new double[y.length];
        Arrays.fill(absolute, kilograms);
        Arrays.fill(absolute, rig.vessels.size(), y.length, kilograms * KELVINS);
        Arrays.fill(relatively, relative);
        double[][] seen = new double[RigScript.SECONDS][];
        for (RigScript.Phase phase : RigScript.phases()) {
            equations.begin(phase);
            var solver = new DormandPrince853Integrator(SHORTEST, LONGEST, absolute, relatively);
            solver.addStepHandler(
                    new StepNormalizer(
                            1,
                            (state, last) -> {
                                int second = (int) Math.round(state.getTime()) - 1;
                                if (second >= phase.from()) {
                                    seen[second] = equations.reservoirPsi(state.getPrimaryState());
                                }
                            }));
            y =
                    solver.integrate(equations, new ODEState(phase.from(), y), phase.until())
                            .getPrimaryState();
        }
        return seen;
    }
}
