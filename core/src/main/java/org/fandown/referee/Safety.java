package org.fandown.referee;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.practice.PracticeEvent;
import org.fandown.practice.Verb;
import org.fandown.procedure.Aspect;

/** Finds where somebody could have been hurt. */
final class Safety {
    private static final List<Verb> WORK_AT_WHEELS =
            List.of(
                    Verb.MEASURE,
                    Verb.PRY,
                    Verb.OPEN_DRAIN,
                    Verb.PART_LINES,
                    Verb.PART_SUPPLY_LINE,
                    Verb.PART_CONTROL_LINE,
                    Verb.COUPLE_LINES,
                    Verb.CROSS_LINES);
    private static final List<Verb> PARTING = List.of(Verb.PART_LINES, Verb.PART_SUPPLY_LINE);
    private static final List<Verb> COUPLING = List.of(Verb.COUPLE_LINES, Verb.CROSS_LINES);

    /** So long after a measurement hands are still at the rod, s. */
    private static final double HANDS = 5;

    private final Tale tale;
    private final List<PracticeEvent> hazards;
    private final List<Feedback> found = new ArrayList<>();

    private Safety(Tale tale, List<PracticeEvent> hazards) {
        this.tale = tale;
        this.hazards = hazards;
    }

    static List<Feedback> of(Tale tale, List<PracticeEvent> events) {
        List<PracticeEvent> hazards = new ArrayList<>();
        for (PracticeEvent event : events) {
            if (event.kind() == PracticeEvent.Kind.HAZARD) {
                hazards.add(event);
            }
        }
        Safety safety = new Safety(tale, hazards);
        safety.held();
        safety.deeds();
        safety.popped();
        safety.dangers();
        return safety.found;
    }

    private void add(Item item, long tick, String happened, String led, String instead) {
        found.add(new Feedback(item, Tale.seconds(tick), happened, led, instead));
    }

    private void held() {
        List<Stretch> loose =
                tale.stretches(0, tale.ticks, scene -> scene.cabIsEmpty() && !scene.isHeld());
        for (Stretch each : loose) {
            Optional<Tale.Deed> by = tale.lastDeed(each.from());
            if (each.ticks() > 0 && by.isPresent()) {
                add(
                        Item.HELD,
                        each.from(),
                        "From "
                                + by.get().said()
                                + " on nobody was in the cab, no wheel was chocked and the parking"
                                + " brakes were not set.",
                        "For "
                                + Words.seconds(each.seconds())
                                + " nothing but the ground held the vehicle.",
                        "Chock the wheels or set the parking brakes before you leave the cab.");
            }
        }
    }

    private void deeds() {
        long told = -1;
        for (Tale.Deed deed : tale.deeds) {
            if (deed.refused()) {
                continue;
            }
            Scene scene = deed.scene();
            boolean loose = !scene.state().has(Aspect.CHOCKS);
            if (loose && WORK_AT_WHEELS.contains(deed.verb()) && told < 0) {
                told = deed.tick();
                add(
                        Item.CHOCKED,
                        deed.tick(),
                        deed.said() + " was done with no wheel chocked.",
                        "If the vehicle rolls, whoever works under or between is caught.",
                        "Chock before anything else.");
            }
            told = loose ? told : -1;
            starts(deed, scene);
            lines(deed, scene);
            moves(deed, scene);
        }
    }

    private boolean isHazard(Tale.Deed deed) {
        return hazards.stream().anyMatch(h -> h.seconds() == Tale.seconds(deed.tick()));
    }

    private void starts(Tale.Deed deed, Scene scene) {
        if (deed.verb() != Verb.ENGINE || !deed.entry().action().value().equals("start")) {
            return;
        }
        if (isHazard(deed)) {
            add(
                    Item.STARTED,
                    deed.tick(),
                    "The engine was started in gear.",
                    "The vehicle can jump forward.",
                    "Choose neutral before you start the engine.");
        } else if (!scene.isHeld()) {
            add(
                    Item.STARTED,
                    deed.tick(),
                    "The engine was started with no wheel chocked and the parking brakes released.",
                    "The vehicle can move off by itself.",
                    "Set the parking brakes or chock the wheels before you start the engine.");
        }
    }

    private void lines(Tale.Deed deed, Scene scene) {
        if (PARTING.contains(deed.verb()) && isHazard(deed)) {
            add(
                    Item.LINES,
                    deed.tick(),
                    deed.said() + " took a supply line apart that held air.",
                    "The hose whips and can hit whoever holds it.",
                    "Pull the trailer supply knob and let the line empty before you part it.");
        }
        if (COUPLING.contains(deed.verb()) && scene.state().has(Aspect.TRAILER_SUPPLY)) {
            add(
                    Item.LINES,
                    deed.tick(),
                    deed.said() + " coupled the lines with the trailer supply valve open.",
                    "Air blows in the face of whoever couples them.",
                    "Pull the trailer supply knob before you couple the lines.");
        }
    }

    /** Brakes that apply while somebody has the hands at a push rod. */
    private void moves(Tale.Deed deed, Scene scene) {
        boolean brakes =
                switch (deed.verb()) {
                    case FOOT_BRAKE, HAND_VALVE -> !deed.entry().action().value().startsWith("0");
                    case PARKING_VALVE, TRAILER_VALVE ->
                            deed.entry().action().value().equals("pull");
                    default -> false;
                };
        if (brakes && hasHandsAtRod(deed.tick(), scene)) {
            clear(deed.tick(), deed.said() + " moved the push rods");
        }
    }

    private void popped() {
        for (Sign sign : tale.signs) {
            boolean springs =
                    sign.kind() == Sign.Kind.PARKING_OUT || sign.kind() == Sign.Kind.TRAILER_OUT;
            boolean byHand =
                    !tale.deeds(
                                    sign.tick() - Tale.ticks(1),
                                    sign.tick(),
                                    List.of(Verb.PARKING_VALVE, Verb.TRAILER_VALVE))
                            .isEmpty();
            if (springs && !byHand && hasHandsAtRod(sign.tick(), tale.at(sign.tick()))) {
                clear(sign.tick(), "A knob that came out by itself moved the push rods");
            }
        }
    }

    private void clear(long tick, String what) {
        add(
                Item.CLEAR,
                tick,
                what + " while somebody stood at one that was just measured.",
                "A push rod takes a hand with it.",
                "Step away from the wheel before anybody works a brake.");
    }

    private boolean hasHandsAtRod(long tick, Scene scene) {
        if (scene.station().wheel().isEmpty()) {
            return false;
        }
        Tale.Deed last = null;
        long since = Math.max(0, tick - Tale.ticks(HANDS));
        for (Tale.Deed deed : tale.deeds(since, tick, List.of(Verb.values()))) {
            boolean rod = deed.verb() == Verb.MEASURE || deed.verb() == Verb.PRY;
            boolean leaves = deed.verb() == Verb.STAND || deed.verb() == Verb.CHOCK;
            last = rod ? deed : leaves ? null : last;
        }
        return last != null;
    }

    private void dangers() {
        for (PracticeEvent hazard : hazards) {
            long tick = Tale.ticks(hazard.seconds());
            boolean told = false;
            for (Tale.Deed deed : tale.deeds) {
                boolean known =
                        deed.verb() == Verb.MEASURE
                                || deed.verb() == Verb.PRY
                                || deed.verb() == Verb.ENGINE
                                || PARTING.contains(deed.verb());
                told |= known && deed.tick() == tick;
            }
            if (!told) {
                add(
                        Item.DANGER,
                        tick,
                        Words.sentence(hazard.text()),
                        "Somebody can be run over.",
                        "Hold the vehicle before anybody leaves the cab, and keep people away while"
                                + " it moves.");
            }
        }
    }

    /** Under which item a need counts that somebody's safety hangs on. */
    static Item item(Aspect aspect) {
        return switch (aspect) {
            case CHOCKS -> Item.CHOCKED;
            case SECURED -> Item.HELD;
            case TRAILER_SUPPLY, LINES -> Item.LINES;
            default -> Item.DANGER;
        };
    }
}
