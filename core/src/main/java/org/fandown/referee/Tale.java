package org.fandown.referee;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.RunEntry;
import org.fandown.practice.Sighting;
import org.fandown.practice.Verb;

/** What really happened in a run, tick by tick. */
final class Tale {
    /**
     * Something that was done.
     *
     * @param entry what
     * @param refused whether it could not be done
     * @param seen what it showed
     * @param scene how all stood then
     */
    record Deed(RunEntry.Act entry, boolean refused, Optional<Sighting> seen, Scene scene) {
        long tick() {
            return entry.tick();
        }

        Verb verb() {
            return entry.action().verb();
        }

        /** As feedback names it: {@code 'engine: start' at 0:07}. */
        String said() {
            return "'" + entry.action() + "' at " + Words.clock(entry.seconds());
        }
    }

    final NeedleTrack needles = new NeedleTrack();
    final List<Scene> scenes = new ArrayList<>();
    final List<Sign> signs = new ArrayList<>();
    final List<Deed> deeds = new ArrayList<>();
    long ticks;

    static double seconds(long tick) {
        return tick * PracticeTruck.TICK;
    }

    static long ticks(double seconds) {
        return (long) Math.ceil(seconds / PracticeTruck.TICK - 1e-6);
    }

    /** The scene at a tick, as it was when the tick was over and all was done that was done. */
    Scene at(long tick) {
        return scenes.get(index(tick));
    }

    private int index(long tick) {
        int low = 0;
        int high = scenes.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (scenes.get(middle).tick() <= tick) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** The stretches in which something held, within bounds. */
    List<Stretch> stretches(long from, long to, Predicate<Scene> holds) {
        List<Stretch> found = new ArrayList<>();
        long since = -1;
        for (int i = index(from); i < scenes.size() && isWithin(i, from, to); i++) {
            boolean now = holds.test(scenes.get(i));
            long tick = Math.max(from, scenes.get(i).tick());
            if (now && since < 0) {
                since = tick;
            } else if (!now && since >= 0) {
                found.add(new Stretch(since, tick));
                since = -1;
            }
        }
        if (since >= 0) {
            found.add(new Stretch(since, to));
        }
        return found;
    }

    /** What begins only with the last tick is no part of a stretch. */
    private boolean isWithin(int i, long from, long to) {
        long tick = scenes.get(i).tick();
        return tick < to || tick <= from;
    }

    /** The longest stretch in which something held, the last of equals; empty if it never did. */
    Optional<Stretch> longest(long from, long to, Predicate<Scene> holds) {
        Stretch best = null;
        for (Stretch each : stretches(from, to, holds)) {
            best = best == null || each.ticks() >= best.ticks() ? each : best;
        }
        return Optional.ofNullable(best);
    }

    /** Whether something held at some moment. */
    boolean ever(long from, long to, Predicate<Scene> holds) {
        return !stretches(from, to, holds).isEmpty();
    }

    /** The last tick up to the given one at which something held, -1 if there is none. */
    long lastBefore(long tick, Predicate<Scene> holds) {
        for (int i = index(tick); i >= 0; i--) {
            if (holds.test(scenes.get(i))) {
                return i + 1 < scenes.size() ? Math.min(tick, scenes.get(i + 1).tick()) : tick;
            }
        }
        return -1;
    }

    /** The last thing done up to a tick, refused or not; empty if nothing was. */
    Optional<Deed> lastDeed(long tick) {
        Deed last = null;
        for (Deed deed : deeds) {
            if (deed.tick() <= tick && !deed.refused() && !observes(deed.verb())) {
                last = deed;
            }
        }
        return Optional.ofNullable(last);
    }

    private static boolean observes(Verb verb) {
        return switch (verb) {
            case READ, LOOK, LISTEN, MEASURE, PRY, NOTE -> true;
            default -> false;
        };
    }

    /** What was done in a stretch by one of some verbs, without what was refused. */
    List<Deed> deeds(long from, long to, List<Verb> verbs) {
        List<Deed> found = new ArrayList<>();
        for (Deed deed : deeds) {
            boolean within = from <= deed.tick() && deed.tick() <= to;
            if (within && !deed.refused() && verbs.contains(deed.verb())) {
                found.add(deed);
            }
        }
        return found;
    }

    List<Sign> signs(long from, long to, Sign.Kind kind) {
        List<Sign> found = new ArrayList<>();
        for (Sign sign : signs) {
            if (sign.kind() == kind && from <= sign.tick() && sign.tick() <= to) {
                found.add(sign);
            }
        }
        return found;
    }

    /** The greatest of the lower needle in a stretch, psi. */
    double mostOfLower(long from, long to) {
        double most = needles.lower(from);
        for (long tick = from; tick <= to; tick += NeedleTrack.EVERY) {
            most = Math.max(most, needles.lower(tick));
        }
        return most;
    }

    /** The least of the higher needle in a stretch, psi. */
    double leastOfHigher(long from, long to) {
        double least = needles.higher(from);
        for (long tick = from; tick <= to; tick += NeedleTrack.EVERY) {
            least = Math.min(least, needles.higher(tick));
        }
        return least;
    }
}
