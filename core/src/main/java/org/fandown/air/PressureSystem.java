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
            int p = pivots[k];
            if (!(value[p] > 0)) {
                return false;
            }
            double factor = 1 / value[p];
            inverse[k] = factor;
            int end = begin[k + 1];
            for (int e = begin[k]; e < end; e++) {
                double part = value[plan.lower[e]] * factor;
                right[plan.neighbour[e]] -= part * right[p];
                for (int u = begin[k]; u < end; u++) {
                    value[plan.target[next]] -= part * value[plan.upper[u]];
                    next++;
                }
            }
        }
        for (int k = pivots.length - 1; k >= 0; k--) {
            double sum = right[pivots[k]];
            for (int e = begin[k]; e < begin[k + 1]; e++) {
                sum -= value[plan.upper[e]] * pressure[plan.neighbour[e]];
            }
            pressure[pivots[k]] = sum * inverse[k];
        }
        return true;
    }
}
