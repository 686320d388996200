package org.fandown.procedure;

import java.util.ArrayList;
import java.util.List;

/**
 * The least build-up that must still come. The needle has to pass each pressure upwards as often as
 * open checks pump it down past it, once more if the end lies above and it is below now, and at
 * least once below the highest pressure asked for. A trailer still to be charged takes air as well.
 */
final class BuildUps {
    private static final int FASTEST = (int) PlanDefault.FAST_IDLE.number();

    private final Durations durations;
    private final int ready;
    private final List<Integer> tops = new ArrayList<>();
    private final List<Integer> ends = new ArrayList<>();
    private final int[] bit;
    private final int charge;
    private final LongTable known = new LongTable(1 << 10);

    /**
     * The build-ups of a problem.
     *
     * @param begin least pressure at which each check begins, psi
     * @param end pressure to which it pumps down, psi; above its beginning if it does not
     * @param ready pressure at the end of the plan, psi
     * @param charges whether a trailer has to be charged
     */
    BuildUps(Durations durations, int[] begin, int[] end, int ready, boolean charges) {
        this.durations = durations;
        this.ready = ready;
        bit = new int[begin.length];
        for (int i = 0; i < begin.length; i++) {
            if (end[i] < begin[i]) {
                bit[i] = 1 << tops.size();
                tops.add(begin[i]);
                ends.add(end[i]);
            }
        }
        charge = charges ? charge() : 0;
    }

    /** Air of the trailer: what the needle falls by, and how much slower it climbs afterwards. */
    private int charge() {
        int least = Durations.NEVER;
        for (int psi = 1; psi <= durations.cutOut(); psi++) {
            int after = durations.afterTrailerCharge(psi);
            int again = up(true, after, Math.max(ready, after));
            int more = again - up(false, Math.min(psi, ready), ready);
            least = psi >= Course.KNOB_HOLDS ? Math.min(least, more) : least;
        }
        return Math.max(least, 0);
    }

    /** The bit by which a check that pumps down is counted, 0 for any other. */
    int bit(int check) {
        return bit[check];
    }

    /** The least time, engine at fast idle, tenths of a second. */
    int least(boolean towing, int psi, int falls, int peak) {
        long key = (((long) falls << 8 | peak) << 8 | psi) << 1 | (towing ? 1 : 0);
        int seen = known.find(key);
        if (seen >= 0) {
            return seen;
        }
        int sum = towing ? 0 : charge;
        for (int level = 1; level <= durations.cutOut(); level++) {
            int times = (ready >= level ? 1 : 0) - (psi >= level ? 1 : 0);
            for (int f = 0; f < tops.size(); f++) {
                boolean passes = tops.get(f) >= level && ends.get(f) < level;
                times += passes && (falls >> f & 1) == 1 ? 1 : 0;
            }
            int once = peak >= level && psi < level ? 1 : 0;
            sum += Math.max(times, once) * up(towing, level - 1, level);
        }
        int least = Math.max(0, sum - durations.cutOut());
        known.improves(key, least);
        return least;
    }

    private int up(boolean towing, int from, int to) {
        return durations.rise(towing, FASTEST, from, to);
    }
}
