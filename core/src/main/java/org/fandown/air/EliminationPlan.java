package org.fandown.air;

import java.util.Arrays;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The order in which the unknown pressures of a network are eliminated, worked out once.
 *
 * <p>Always the volume with the fewest neighbours is next, so the leaves of a tree come first and
 * hardly any new entry arises. The places of all entries are laid down as a list of instructions;
 * solving then runs through flat arrays.
 *
 * <p>Entry i of the matrix values, for i below the number of volumes, is the diagonal of volume i;
 * the others follow.
 */
final class EliminationPlan {
    /** Number of matrix values. */
    final int size;

    /** The unknown volumes in the order of elimination. */
    final int[] pivot;

    /** Where the neighbours of each pivot begin; one more than there are pivots. */
    final int[] begin;

    /** Neighbours of each pivot that are eliminated later. */
    final int[] neighbour;

    /** For each neighbour, the value in its row and the pivot's column. */
    final int[] lower;

    /** For each neighbour, the value in the pivot's row and its column. */
    final int[] upper;

    /** For each pivot, and each pair of its neighbours row by row, the value that changes. */
    final int[] target;

    private final int[][] slot;

    private EliminationPlan(Nodes nodes, Branches branches) {
        slot = new int[nodes.count][nodes.count];
        for (int[] row : slot) {
            Arrays.fill(row, -1);
        }
        Instructions list = new Instructions(slot, nodes.count);
        for (int e = 0; e < branches.count; e++) {
            list.coupleUnknowns(nodes, branches.from[e], branches.to[e]);
            for (int pilot : branches.pilots[e]) {
                list.coupleUnknowns(nodes, branches.from[e], pilot);
                list.coupleUnknowns(nodes, branches.to[e], pilot);
            }
        }
        SortedSet<Integer> left = new TreeSet<>();
        for (int i = 0; i < nodes.count; i++) {
            if (!nodes.boundary[i]) {
                left.add(i);
            }
        }
        pivot = new int[left.size()];
        begin = new int[pivot.length + 1];
        for (int k = 0; k < pivot.length; k++) {
            pivot[k] = list.fewestNeighbours(left);
            left.remove(pivot[k]);
            list.eliminate(pivot[k], left);
            begin[k + 1] = list.neighbours.size();
        }
        size = list.size;
        neighbour = list.neighbours.toArray();
        lower = list.lowers.toArray();
        upper = list.uppers.toArray();
        target = list.targets.toArray();
    }

    static EliminationPlan of(Nodes nodes, Branches branches) {
        return new EliminationPlan(nodes, branches);
    }

    /** Returns the place of an entry among the matrix values, -1 if it is always zero. */
    int slot(int row, int column) {
        return slot[row][column];
    }

    /** Grows the list of instructions. */
    private static final class Instructions {
        private final int[][] slot;
        private final IntList neighbours = new IntList();
        private final IntList lowers = new IntList();
        private final IntList uppers = new IntList();
        private final IntList targets = new IntList();
        private int size;

        private Instructions(int[][] slot, int diagonal) {
            this.slot = slot;
            size = diagonal;
        }

        private void coupleUnknowns(Nodes nodes, int a, int b) {
            if (a != b && !nodes.boundary[a] && !nodes.boundary[b]) {
                couple(a, b);
            }
        }

        private void couple(int a, int b) {
            if (slot[a][b] < 0) {
                slot[a][b] = size++;
                slot[b][a] = size++;
            }
        }

        private int fewestNeighbours(SortedSet<Integer> left) {
            int best = left.first();
            for (int i : left) {
                if (degree(i, left) < degree(best, left)) {
                    best = i;
                }
            }
            return best;
        }

        private int degree(int node, SortedSet<Integer> left) {
            int degree = 0;
            for (int i : left) {
                degree += slot[node][i] >= 0 ? 1 : 0;
            }
            return degree;
        }

        private void eliminate(int k, SortedSet<Integer> left) {
            for (int i : left) {
                if (slot[k][i] >= 0) {
                    neighbours.add(i);
                    lowers.add(slot[i][k]);
                    uppers.add(slot[k][i]);
                    for (int j : left) {
                        if (slot[k][j] >= 0) {
                            targets.add(place(i, j));
                        }
                    }
                }
            }
        }

        private int place(int row, int column) {
            if (row == column) {
                return row;
            }
            couple(row, column);
            return slot[row][column];
        }
    }

    /** A list of ints that grows. */
    private static final class IntList {
        private int[] values = new int[16];
        private int count;

        private void add(int value) {
            if (count == values.length) {
                values = Arrays.copyOf(values, 2 * count);
            }
            values[count++] = value;
        }

        private int size() {
            return count;
        }

        private int[] toArray() {
            return Arrays.copyOf(values, count);
        }
    }
}
