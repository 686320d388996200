package org.fandown.air;

import java.util.Arrays;

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
    /** From this part of the first difference of pressures on, the mean flow counts in full. */
    private static final double ALIKE = 0.3;

    /** A change of the pressures at both ends that leaves the conductance as it is, Pa. */
    private static final double LITTLE = 50;

    /** Temperature of the air that enters each way, K. */
    final double[] gas;

    /** Flow of each way at the start of the step if it were an open hole, kg/s. */
    private final double[] startFlow;

    /** {@link #lapping} at the start of the step. */
    private final double[] startLapping;

    /** Flow for each pascal of difference, kg/(s Pa). */
    final double[] conductance;

    /** Flow of a lapping way for each pascal between delivery and aim, kg/(s Pa). */
    final double[] lapping;

    /** Where a lapping way stops to flow, or how far above its pilot's pressure, Pa. */
    final double[] aim;

    /** The volume whose pressure commands a lapping way, -1 if none does. */
    final int[] pilot;

    /** Flow at the pressures found last, kg/s. */
    final double[] rate;

    /** The ways that are open at all, the first {@link #openCount} of it. */
    final int[] open;

    int openCount;

    /** Those of them whose law has corners, the first {@link #valveCount} of it. */
    final int[] valve;

    int valveCount;

    private final Branches ways;
    private final int[] thermal;

    /** One over the root of each volume's temperature. */
    private final double[] inverseRoot;

    FlowLaws(AirNetwork network) {
        ways = network.branches;
        open = new int[ways.count];
        valve = new int[ways.count];
        gas = new double[ways.count];
        startFlow = new double[ways.count];
        startLapping = new double[ways.count];
        conductance = new double[ways.count];
        lapping = new double[ways.count];
        aim = new double[ways.count];
        pilot = new int[ways.count];
        Arrays.fill(pilot, -1);
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
        openCount = 0;
        valveCount = 0;
        for (int e = 0; e < ways.count; e++) {
            if (state.opening[ways.link[e]] > 0) {
                open[openCount++] = e;
                if (ways.laps[e] || ways.oneWay[e]) {
                    valve[valveCount++] = e;
                }
                prepare(e, state);
            } else {
                conductance[e] = 0;
                lapping[e] = 0;
                rate[e] = 0;
            }
        }
    }

    private void prepare(int e, AirState state) {
        double first = state.pressure[ways.from[e]] - ways.crack[e];
        double second = state.pressure[ways.to[e]];
        int upstream = first >= second || ways.oneWay[e] ? ways.from[e] : ways.to[e];
        gas[e] = state.temperature[upstream];
        set(e, conductance(e, state, first, second), first - second);
        startFlow[e] = conductance[e] * (first - second);
        if (ways.laps[e]) {
            startLapping[e] = lapping[e];
            aim[e] = state.command[ways.link[e]] + ways.deadband[e];
            pilot[e] = state.pilot[ways.link[e]];
        }
    }

    /**
     * Takes the conductances anew, from the flows at the start of the step and at its end.
     *
     * <p>Where the difference of the pressures stays alike, the flow meant is the mean of both.
     * Where it all but vanishes in the step, the mean would keep up a flow that ended long before,
     * so the flow at the end counts alone.
     *
     * @param state the state at the start
     * @param found the pressures at the end
     * @param balances what the volumes hold
     * @param step the length of the step, s
     */
    void refine(AirState state, double[] found, NodeBalances balances, double step) {
        for (int k = 0; k < openCount; k++) {
            int e = open[k];
            int a = ways.from[e];
            int b = ways.to[e];
            if (Math.abs(found[a] - state.pressure[a]) + Math.abs(found[b] - state.pressure[b])
                    < LITTLE) {
                continue;
            }
            double crack = ways.crack[e];
            double first = found[a] - crack;
            double second = found[b];
            double left = first - second;
            double began = state.pressure[a] - crack - state.pressure[b];
            double atEnd = conductance(e, state, first, second);
            if (began * left > 0) {
                double atStart = startFlow[e] / left;
                double mean =
                        alike(began, left) * balances.calm(a, b, gas[e], step * conductance[e]);
                atEnd += 0.5 * mean * (atStart - atEnd);
            }
            set(e, atEnd, left);
            if (ways.laps[e]) {
                refineLapping(e, state, found);
            }
        }
    }

    private void refineLapping(int e, AirState state, double[] found) {
        double left = distance(e, found);
        if (left > 0) {
            double began = Math.max(0, distance(e, state.pressure));
            double mean = alike(began, left);
            double atStart = startLapping[e] * (began / left);
            lapping[e] += 0.5 * mean * (atStart - lapping[e]);
        }
    }

    /** Returns how far the mean counts, 0 to 1, of a difference of one sign at start and end. */
    private static double alike(double began, double left) {
        double enough = ALIKE * Math.abs(began);
        return Math.abs(left) >= enough ? 1 : Math.abs(left) / enough;
    }

    private double conductance(int e, AirState state, double first, double second) {
        int upstream = first >= second || ways.oneWay[e] ? ways.from[e] : ways.to[e];
        return ways.coefficient[e]
                * state.opening[ways.link[e]]
                * inverseRoot[upstream]
                * chord(e, first, second);
    }

    private void set(int e, double newConductance, double difference) {
        conductance[e] = newConductance;
        if (ways.laps[e]) {
            double band = ways.band[e];
            lapping[e] = newConductance * (Math.max(difference, band) / band);
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
        return lapping[e] * distance(e, p);
    }

    /** Returns how far a lapping way is from where it is shut, Pa. */
    private double distance(int e, double[] p) {
        return ways.oneWay[e] ? p[ways.from[e]] - aim(e, p) : aim(e, p) - p[ways.to[e]];
    }

    /** Returns where a lapping way stops to flow, Pa. */
    double aim(int e, double[] p) {
        return pilot[e] < 0 ? aim[e] : aim[e] + p[pilot[e]];
    }

    /** Works out the flows at the pressures found. */
    void settle(double[] found) {
        for (int k = 0; k < openCount; k++) {
            int e = open[k];
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
