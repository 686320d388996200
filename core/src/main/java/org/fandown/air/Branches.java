package org.fandown.air;

import java.util.List;
import org.fandown.air.BranchSpec.Kind;

/** The ways between the volumes of a network as flat tables, for the inner loop. */
final class Branches {
    final int count;

    /** Whether its opening goes with a pressure: lapping and protection valves. */
    final boolean[] laps;

    /** Whether air passes from first to second alone: all but plain ways and inlets. */
    final boolean[] oneWay;

    /** Whether it is the exhaust of a lapping valve. */
    final boolean[] exhaust;

    final int[] link;
    final int[] from;
    final int[] to;
    final double[] coefficient;
    final double[] ratio;
    final double[] stretch;
    final double[] slope;

    /** Opening pressure of a check or protection valve, Pa; 0 for other kinds. */
    final double[] crack;

    /**
     * How far above the command of its link an exhaust or protection valve begins, Pa; 0 for other
     * kinds.
     */
    final double[] deadband;

    final double[] band;

    /** Volumes whose pressure may command it. */
    final int[][] pilots;

    Branches(List<BranchSpec> specs) {
        count = specs.size();
        laps = new boolean[count];
        oneWay = new boolean[count];
        exhaust = new boolean[count];
        link = new int[count];
        from = new int[count];
        to = new int[count];
        coefficient = new double[count];
        ratio = new double[count];
        stretch = new double[count];
        slope = new double[count];
        crack = new double[count];
        deadband = new double[count];
        band = new double[count];
        pilots = new int[count][];
        for (int e = 0; e < count; e++) {
            fill(e, specs.get(e));
        }
    }

    private void fill(int e, BranchSpec spec) {
        double b = spec.way().criticalRatio();
        oneWay[e] = spec.kind() != Kind.PLAIN && spec.kind() != Kind.INLET;
        laps[e] = spec.kind() != Kind.PLAIN && spec.kind() != Kind.CHECK;
        exhaust[e] = spec.kind() == Kind.EXHAUST;
        link[e] = spec.link();
        from[e] = spec.from();
        to[e] = spec.to();
        coefficient[e] = spec.way().coefficient();
        ratio[e] = b;
        stretch[e] = Flow.stretch(b);
        slope[e] = Flow.slope(b);
        crack[e] = spec.crack();
        deadband[e] = spec.offset();
        band[e] = spec.band();
        pilots[e] = spec.pilots().stream().mapToInt(Integer::intValue).toArray();
    }
}
