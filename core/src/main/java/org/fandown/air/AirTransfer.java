package org.fandown.air;

import java.util.Arrays;

/** Moves the masses of a step from volume to volume and works out what that does to each. */
final class AirTransfer {
    private final Nodes nodes;
    private final Branches ways;
    private final Inflows inflows;
    private final int[] unknowns;

    /** Enthalpy that came into each volume, as mass x temperature, over the heat capacity ratio. */
    private final double[] warmth;

    private final double[] massBefore;

    AirTransfer(AirNetwork network) {
        nodes = network.nodes;
        ways = network.branches;
        unknowns = network.plan.pivot;
        inflows = network.inflowTable;
        warmth = new double[nodes.count];
        massBefore = new double[nodes.count];
    }

    /**
     * Moves what flows at the pressures found.
     *
     * @param state the state to change
     * @param laws the flows
     * @param step length of the step, s
     */
    void move(AirState state, FlowLaws laws, double step) {
        System.arraycopy(state.mass, 0, massBefore, 0, massBefore.length);
        Arrays.fill(warmth, 0);
        flow(state, laws, step);
        for (int s = 0; s < inflows.count; s++) {
            double mass = step * state.inflow[s];
            state.mass[inflows.node[s]] += mass;
            warmth[inflows.node[s]] += mass * inflows.temperature[s];
        }
        settle(state, step);
    }

    private void flow(AirState state, FlowLaws laws, double step) {
        for (int k = 0; k < laws.openCount; k++) {
            int e = laws.open[k];
            double mass = step * laws.rate[e];
            int a = ways.from[e];
            int b = ways.to[e];
            double warm = mass * laws.gas[e];
            state.mass[a] -= mass;
            state.mass[b] += mass;
            warmth[a] -= warm;
            warmth[b] += warm;
            if (ways.exhaust[e]) {
                state.exhaust[ways.link[e]] += mass;
            } else {
                state.flow[ways.link[e]] += mass;
            }
        }
    }

    private void settle(AirState state, double step) {
        for (int i : unknowns) {
            if (nodes.thermal[i]) {
                double s = nodes.wall(i, step);
                double energy =
                        massBefore[i] * state.temperature[i] * (1 - s)
                                + Gas.GAMMA * warmth[i]
                                + s * (massBefore[i] + state.mass[i]) * nodes.wallTemperature;
                state.temperature[i] = energy / ((1 + s) * state.mass[i]);
            }
            state.pressure[i] = nodes.pressure(i, state.mass[i], state.temperature[i]);
        }
    }
}
