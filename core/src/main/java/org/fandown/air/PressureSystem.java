package org.fandown.air;

/**
 * The linear equations for the pressures after a step, and their solution by elimination without
 * pivoting.
 *
 * <p>Row i says what volume i holds after the step. The matrix is diagonally dominant with entries
 * that are not positive beside the diagonal, so no pivoting is needed.
 */
final class PressureSystem {
    /** Matrix values at the places of the plan. */
    final double[] value;

    final double[] right;

    /** The solution; the pressures of boundaries stand in it from the start. */
    final double[] pressure;

    private final EliminationPlan plan;
    private final double[] inverse;

    PressureSystem(EliminationPlan plan, int nodes) {
        this.plan = plan;
        value = new double[plan.size];
        right = new double[nodes];
        pressure = new double[nodes];
        inverse = new double[plan.pivot.length];
    }

    /**
     * Solves the equations, which it uses up.
     *
     * @return false if a pivot is not positive, so that there is no solution
     */
    boolean solve() {
        int[] pivots = plan.pivot;
        int[] begin = plan.begin;
        int next = 0;
        for (int k = 0; k < pivots.length; k++) {
            double pivot = value[pivots[k]];
            if (!(pivot > 0)) {
                return false;
            }
            inverse[k] = 1 / pivot;
            int first = begin[k];
            int end = begin[k + 1];
            if (end == first + 1) {
                eliminateLeaf(k, first);
                next++;
            } else {
                next = eliminate(k, first, end, next);
            }
        }
        for (int k = pivots.length - 1; k >= 0; k--) {
            substitute(k, begin[k], begin[k + 1]);
        }
        return true;
    }

    /** With one neighbour, as almost all have, only the neighbour's diagonal changes. */
    private void eliminateLeaf(int k, int e) {
        int neighbour = plan.neighbour[e];
        double part = value[plan.lower[e]] * inverse[k];
        right[neighbour] -= part * right[plan.pivot[k]];
        value[neighbour] -= part * value[plan.upper[e]];
    }

    private int eliminate(int k, int first, int end, int begun) {
        int next = begun;
        for (int e = first; e < end; e++) {
            double part = value[plan.lower[e]] * inverse[k];
            if (part == 0) {
                next += end - first;
                continue;
            }
            right[plan.neighbour[e]] -= part * right[plan.pivot[k]];
            for (int u = first; u < end; u++) {
                value[plan.target[next]] -= part * value[plan.upper[u]];
                next++;
            }
        }
        return next;
    }

    private void substitute(int k, int first, int end) {
        double sum = right[plan.pivot[k]];
        for (int e = first; e < end; e++) {
            sum -= value[plan.upper[e]] * pressure[plan.neighbour[e]];
        }
        pressure[plan.pivot[k]] = sum * inverse[k];
    }
}
