package org.fandown.procedure;

/**
 * What steps do on one vehicle: the model in which plans are the quickest.
 *
 * <p>A running engine builds up pressure by the way, during steps that take 15 seconds or more and
 * counted in whole steps of 5 psi; what it adds beyond is left out. What an application, a release
 * of the parking brakes or the charging of the trailers leaves is counted in the same steps, so a
 * plan never counts on air that is not there. What a step needs is not asked here; an order that
 * spoils its own checks runs through as well.
 */
public final class Course {
    /** Pressure below which the parking knob pops out, psi. */
    static final int PARKING_POPS = 30;

    /** Pressure from which a knob stays in, psi. */
    static final int KNOB_HOLDS = 60;

    /** Pressure below which the trailer supply knob pops out, psi. */
    static final int SUPPLY_POPS = 38;

    private static final int FAST = (int) PlanDefault.FAST_IDLE.number();
    private static final int BLOWN = 5;

    /** Step in which build-up by the way and what is left after a use of air are counted, psi. */
    private static final int GRID = 5;

    /** What builds up in less time is left out, tenths of a second. */
    static final int COUNTS = 150;

    private final Durations durations;

    /** The course of a vehicle with these durations. */
    public Course(Durations durations) {
        this.durations = durations;
    }

    /** How long things take here. */
    public Durations durations() {
        return durations;
    }

    /**
     * What a step came to.
     *
     * @param after how the vehicle stands then
     * @param walk time to walk there first (tenths of a second)
     * @param tenths time of the step itself (tenths of a second)
     */
    public record Outcome(Situation after, int walk, int tenths) {
        /** All the time it takes, tenths of a second. */
        public int all() {
            return walk + tenths;
        }
    }

    /** What comes of a step. */
    public Outcome take(Situation before, Step step) {
        Spot spot = step instanceof CheckStep check ? check.manner().spot() : spot(before, step);
        int walk = durations.walk(before.spot(), spot);
        Situation there = passed(before, walk).at(spot);
        Outcome outcome =
                step instanceof CheckStep check
                        ? check(there, check)
                        : work(there, (WorkStep) step);
        return new Outcome(outcome.after(), walk, outcome.tenths());
    }

    private static Spot spot(Situation before, Step step) {
        Work work = ((WorkStep) step).work();
        return work == Work.WAIT ? before.spot() : work.spot();
    }

    private Outcome check(Situation there, CheckStep step) {
        int tenths = step.manner().tenths();
        int psi = there.psi();
        Outcome moved =
                switch (step.change().kind()) {
                    case NONE -> still(there, tenths);
                    case RISE -> rise(there, speed(step), step.change().psi(), tenths);
                    case FALL -> fall(there, step.change().psi(), tenths);
                    case APPLICATION -> still(there, tenths, durations.application(psi));
                    case ESCAPE -> escape(there, step.change().psi(), tenths);
                    case BLOW -> still(there, tenths, Math.min(BLOWN, psi));
                };
        Situation after = moved.after();
        for (CheckStep.Leaves leaves : step.leaves()) {
            after = after.with(leaves.aspect(), leaves.value());
        }
        return new Outcome(after, 0, moved.tenths());
    }

    private static int speed(CheckStep step) {
        return step.manner().rpm() == 0 ? FAST : step.manner().rpm();
    }

    private Outcome still(Situation there, int tenths) {
        return new Outcome(passed(there, tenths), 0, tenths);
    }

    private Outcome still(Situation there, int tenths, int taken) {
        Situation less = pressure(there, left(Math.max(there.psi() - taken, 0)), true);
        return new Outcome(passed(less, tenths), 0, tenths);
    }

    private Outcome escape(Situation there, int psi, int tenths) {
        return new Outcome(pressure(there, Math.min(psi, there.psi()), false), 0, tenths);
    }

    private Outcome rise(Situation there, int rpm, int to, int extra) {
        int goal = Math.min(to, durations.cutOut());
        if (goal <= there.psi()) {
            return still(there, extra);
        }
        if (!there.has(Aspect.ENGINE) || !there.has(Aspect.COMPRESSOR)) {
            return new Outcome(there, 0, Durations.NEVER);
        }
        boolean drained = !there.has(Aspect.SUPPLY_RESERVOIR);
        int refill = drained ? durations.refill(there.psi()) : 0;
        boolean trailers = there.has(Aspect.TRAILER_AIR);
        int time = refill + durations.rise(trailers, rpm, there.psi(), goal);
        Situation full = there.with(Aspect.SUPPLY_RESERVOIR, 1);
        return new Outcome(pressure(full, goal, false), 0, time + extra);
    }

    private Outcome fall(Situation there, int to, int extra) {
        if (to >= there.psi()) {
            return still(there, extra);
        }
        int time = falling(there, to);
        return new Outcome(pressure(there, to, false), 0, Math.min(time + extra, Durations.NEVER));
    }

    /** With the engine running the compressor joins in below cut-in, or if it already pumps. */
    private int falling(Situation there, int to) {
        int from = there.psi();
        if (!there.has(Aspect.ENGINE)) {
            return durations.fall(false, from, to);
        }
        int joins = there.has(Aspect.COMPRESSOR) ? from : Math.min(from, durations.cutIn());
        int alone = durations.fall(false, from, Math.max(joins, to));
        int against = durations.fall(true, Math.max(joins, to), to);
        return Math.min(alone + against, Durations.NEVER);
    }

    private Outcome work(Situation there, WorkStep step) {
        int tenths = 10 * step.work().seconds();
        return switch (step.work()) {
            case PUMP_UP -> rise(there, FAST, step.amount(), 0);
            case FAN_DOWN -> fall(there, step.amount(), 0);
            case WAIT -> still(there, 10 * step.amount());
            case START_ENGINE -> still(there.with(Aspect.KEY, 1).with(Aspect.ENGINE, 1), tenths);
            default -> still(set(there, step.work()), tenths);
        };
    }

    private Situation set(Situation there, Work work) {
        return switch (work) {
            case CHOCK -> there.with(Aspect.CHOCKS, 1);
            case UNCHOCK -> there.with(Aspect.CHOCKS, 0);
            case KEY_ON -> there.with(Aspect.KEY, 1);
            case STOP_ENGINE -> there.with(Aspect.ENGINE, 0);
            case SET_PARKING -> there.with(Aspect.PARKING, 0);
            case RELEASE_PARKING -> released(there);
            case OPEN_TRAILER_SUPPLY -> charged(there.with(Aspect.TRAILER_SUPPLY, 1));
            case CLOSE_TRAILER_SUPPLY -> there.with(Aspect.TRAILER_SUPPLY, 0);
            case PART_SERVICE_LINE ->
                    there.with(Aspect.LINES, there.value(Aspect.LINES) | Lines.SERVICE_PARTED);
            case PART_SUPPLY_LINE ->
                    there.with(Aspect.LINES, there.value(Aspect.LINES) | Lines.SUPPLY_PARTED);
            case PART_LINES -> there.with(Aspect.LINES, Lines.BOTH_PARTED);
            case COUPLE_LINES -> there.with(Aspect.LINES, Lines.COUPLED);
            case DRAIN_SUPPLY -> there.with(Aspect.SUPPLY_RESERVOIR, 0);
            default -> there;
        };
    }

    private Situation released(Situation there) {
        if (there.has(Aspect.PARKING)) {
            return there;
        }
        int psi = left(durations.afterParkingRelease(there.psi()));
        return pressure(there.with(Aspect.PARKING, 1), psi, true);
    }

    private Situation charged(Situation there) {
        if (Lines.supplyIsOpen(there.value(Aspect.LINES))) {
            return pressure(there, Math.min(there.psi(), SUPPLY_POPS - 1), false);
        }
        if (there.has(Aspect.TRAILER_AIR)) {
            return there;
        }
        int psi = left(durations.afterTrailerCharge(there.psi()));
        return pressure(there.with(Aspect.TRAILER_AIR, 1), psi, false);
    }

    /** Time passes; a running engine builds up, a still one lets the air settle. */
    private Situation passed(Situation there, int tenths) {
        if (!there.has(Aspect.ENGINE)) {
            return tenths >= durations.settling() ? there.with(Aspect.REST, 1) : there;
        }
        if (!there.has(Aspect.COMPRESSOR) || tenths < COUNTS) {
            return there;
        }
        int left = tenths;
        Situation now = there;
        if (!there.has(Aspect.SUPPLY_RESERVOIR)) {
            left -= durations.refill(there.psi());
            now = left >= 0 ? there.with(Aspect.SUPPLY_RESERVOIR, 1) : there;
        }
        boolean trailers = there.has(Aspect.TRAILER_AIR);
        int psi = left > 0 ? durations.risen(trailers, there.psi(), left) : there.psi();
        return pressure(now, Math.max(there.psi(), whole(psi)), false);
    }

    /** What a step leaves is counted in whole steps, the rest as lost. */
    private static int left(int psi) {
        return psi / GRID * GRID;
    }

    /** What builds up by the way is counted in whole steps, except for the cut-out. */
    private int whole(int psi) {
        return psi >= durations.cutOut() ? durations.cutOut() : psi / GRID * GRID;
    }

    /** Sets the pressure, and what valves and governor do at it. */
    private Situation pressure(Situation there, int psi, boolean gentle) {
        Situation now = there.with(Aspect.PRESSURE, psi);
        if (!gentle && psi != there.psi()) {
            now = now.with(Aspect.REST, 0);
        }
        if (psi <= durations.cutIn()) {
            now = now.with(Aspect.COMPRESSOR, 1);
        } else if (psi >= durations.cutOut()) {
            now = now.with(Aspect.COMPRESSOR, 0);
        }
        if (psi < SUPPLY_POPS) {
            now = now.with(Aspect.TRAILER_SUPPLY, 0);
        }
        return psi < PARKING_POPS ? now.with(Aspect.PARKING, 0) : now;
    }
}
