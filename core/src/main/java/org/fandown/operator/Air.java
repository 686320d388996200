package org.fandown.operator;

import java.util.function.BooleanSupplier;
import org.fandown.practice.Verb;

/**
 * Building up, letting down and charging, by the needles; and what the operator remembers of it.
 *
 * <p>The pressures of a plan are expectations. The operator waits on needles and the purge, and
 * gives up only when the needles have stood still for minutes.
 */
final class Air {
    /** Fast idle, rpm. */
    static final int FAST_IDLE = 1200;

    /** No fall of the needles for so many applications: nothing more comes of pumping. */
    private static final int FRUITLESS = 25;

    private static final int BELOW_CUT_IN = 4;
    private static final int MOST_APPLICATIONS = 150;
    private static final int RISES = 2;

    /** A gentle application, percent: it takes about a psi. */
    private static final int GENTLE = 15;

    private static final double PRESSED = 1;
    private static final double LET_UP = 2;

    /** The needles stand still for so long while the engine turns fast: it goes no further, s. */
    private static final double STANDS = 90;

    /** The needles stand still for so long above cut-in: the compressor rests, s. */
    private static final double RESTS = 60;

    /** A compressor that pumps at idle shows two more psi within, s. */
    private static final double GOES_ON = 14;

    /** Longest build-up anybody waits for, s. */
    private static final double PATIENCE = 2400;

    /** A drained reservoir is empty after, s. */
    private static final double DRAINS = 40;

    /** What a purge leaves in the dryer has run out after, s (assumption). */
    private static final double PURGED = 30;

    private final Person person;
    private boolean resting;
    private double purged = -PURGED;
    private boolean usedSinceDrain;
    private boolean supplyDrained;
    private double changed;
    private int ceiling = Integer.MAX_VALUE;
    private Needles beforeDrain = new Needles(0, 0);
    private double drained;
    private double leaked;

    Air(Person person) {
        this.person = person;
    }

    private Cab cab() {
        return person.cab();
    }

    private Needles needles() {
        return person.cab().needles();
    }

    /** The dryer purged: the governor has stopped the pumping. */
    void heardPurge() {
        resting = true;
        purged = person.time();
    }

    /** Waits until nothing more is heard of a purge. */
    void letPurge() {
        person.pass(Math.max(purged + PURGED - person.time(), 0));
    }

    /** The pedal took air. */
    void used() {
        usedSinceDrain = true;
    }

    /** Whether the compressor rests, as far as was seen: it purged and has not cut in since. */
    boolean resting() {
        saw(needles());
        return resting;
    }

    /** Needles well below cut-in: the governor lets the compressor pump again, seen or not. */
    void saw(Needles now) {
        resting &= now.lower() > person.durations().cutIn() - BELOW_CUT_IN;
    }

    boolean supplyDrained() {
        return supplyDrained;
    }

    /** What the needles showed before the supply reservoir was drained. */
    Needles beforeDrain() {
        return beforeDrain;
    }

    /** Whether the pedal took air after that. */
    boolean usedSinceDrain() {
        return usedSinceDrain;
    }

    /** How long ago the supply reservoir was drained, s. */
    double sinceDrain() {
        return person.time() - drained;
    }

    /** Remembers what is lost in a minute with the brakes released, psi. */
    void leaks(double perMinute) {
        leaked = Math.max(perMinute, 0);
    }

    /** What is lost in a minute with the brakes released, psi; 0 while that is not known. */
    double leaked() {
        return leaked;
    }

    /** How long the air has been left alone, s. */
    double rested() {
        return person.time() - changed;
    }

    /** Something moved much air just now. */
    void stirred() {
        changed = person.time();
    }

    /**
     * Lets the compressor pump until both needles show a pressure.
     *
     * @return whether they did; false if they stopped below it
     */
    boolean pumpTo(int psi, int rpm) {
        if (needles().lower() >= psi) {
            return true;
        }
        if (psi > ceiling && needles().lower() >= ceiling - 1) {
            return false;
        }
        if (!cab().start()) {
            return false;
        }
        if (resting()) {
            pumpDownUntilClimbs();
        }
        boolean reached = climb(() -> needles().lower() >= psi, rpm).reached();
        if (!reached && !resting) {
            ceiling = needles().lower() + 1;
        }
        return reached;
    }

    /**
     * How a climb ended.
     *
     * @param reached whether what was waited for was seen
     * @param purged whether the dryer purged meanwhile
     * @param at the needles at the end: where it was seen, purged, or stood still
     */
    record Climb(boolean reached, boolean purged, Needles at) {}

    /** Lets the compressor pump, at a speed, until the governor stops it. */
    Climb pumpToCutOut(int rpm) {
        return climb(() -> false, rpm);
    }

    private Climb climb(BooleanSupplier seen, int rpm) {
        cab().throttle(rpm);
        double end = person.time() + PATIENCE;
        Needles best = needles();
        double since = person.time();
        boolean reached = false;
        boolean purged = false;
        while (!reached && !purged && person.time() < end && person.time() < since + stands()) {
            person.pass(0.1);
            Needles now = needles();
            if (Math.abs(now.sum() - best.sum()) >= RISES) {
                best = now;
                since = person.time();
            }
            purged = person.purging();
            reached = seen.getAsBoolean();
        }
        Needles at = needles();
        boolean full = at.higher() > person.durations().cutIn();
        resting = purged || (!reached && full);
        supplyDrained = false;
        stirred();
        cab().throttle(0);
        return new Climb(reached, purged, at);
    }

    private double stands() {
        return needles().higher() > person.durations().cutIn() ? RESTS : STANDS;
    }

    /** One application of the pedal, watching all the while; true if what is awaited was seen. */
    boolean apply(int percent, BooleanSupplier seen) {
        cab().foot(percent);
        boolean found = person.await(seen, PRESSED);
        cab().foot(0);
        return found || person.await(seen, LET_UP);
    }

    /**
     * Pumps the pedal until something is seen.
     *
     * @param seen what is watched for
     * @param floor pressure of the higher needle at which to stop, psi
     * @return whether it was seen
     */
    boolean pumpDown(BooleanSupplier seen, int floor) {
        int fruitless = 0;
        boolean found = seen.getAsBoolean();
        int lowest = needles().sum();
        for (int i = 0; !found && i < MOST_APPLICATIONS && fruitless < FRUITLESS; i++) {
            if (needles().higher() <= floor) {
                break;
            }
            boolean near = needles().lower() - floor < 2 * person.durations().application(floor);
            found = apply(near && fruitless == 0 ? 50 : Cab.FLOOR, seen);
            fruitless = needles().sum() < lowest ? 0 : fruitless + 1;
            lowest = Math.min(lowest, needles().sum());
        }
        stirred();
        return found;
    }

    /**
     * Pumps the pedal until both needles show at most a pressure; true if they do. Where the
     * compressor is faster than the pedal, the engine is stopped meanwhile.
     */
    boolean fanDown(int psi) {
        BooleanSupplier down = () -> needles().higher() <= psi;
        if (pumpDown(down, psi) || !cab().engineRuns()) {
            return down.getAsBoolean();
        }
        cab().stop();
        return pumpDown(down, psi) && cab().start();
    }

    /** What the needles showed when they turned, and whether they did. */
    record Turn(boolean climbs, Needles at) {}

    /**
     * Pumps the pedal, engine idling, until the needles climb between applications: ever more
     * gently, so that the last application takes no more than a psi or two.
     */
    Turn pumpDownUntilClimbs() {
        int cutIn = person.durations().cutIn();
        int floor = Math.max(cutIn - 25, 50);
        int fruitless = 0;
        for (int i = 0; i < MOST_APPLICATIONS && needles().lower() > floor; i++) {
            Needles high = needles();
            int above = high.lower() - cutIn;
            int travel = above > 10 ? 80 : above > 5 ? 40 : GENTLE;
            cab().foot(Math.min(travel * Math.max(fruitless - 1, 1), Cab.FLOOR));
            person.pass(PRESSED);
            cab().foot(0);
            person.pass(LET_UP);
            Needles low = needles();
            fruitless = low.sum() < high.sum() ? 0 : fruitless + 1;
            if (climbs(low, above > 4 ? 0 : above > -3 ? 6 : 15)) {
                resting = false;
                stirred();
                return new Turn(true, low);
            }
        }
        stirred();
        return new Turn(false, needles());
    }

    /** Air that was let down quickly warms and rises by a psi: a compressor goes on. */
    private boolean climbs(Needles low, double patience) {
        return person.await(() -> needles().sum() >= low.sum() + RISES, patience)
                && person.await(() -> needles().sum() >= low.sum() + 2 * RISES, GOES_ON);
    }

    /** Pushes the trailer supply knob in and waits for the needles to steady; true if it stays. */
    boolean chargeTrailers() {
        boolean in = cab().trailerSupply(true);
        person.await(this::steady, 120);
        person.trailerIsCharged();
        stirred();
        return in && cab().trailerSupplyIn();
    }

    private boolean steady() {
        Needles before = needles();
        person.pass(3);
        return needles().sum() >= before.sum() - 1;
    }

    /** The supply reservoir was drained in passing. */
    void supplyIsDrained() {
        supplyDrained = true;
    }

    /** Somebody else opened the drain of the supply reservoir. */
    void drainIsOpen() {
        beforeDrain = needles();
        drained = person.time();
    }

    /** Somebody else shut the drain of the supply reservoir. */
    void drainIsShut() {
        supplyDrained |= sinceDrain() >= DRAINS;
    }

    /** Somebody else let the compressor pump. */
    void climbed() {
        supplyDrained = false;
    }

    /** Drains the supply reservoir and shuts its drain; refused where there is none. */
    void drainSupply() {
        beforeDrain = needles();
        drained = person.time();
        usedSinceDrain = false;
        person.act(Verb.OPEN_DRAIN, "supply");
        person.pass(DRAINS);
        person.act(Verb.SHUT_DRAIN, "supply");
        supplyDrained = true;
    }
}
