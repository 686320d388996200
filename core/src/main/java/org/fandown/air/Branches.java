package org.fandown.air;

import java.util.List;
import org.fandown.air.BranchSpec.Kind;

/** The ways between the volumes of a network as flat tables, for the inner loop. */
final class Branches {
    final int count;

    /** Whether it belongs to a lapping valve. */
    final boolean[] laps;

    /** Whether air passes from first to second alone: check valves and exhausts. */
    final boolean[] oneWay;

    final int[] link;
    final int[] from;
    final int[] to;
    final double[] coefficient;
    final double[] ratio;
    final double[] stretch;
    final double[] slope;

    /** Opening pressure of a check valve, Pa; 0 for other kinds. */
    final double[] crack;

    /** How far above the command an exhaust begins, Pa; 0 for other kinds. */
    final double[] deadband;

    final double[] band;

    Branches(List<BranchSpec> specs) {
        count = specs.size();
        laps = new boolean[count];
        oneWay = new boolean[count];
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
        for (int e = 0; e < count; e++) {
            fill(e, specs.get(e));
        }
    }

    private void fill(int e, BranchSpec spec) {
        double b = spec.way().criticalRatio();
        oneWay[e] = spec.kind() == Kind.CHECK || spec.kind() == Kind.EXHAUST;
        laps[e] = spec.kind() == Kind.INLET || spec.kind() == Kind.EXHAUST;
        link[e] = spec.link();
        from[e] = spec.from();
        to[e] = spec.to();
        coefficient[e] = spec.way().coefficient();
        ratio[e] = b;
        stretch[e] = Flow.stretch(b);
        slope[e] = Flow.slope(b);
        crack[e] = spec.kind() == Kind.CHECK ? spec.offset() : 0;
        deadband[e] = spec.kind() == Kind.EXHAUST ? spec.offset() : 0;
        band[e] = spec.band();
    }
}
