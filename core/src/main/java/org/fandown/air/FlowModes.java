package org.fandown.air;

/**
 * Which part of its law each way follows in a step: it conducts, it laps, or it is shut. In each
 * part the flow is a linear function of the pressures.
 *
 * <p>Guessed from the pressures at the start of the step, and put right where the pressures found
 * contradict it.
 */
final class FlowModes {
    private static final int SHUT = 0;
    private static final int CONDUCTS = 1;
    private static final int LAPS = 2;

    /** Conducts from second to first, which an inlet does whose supply is the lower. */
    private static final int BACK = 3;

    /** A difference of pressures that does not matter, Pa. */
    private static final double TINY = 1e-6;

    private final Branches ways;
    private final FlowLaws laws;
    private final EliminationPlan plan;
    private final int[] slotThere;
    private final int[] slotBack;
    private final int[] mode;

    FlowModes(AirNetwork network, FlowLaws laws) {
        this.laws = laws;
        ways = network.branches;
        plan = network.plan;
        mode = new int[ways.count];
        slotThere = new int[ways.count];
        slotBack = new int[ways.count];
        for (int e = 0; e < ways.count; e++) {
            slotThere[e] = network.plan.slot(ways.from[e], ways.to[e]);
            slotBack[e] = network.plan.slot(ways.to[e], ways.from[e]);
            mode[e] = CONDUCTS;
        }
    }

    /** Guesses from the pressures at the start of a step. */
    void guess(double[] pressures) {
        for (int k = 0; k < laws.valveCount; k++) {
            int e = laws.valve[k];
            mode[e] = modeAt(e, pressures);
        }
    }

    private int modeAt(int e, double[] p) {
        double flow = laws.flow(e, p);
        if (flow == laws.open(e, p)) {
            return flow < 0 ? BACK : CONDUCTS;
        }
        return flow > 0 ? LAPS : SHUT;
    }

    /**
     * Compares how each way was taken to behave with the pressures found and the flows at them, and
     * puts right what differs.
     *
     * @param found the pressures
     * @param all whether to put all right that differ, which is quick, or the first alone, which
     *     goes round in circles less easily
     * @return whether all agree
     */
    boolean review(double[] found, boolean all) {
        boolean agree = true;
        for (int k = 0; k < laws.valveCount && (agree || all); k++) {
            int e = laws.valve[k];
            if (differs(e, found)) {
                mode[e] = corrected(e, found);
                agree = false;
            }
        }
        return agree;
    }

    private boolean differs(int e, double[] p) {
        double taken = 0;
        if (mode[e] == LAPS) {
            taken = laws.lap(e, p);
        } else if (mode[e] != SHUT) {
            taken = laws.open(e, p);
        }
        return Math.abs(taken - laws.rate[e]) > laws.conductance[e] * TINY;
    }

    /**
     * From wide open to shut and back it goes by way of lapping where that lies between, lest it
     * swing between them.
     */
    private int corrected(int e, double[] p) {
        int next = modeAt(e, p);
        boolean jumps = Math.max(mode[e], next) == CONDUCTS && mode[e] != next;
        return ways.laps[e] && jumps && lapsBetween(e, p) ? LAPS : next;
    }

    private boolean lapsBetween(int e, double[] p) {
        double aim = laws.aim(e, p);
        return ways.oneWay[e] ? aim > p[ways.to[e]] : aim < p[ways.from[e]];
    }

    /** Adds the flows of a step to the equations. */
    void assemble(PressureSystem system, NodeBalances balances, double step) {
        for (int k = 0; k < laws.openCount; k++) {
            int e = laws.open[k];
            if (mode[e] != SHUT) {
                double out = step * balances.share(ways.from[e], laws.gas[e]);
                double in = step * balances.share(ways.to[e], laws.gas[e]);
                if (mode[e] != LAPS) {
                    conduct(system, e, out * laws.conductance[e], in * laws.conductance[e]);
                } else if (ways.oneWay[e]) {
                    relieve(system, e, out * laws.lapping[e], in * laws.lapping[e]);
                } else {
                    fill(system, e, out * laws.lapping[e], in * laws.lapping[e]);
                }
            }
        }
    }

    private void conduct(PressureSystem system, int e, double out, double in) {
        int a = ways.from[e];
        int b = ways.to[e];
        double crack = ways.crack[e];
        system.value[a] += out;
        system.value[b] += in;
        system.right[a] += out * crack;
        system.right[b] -= in * crack;
        if (slotThere[e] >= 0) {
            system.value[slotThere[e]] -= out;
            system.value[slotBack[e]] -= in;
        } else {
            system.right[a] += out * system.pressure[b];
            system.right[b] += in * system.pressure[a];
        }
    }

    private void fill(PressureSystem system, int e, double out, double in) {
        int a = ways.from[e];
        int b = ways.to[e];
        double aim = laws.aim[e];
        system.value[b] += in;
        system.right[b] += in * aim;
        if (slotThere[e] >= 0) {
            system.value[slotThere[e]] -= out;
            system.right[a] -= out * aim;
        }
        if (laws.pilot[e] >= 0) {
            follow(system, b, laws.pilot[e], in);
            follow(system, a, laws.pilot[e], -out);
        }
    }

    /** Adds to what flows into a volume a part of the pressure of a pilot. */
    private void follow(PressureSystem system, int node, int pilot, double factor) {
        if (node == pilot) {
            system.value[node] -= factor;
        } else if (plan.slot(node, pilot) >= 0) {
            system.value[plan.slot(node, pilot)] -= factor;
        }
    }

    private void relieve(PressureSystem system, int e, double out, double in) {
        int a = ways.from[e];
        int b = ways.to[e];
        double aim = laws.aim[e];
        system.value[a] += out;
        system.right[a] += out * aim;
        if (slotThere[e] >= 0) {
            system.value[slotBack[e]] -= in;
            system.right[b] -= in * aim;
        }
        if (laws.pilot[e] >= 0) {
            follow(system, a, laws.pilot[e], out);
        }
    }
}
