package org.fandown.air;

import java.util.stream.IntStream;

/**
 * Sees to it that the air which leaves a reservoir does so at a temperature that fits what flows
 * through the reservoir in the step.
 *
 * <p>At first it is taken to leave as warm as the reservoir was. Where so much flows through that
 * the balances of mass and energy would then disagree, it leaves as warm as the reservoir becomes.
 */
final class FlowTemperatures {
    /** Part of its temperature by which a reservoir may differ from what its outflow means. */
    private static final double SAME = 0.02;

    private final Nodes nodes;
    private final Branches ways;
    private final Inflows inflows;
    private final FlowLaws laws;
    private final int[] thermal;

    /** The ways that lead to or from a reservoir. */
    private final int[] touching;

    private final double[] leaving;
    private final double[] in;
    private final double[] out;

    /** Mass x temperature of what comes in. */
    private final double[] warmIn;

    /** Mass x temperature of all that flows, as the equations took it. */
    private final double[] warmTaken;

    FlowTemperatures(AirNetwork network, FlowLaws laws) {
        this.laws = laws;
        nodes = network.nodes;
        ways = network.branches;
        inflows = network.inflowTable;
        thermal = nodes.thermalOnes();
        touching =
                IntStream.range(0, ways.count)
                        .filter(e -> nodes.thermal[ways.from[e]] || nodes.thermal[ways.to[e]])
                        .toArray();
        leaving = new double[nodes.count];
        in = new double[nodes.count];
        out = new double[nodes.count];
        warmIn = new double[nodes.count];
        warmTaken = new double[nodes.count];
    }

    /** Begins a step. */
    void prepare(AirState state) {
        System.arraycopy(state.temperature, 0, leaving, 0, leaving.length);
    }

    /**
     * Compares the temperatures taken with those that the flows mean, and puts them right.
     *
     * @return whether they agree
     */
    boolean review(AirState state, double step) {
        addUp(state, step);
        boolean same = true;
        for (int i : thermal) {
            same &= review(i, state, step);
        }
        if (!same) {
            for (int e : touching) {
                laws.gas[e] = leaving[laws.rate[e] >= 0 ? ways.from[e] : ways.to[e]];
            }
        }
        return same;
    }

    private void addUp(AirState state, double step) {
        for (int i : thermal) {
            in[i] = 0;
            out[i] = 0;
            warmIn[i] = 0;
            warmTaken[i] = 0;
        }
        for (int e : touching) {
            double mass = step * laws.rate[e];
            int from = mass >= 0 ? ways.from[e] : ways.to[e];
            int to = mass >= 0 ? ways.to[e] : ways.from[e];
            double size = Math.abs(mass);
            out[from] += size;
            in[to] += size;
            warmIn[to] += size * leaving[from];
            warmTaken[from] -= size * laws.gas[e];
            warmTaken[to] += size * laws.gas[e];
        }
        for (int s = 0; s < inflows.count; s++) {
            double mass = step * state.inflow[s];
            in[inflows.node[s]] += mass;
            warmIn[inflows.node[s]] += mass * inflows.temperature[s];
            warmTaken[inflows.node[s]] += mass * inflows.temperature[s];
        }
    }

    private boolean review(int i, AirState state, double step) {
        double wall = nodes.wall(i, step);
        double own = (1 - wall) * state.temperature[i];
        double warmth = state.mass[i] * (own + wall * nodes.wallTemperature);
        double mass = state.mass[i] + in[i] - out[i];
        double held = Math.max(mass, 0);
        double heat = wall * held * nodes.wallTemperature;
        double meant =
                (warmth + Gas.GAMMA * warmIn[i] + heat)
                        / ((1 + wall) * held + Gas.GAMMA * out[i] - Math.min(mass, 0));
        double taken = (warmth + Gas.GAMMA * warmTaken[i] + heat) / ((1 + wall) * mass);
        if (mass > 0 && Math.abs(taken - meant) <= SAME * meant) {
            return true;
        }
        leaving[i] = meant;
        return false;
    }
}
