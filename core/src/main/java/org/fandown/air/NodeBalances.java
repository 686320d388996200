package org.fandown.air;

import java.util.Arrays;

/**
 * What each volume holds after a step, as a linear function of its pressure, and the part of each
 * flow that counts for it.
 *
 * <p>For a volume at constant temperature: V/(R T) p' = m + sum of the masses that come in. For a
 * reservoir, with s = half of step / time constant of the wall, the energy balance solved for the
 * pressure has the same form, where a mass that comes in at temperature Tu counts (gamma Tu + s Tw)
 * / ((1 + s) T) times. For a chamber pressure x volume is replaced by its tangent at a guess, and
 * the guess is made better until the mass it means and the mass it gets agree.
 */
final class NodeBalances {
    /** Two pressures of a chamber that differ by less are taken as equal, Pa. */
    private static final double SAME = 0.1;

    /** From this part of a difference used up in a step on, a mean flow swings. */
    private static final double SWINGS = 2;

    private static final double LOWEST = 1e-3;

    private final Nodes nodes;
    private final Inflows inflows;
    private final int[] unknowns;
    private final double[] capacity;
    private final double[] held;
    private final double[] shareByTemperature;
    private final double[] share;
    private final double[] guess;

    /** Mass a chamber would hold at the guess. */
    private final double[] atGuess;

    NodeBalances(AirNetwork network) {
        nodes = network.nodes;
        inflows = network.inflowTable;
        unknowns = network.plan.pivot;
        int n = nodes.count;
        capacity = new double[n];
        held = new double[n];
        shareByTemperature = new double[n];
        share = new double[n];
        guess = new double[n];
        atGuess = new double[n];
        Arrays.fill(share, 1);
        for (int i : unknowns) {
            capacity[i] = nodes.volume[i] / (Gas.R * network.initialTemperature(i));
        }
    }

    /** Sets the balances up for a step from a state. */
    void prepare(AirState state, double[] expected, double step) {
        for (int i : unknowns) {
            double t = state.temperature[i];
            held[i] = state.mass[i];
            if (nodes.thermal[i]) {
                double s = nodes.wall(i, step);
                double part = 1 / ((1 + s) * t);
                capacity[i] = nodes.volume[i] / (Gas.R * t);
                held[i] *= ((1 - s) * t + 2 * s * nodes.wallTemperature) * part;
                shareByTemperature[i] = Gas.GAMMA * part;
                share[i] = s * nodes.wallTemperature * part;
            } else if (nodes.chamber[i] >= 0) {
                guess(i, expected[i], nodes.mass(i, expected[i], t), t);
            }
        }
        for (int s = 0; s < inflows.count; s++) {
            int i = inflows.node[s];
            held[i] += step * state.inflow[s] * share(i, inflows.temperature[s]);
        }
    }

    private void guess(int chamber, double pressure, double mass, double t) {
        guess[chamber] = pressure;
        atGuess[chamber] = mass;
        capacity[chamber] = nodes.chambers.growth(nodes.chamber[chamber], pressure) / (Gas.R * t);
    }

    /**
     * Returns how far the mean of the flows at the start and the end of a step may count between
     * two volumes: in full, but between two reservoirs whose difference would be used up within the
     * step less, lest their pressures swing past each other.
     *
     * @param first a volume
     * @param second the other one
     * @param temperature of the air that flows, K
     * @param passed what flows in the step for each pascal of their difference, kg/Pa
     * @return 0 to 1
     */
    double calm(int first, int second, double temperature, double passed) {
        if (!nodes.thermal[first] || !nodes.thermal[second]) {
            return 1;
        }
        double used =
                passed
                        * (share(first, temperature) / capacity[first]
                                + share(second, temperature) / capacity[second]);
        return Math.min(1, SWINGS / used);
    }

    /** Returns how many times a mass counts that comes into a volume, or leaves it. */
    double share(int node, double temperature) {
        return shareByTemperature[node] * temperature + share[node];
    }

    /** Begins the equations. */
    void assemble(PressureSystem system) {
        Arrays.fill(system.value, 0);
        Arrays.fill(system.right, 0);
        for (int i : unknowns) {
            system.value[i] = capacity[i];
            system.right[i] = held[i];
            if (nodes.chamber[i] >= 0) {
                system.right[i] += capacity[i] * guess[i] - atGuess[i];
            }
        }
    }

    /**
     * Compares the pressures found with those that the masses mean, and guesses again.
     *
     * @return whether they agree
     */
    boolean review(AirState state, double[] found) {
        boolean same = true;
        for (int i : unknowns) {
            if (nodes.chamber[i] >= 0) {
                same &= review(i, state.temperature[i], found[i]);
            }
        }
        return same;
    }

    private boolean review(int chamber, double t, double found) {
        if (nodes.chambers.straight(nodes.chamber[chamber], guess[chamber], found, SAME)) {
            return true;
        }
        double mass = atGuess[chamber] + capacity[chamber] * (found - guess[chamber]);
        double meant = mass > 0 ? nodes.pressure(chamber, mass, t) : 0;
        if (Math.abs(meant - found) <= SAME) {
            return true;
        }
        double next = meant > 0 ? meant : Math.max(found, LOWEST);
        guess(chamber, next, nodes.mass(chamber, next, t), t);
        return false;
    }
}
