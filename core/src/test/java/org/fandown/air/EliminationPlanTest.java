package org.fandown.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.fandown.units.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EliminationPlanTest {
    /** Rounding of two ways to solve a well-conditioned system of a dozen equations. */
    private static final double ROUNDING = 1e-9;

    private static final Restriction WAY = new Restriction(1e-8, 0.3);

    @Test
    void a_tree_gets_no_new_entries() {
        AirNetwork network = new TractorTrailer().network;
        long pairs =
                IntStream.range(0, network.branches.count)
                        .filter(e -> !network.nodes.boundary[network.branches.from[e]])
                        .filter(e -> !network.nodes.boundary[network.branches.to[e]])
                        .mapToObj(e -> network.branches.from[e] + "-" + network.branches.to[e])
                        .distinct()
                        .count();

        assertThat(network.plan.size).isEqualTo(network.nodes.count + 2 * (int) pairs);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void it_solves_what_plain_elimination_solves(long seed) {
        SplittableRandom lot = new SplittableRandom(seed);
        AirNetwork network = meshed(lot);
        PressureSystem system = new PressureSystem(network.plan, network.nodes.count);
        int n = network.nodes.count;
        double[][] dense = new double[n - 1][n];
        for (int i = 1; i < n; i++) {
            system.value[i] = lot.nextDouble(0.1, 1);
            for (int j = 1; j < n; j++) {
                if (i != j && joined(network, i, j)) {
                    double off = lot.nextDouble(0, 10);
                    system.value[network.plan.slot(i, j)] = -off;
                    system.value[i] += off;
                    dense[i - 1][j - 1] = -off;
                }
            }
            dense[i - 1][i - 1] = system.value[i];
            system.right[i] = lot.nextDouble(-1, 1);
            dense[i - 1][n - 1] = system.right[i];
        }

        assertThat(system.solve()).isTrue();

        double[] expected = solved(dense);
        for (int i = 1; i < n; i++) {
            assertThat(system.pressure[i]).isEqualTo(expected[i - 1], within(ROUNDING));
        }
    }

    @Test
    void it_refuses_a_matrix_without_a_positive_pivot() {
        AirNetworkBuilder builder = AirNetwork.builder(Ambient.STANDARD);
        builder.addRigid("alone", Volume.ofLitres(1));
        AirNetwork network = builder.build();

        assertThat(new PressureSystem(network.plan, network.nodes.count).solve()).isFalse();
    }

    private static AirNetwork meshed(SplittableRandom lot) {
        AirNetworkBuilder builder = AirNetwork.builder(Ambient.STANDARD);
        int count = 3 + lot.nextInt(10);
        AirNode[] volumes = new AirNode[count];
        for (int i = 0; i < count; i++) {
            volumes[i] = builder.addRigid("volume " + i, Volume.ofLitres(1));
        }
        for (int e = 0; e < 2 * count; e++) {
            AirNode a = volumes[lot.nextInt(count)];
            AirNode b = volumes[lot.nextInt(count)];
            if (!a.equals(b)) {
                builder.orifice("way " + e, a, b, WAY);
            }
        }
        return builder.build();
    }

    private static boolean joined(AirNetwork network, int i, int j) {
        Branches ways = network.branches;
        for (int e = 0; e < ways.count; e++) {
            if ((ways.from[e] == i && ways.to[e] == j) || (ways.from[e] == j && ways.to[e] == i)) {
                return true;
            }
        }
        return false;
    }

    /** Gauss and Jordan, with the largest pivot of each column. */
    private static double[] solved(double[][] rows) {
        int n = rows.length;
        for (int k = 0; k < n; k++) {
            int best = k;
            for (int i = k; i < n; i++) {
                best = Math.abs(rows[i][k]) > Math.abs(rows[best][k]) ? i : best;
            }
            double[] pivot = rows[best];
            rows[best] = rows[k];
            rows[k] = pivot;
            for (int i = 0; i < n; i++) {
                double part = i == k ? 0 : rows[i][k] / pivot[k];
                for (int j = k; j <= n; j++) {
                    rows[i][j] -= part * pivot[j];
                }
            }
        }
        double[] solution = new double[n];
        for (int k = 0; k < n; k++) {
            solution[k] = rows[k][n] / rows[k][k];
        }
        return solution;
    }
}
