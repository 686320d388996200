package org.fandown.bench.air;

import java.util.ArrayList;
import java.util.List;

/**
 * What is done to the rig: an application held, a fan down by full applications until both knobs
 * pop out, a rebuild by the compressor, and a pause. All moments are whole seconds.
 */
final class RigScript {
    /** How long it takes, s. */
    static final int SECONDS = 240;

    private static final double FULL_PSI = 150;

    /**
     * What holds from a moment on.
     *
     * @param from the moment, s
     * @param until the moment at which the next begins, s
     * @param pedalPsi pressure the pedal asks for
     * @param knobsIn whether the parking and trailer knobs are in
     * @param pumped air from the compressor, kg/s
     */
    record Phase(int from, int until, double pedalPsi, boolean knobsIn, double pumped) {}

    private RigScript() {}

    /** Returns the phases in order. */
    static List<Phase> phases() {
        List<Phase> phases = new ArrayList<>();
        phases.add(new Phase(0, 1, 0, true, 0));
        phases.add(new Phase(1, 25, 80, true, 0));
        phases.add(new Phase(25, 30, 0, true, 0));
        for (int at = 30; at < 90; at += 4) {
            phases.add(new Phase(at, at + 2, FULL_PSI, true, 0));
            phases.add(new Phase(at + 2, at + 4, 0, true, 0));
        }
        phases.add(new Phase(90, 100, 0, false, 0));
        phases.add(new Phase(100, 200, 0, true, 0.008));
        phases.add(new Phase(200, SECONDS, 0, true, 0));
        return List.copyOf(phases);
    }
}
