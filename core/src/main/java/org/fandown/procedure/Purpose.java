package org.fandown.procedure;

import java.util.EnumSet;
import java.util.Set;

/** Which work brings about what. */
final class Purpose {
    private Purpose() {}

    /** Whether a work can turn a need from unmet to met. */
    static boolean serves(WorkStep step, Need need, Durations durations) {
        return switch (need.aspect()) {
            case PRESSURE -> level(step, need);
            case COMPRESSOR -> governor(step, need, durations);
            case REST -> step.work() == Work.WAIT && need.least() == 1;
            case TRAILER_AIR -> step.work() == Work.OPEN_TRAILER_SUPPLY && need.least() == 1;
            case SECURED -> step.work() == Work.SET_PARKING || step.work() == Work.CHOCK;
            case SUPPLY_RESERVOIR -> reservoir(step, need, durations);
            case LINES -> lines(step.work(), need);
            default -> switches(step.work(), need);
        };
    }

    private static boolean level(WorkStep step, Need need) {
        boolean up = step.work() == Work.PUMP_UP && step.amount() == Levels.up(need);
        boolean down = step.work() == Work.FAN_DOWN && step.amount() == need.most();
        return up || down;
    }

    private static boolean governor(WorkStep step, Need need, Durations durations) {
        boolean pumping = need.least() == 1;
        int level = pumping ? durations.cutIn() : durations.cutOut();
        Work work = pumping ? Work.FAN_DOWN : Work.PUMP_UP;
        return step.work() == work && step.amount() == level;
    }

    private static boolean reservoir(WorkStep step, Need need, Durations durations) {
        return need.least() == 0
                ? step.work() == Work.DRAIN_SUPPLY
                : step.work() == Work.PUMP_UP && step.amount() == durations.cutOut();
    }

    private static boolean lines(Work work, Need need) {
        return switch (work) {
            case COUPLE_LINES -> true;
            case PART_SERVICE_LINE -> (need.least() & Lines.SERVICE_PARTED) != 0;
            case PART_SUPPLY_LINE -> (need.least() & Lines.SUPPLY_PARTED) != 0;
            case PART_LINES -> need.least() == Lines.BOTH_PARTED;
            default -> false;
        };
    }

    private static boolean switches(Work work, Need need) {
        boolean on = need.least() == 1;
        return switch (need.aspect()) {
            case KEY -> work == Work.KEY_ON && on;
            case ENGINE -> work == (on ? Work.START_ENGINE : Work.STOP_ENGINE);
            case PARKING -> work == (on ? Work.RELEASE_PARKING : Work.SET_PARKING);
            case TRAILER_SUPPLY ->
                    work == (on ? Work.OPEN_TRAILER_SUPPLY : Work.CLOSE_TRAILER_SUPPLY);
            case CHOCKS -> work == (on ? Work.CHOCK : Work.UNCHOCK);
            default -> false;
        };
    }

    /** What a work can make cease to hold. */
    static Set<Aspect> breaks(Work work) {
        return switch (work) {
            case PUMP_UP, FAN_DOWN -> EnumSet.of(Aspect.PRESSURE, Aspect.REST, Aspect.COMPRESSOR);
            case START_ENGINE ->
                    EnumSet.of(Aspect.ENGINE, Aspect.PRESSURE, Aspect.REST, Aspect.COMPRESSOR);
            case STOP_ENGINE -> EnumSet.of(Aspect.ENGINE);
            case SET_PARKING -> EnumSet.of(Aspect.PARKING);
            case RELEASE_PARKING ->
                    EnumSet.of(Aspect.PARKING, Aspect.SECURED, Aspect.PRESSURE, Aspect.COMPRESSOR);
            case OPEN_TRAILER_SUPPLY ->
                    EnumSet.of(
                            Aspect.TRAILER_SUPPLY, Aspect.PRESSURE, Aspect.REST, Aspect.COMPRESSOR);
            case CLOSE_TRAILER_SUPPLY -> EnumSet.of(Aspect.TRAILER_SUPPLY);
            case PART_SERVICE_LINE, PART_SUPPLY_LINE, PART_LINES, COUPLE_LINES ->
                    EnumSet.of(Aspect.LINES);
            case CHOCK, UNCHOCK -> EnumSet.of(Aspect.CHOCKS, Aspect.SECURED);
            case DRAIN_SUPPLY -> EnumSet.of(Aspect.SUPPLY_RESERVOIR);
            case KEY_ON, WAIT -> EnumSet.noneOf(Aspect.class);
        };
    }
}
