package org.fandown.air;

/**
 * The flow through each way during a step as a function of the pressures after it.
 *
 * <p>The conductance of a way is flow over difference of pressures at the start of the step; its
 * flow in the step is the conductance times the difference at the end. A check valve does not flow
 * backwards. A lapping way flows no more than in proportion to the distance of its delivery from
 * where it aims at; over its band that reaches the flow of the open way.
 *
 * <p>Each flow rises with the pressure it comes from and falls with the one it goes to, so there is
 * one set of pressures that satisfies all.
 */
final class FlowLaws {
    /** Temperature of the air that enters each way, K. */
    final double[] gas;

    /** Flow for each pascal of difference, kg/(s Pa). */
    final double[] conductance;

    /** Flow of a lapping way for each pascal between delivery and aim, kg/(s Pa). */
    final double[] lapping;

    /** Where a lapping way stops to flow, Pa. */
    final double[] aim;

    /** Flow at the pressures found last, kg/s. */
    final double[] rate;

    private final Branches ways;
    private final int[] thermal;

    /** One over the root of each volume's temperature. */
    private final double[] inverseRoot;

    FlowLaws(AirNetwork network) {
        ways = network.branches;
        gas = new double[ways.count];
        conductance = new double[ways.count];
        lapping = new double[ways.count];
        aim = new double[ways.count];
        rate = new double[ways.count];
        thermal = network.nodes.thermalOnes();
        inverseRoot = new double[network.nodes.count];
        for (int i = 0; i < inverseRoot.length; i++) {
            inverseRoot[i] = 1 / Math.sqrt(network.initialTemperature(i));
        }
    }

    /** Works out the conductances at the start of a step. */
    void prepare(AirState state) {
        for (int i : thermal) {
            inverseRoot[i] = 1 / Math.sqrt(state.temperature[i]);
        }
        for (int e = 0; e < ways.count; e++) {
            prepare(e, state);
        }
    }

    private void prepare(int e, AirState state) {
        double first = state.pressure[ways.from[e]] - ways.crack[e];
        double second = state.pressure[ways.to[e]];
        int upstream = first >= second || ways.oneWay[e] ? ways.from[e] : ways.to[e];
        gas[e] = state.temperature[upstream];
        conductance[e] =
                ways.coefficient[e]
                        * state.opening[ways.link[e]]
                        * inverseRoot[upstream]
                        * chord(e, first, second);
        if (ways.laps[e]) {
            double band = ways.band[e];
            lapping[e] = conductance[e] * (Math.max(first - second, band) / band);
            aim[e] = state.command[ways.link[e]] + ways.deadband[e];
        }
    }

    /** A check valve that opens during the step does so near equal pressures. */
    private double chord(int e, double first, double second) {
        if (first >= second) {
            return Flow.chord(first, second, ways.ratio[e], ways.stretch[e], ways.slope[e]);
        }
        return ways.oneWay[e]
                ? ways.slope[e]
                : Flow.chord(second, first, ways.ratio[e], ways.stretch[e], ways.slope[e]);
    }

    /** Returns the flow of the way as if it were an open hole, kg/s. */
    double open(int e, double[] p) {
        return conductance[e] * (p[ways.from[e]] - ways.crack[e] - p[ways.to[e]]);
    }

    /** Returns the flow that the distance of the delivery from the aim allows, kg/s. */
    double lap(int e, double[] p) {
        return ways.oneWay[e]
                ? lapping[e] * (p[ways.from[e]] - aim[e])
                : lapping[e] * (aim[e] - p[ways.to[e]]);
    }

    /** Works out the flows at the pressures found. */
    void settle(double[] found) {
        for (int e = 0; e < ways.count; e++) {
            rate[e] = flow(e, found);
        }
    }

    /** Returns the flow, kg/s. */
    double flow(int e, double[] p) {
        double open = open(e, p);
        double flow = ways.laps[e] ? Math.min(open, Math.max(0, lap(e, p))) : open;
        return ways.oneWay[e] ? Math.max(0, flow) : flow;
    }
}
