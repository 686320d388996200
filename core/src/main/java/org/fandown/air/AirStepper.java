package org.fandown.air;

/**
 * Moves an {@link AirState} through time.
 *
 * <p><b>Method.</b> Implicit Euler steps. The flow through each way is taken as its conductance at
 * the start of the step times the difference of the pressures at the end of it, which makes the
 * pressures at the end the solution of a linear system. The flows so found move mass from one
 * volume to another, so no air is lost or made but for rounding, and the pressures follow from the
 * masses. Whatever the step, a pressure stays between the lowest and the highest of those it is
 * connected with, unless a source pumps or a wall warms the gas; and a lapping valve does not carry
 * its delivery over its command. The error is in proportion to the step.
 *
 * <p>Makes no objects while it steps. Keeps nothing between steps but working space: what a step
 * does depends on the state alone. Not safe for use by several threads.
 */
public final class AirStepper {
    private static final int MOST_ROUNDS = 60;

    /** In so many rounds all ways are put right at once, then one at a time. */
    private static final int ROUNDS_OF_ALL = 3;

    /** A difference from what was expected from which on the flows are taken anew, Pa. */
    private static final double MUCH = 60;

    /** The part by which a change counts that was expected, of anything but a reservoir. */
    private static final double CHANGE_COUNTS = 0.1;

    /** A step whose equations do not come to rest is cut into parts, this many at most. */
    private static final int MOST_PARTS = 1 << 12;

    /**
     * A moment this much later, by the length of a step, is the same: sums of steps are rounded.
     */
    private static final double SAME_MOMENT = 1 + 1e-6;

    private final AirNetwork network;
    private final FlowLaws laws;
    private final FlowModes modes;
    private final FlowTemperatures temperatures;
    private final NodeBalances balances;
    private final PressureSystem system;
    private final AirTransfer transfer;
    private final AirBackup before;
    private final double[] expected;
    private long rounds;
    private long cuts;

    /**
     * Makes a stepper for the states of one network.
     *
     * @param network the network
     */
    public AirStepper(AirNetwork network) {
        this.network = network;
        laws = new FlowLaws(network);
        modes = new FlowModes(network, laws);
        temperatures = new FlowTemperatures(network, laws);
        balances = new NodeBalances(network);
        system = new PressureSystem(network.plan, network.nodes.count);
        transfer = new AirTransfer(network);
        before = new AirBackup(network);
        expected = new double[network.nodes.count];
    }

    /**
     * Takes one step.
     *
     * @param state the state to move, of this stepper's network
     * @param seconds length of the step, more than 0
     * @return the largest change of a pressure, Pa
     * @throws IllegalArgumentException if the state is of another network, or the length is not
     *     above 0 and finite
     */
    public double step(AirState state, double seconds) {
        require(state, seconds > 0 && seconds < Double.POSITIVE_INFINITY);
        return step(state, seconds, false);
    }

    private double step(AirState state, double seconds, boolean refine) {
        before.save(state);
        clearFlows(state);
        int parts = 1;
        int done = 0;
        while (done < parts) {
            double part = seconds / parts;
            if (solve(state, part, refine) || parts >= MOST_PARTS) {
                transfer.move(state, laws, part);
                done++;
            } else {
                cuts++;
                parts *= 2;
                done *= 2;
            }
        }
        averageFlows(state, seconds);
        state.time += seconds;
        double change = before.compare(state, seconds);
        return refine ? excess(state, seconds) : change;
    }

    /**
     * Steps to a moment.
     *
     * @param state the state to move, of this stepper's network
     * @param until the time to stop at, s
     * @param control how long the steps are
     * @param valves what happens after each step
     * @throws IllegalArgumentException if the state is of another network, or the moment has passed
     *     or is not finite
     */
    public void advance(AirState state, double until, StepControl control, AfterStep valves) {
        require(state, until >= state.time && until < Double.POSITIVE_INFINITY);
        while (state.time < until) {
            double suggested = control.clamp(state.suggestedStep);
            double left = until - state.time;
            boolean last = left <= suggested * SAME_MOMENT;
            double step = last ? left : suggested;
            double foreseen = control.clamp(state.foresight.soonest(state));
            if (foreseen < step) {
                step = foreseen;
                last = false;
            }
            double change = step(state, step, control.refined());
            double instead = instead(state, control, step, change);
            while (instead < step) {
                before.restore(state);
                suggested = control.refuses(step, change) ? instead : suggested;
                step = instead;
                last = false;
                change = step(state, step, control.refined());
                instead = instead(state, control, step, change);
            }
            if (last) {
                state.time = until;
            }
            state.suggestedStep = control.next(step, suggested, change);
            state.foresight.clear();
            valves.after(state, step);
        }
    }

    /** Returns the length to try instead of a step just done, or the same length if it was good. */
    private static double instead(AirState state, StepControl control, double step, double change) {
        if (control.refuses(step, change)) {
            return control.shorter(step);
        }
        return control.isShortest(step)
                ? step
                : control.before(step, state.foresight.longestSince(state, step));
    }

    /** Number of times a system was solved, for measurements. */
    long rounds() {
        return rounds;
    }

    /** Number of times a step was cut because its equations did not come to rest. */
    long cuts() {
        return cuts;
    }

    private void require(AirState state, boolean forward) {
        if (state.network() != network) {
            throw new IllegalArgumentException(
                    "The state is of another network; make a stepper for that one.");
        }
        if (!forward) {
            throw new IllegalArgumentException("Time only moves forward, and by a finite step.");
        }
    }

    private boolean solve(AirState state, double step, boolean refine) {
        laws.prepare(state);
        temperatures.prepare(state);
        boolean much = expect(state, refine ? step : 0);
        balances.prepare(state, expected, step);
        if (much) {
            laws.refine(state, expected, balances, step);
        }
        modes.guess(expected);
        System.arraycopy(state.pressure, 0, system.pressure, 0, state.pressure.length);
        boolean refined = !refine;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            rounds++;
            balances.assemble(system);
            modes.assemble(system, balances, step);
            if (!system.solve()) {
                return false;
            }
            laws.settle(system.pressure);
            boolean settled = balances.review(state, system.pressure);
            if (!modes.review(system.pressure, round < ROUNDS_OF_ALL)) {
                continue;
            }
            if (!refined && surprises()) {
                laws.refine(state, system.pressure, balances, step);
                refined = true;
            } else if (settled && temperatures.review(state, step)) {
                return true;
            }
        }
        return false;
    }

    /**
     * Expects each pressure to go on for a time as in the step before.
     *
     * @return whether one is expected to change much
     */
    private boolean expect(AirState state, double step) {
        double most = 0;
        System.arraycopy(state.pressure, 0, expected, 0, expected.length);
        for (int i : network.plan.pivot) {
            double p = state.pressure[i];
            double change = Math.max(-0.5 * p, Math.min(p, state.slope[i] * step));
            most = Math.max(most, Math.abs(change));
            expected[i] = p + change;
        }
        return most > MUCH;
    }

    /**
     * Returns by how much a step went beyond what a step should: the change of a reservoir, what no
     * other volume was expected to do, or a part of what it did.
     */
    private double excess(AirState state, double step) {
        double largest = 0;
        for (int i : network.plan.pivot) {
            double change = Math.abs(state.slope[i]) * step;
            double surprise = Math.abs(state.pressure[i] - expected[i]);
            double counts = network.nodes.thermal[i] ? change : CHANGE_COUNTS * change;
            largest = Math.max(largest, Math.max(surprise, counts));
        }
        return largest;
    }

    private boolean surprises() {
        for (int i : network.plan.pivot) {
            if (Math.abs(system.pressure[i] - expected[i]) > MUCH) {
                return true;
            }
        }
        return false;
    }

    private static void clearFlows(AirState state) {
        for (int i = 0; i < state.flow.length; i++) {
            state.flow[i] = 0;
            state.exhaust[i] = 0;
        }
    }

    private static void averageFlows(AirState state, double seconds) {
        double perSecond = 1 / seconds;
        for (int i = 0; i < state.flow.length; i++) {
            state.flow[i] *= perSecond;
            state.exhaust[i] *= perSecond;
        }
    }
}
