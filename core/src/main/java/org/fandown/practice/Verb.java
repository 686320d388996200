package org.fandown.practice;

import static org.fandown.practice.Argument.COUPLING;
import static org.fandown.practice.Argument.PART;
import static org.fandown.practice.Argument.RESERVOIR;
import static org.fandown.practice.Argument.STATION;
import static org.fandown.practice.Argument.TEXT;
import static org.fandown.practice.Argument.TRAVEL;
import static org.fandown.practice.Argument.WHEEL;
import static org.fandown.practice.Argument.WORD;

import java.util.List;
import java.util.Optional;

/**
 * What a person can do with the practice truck. The text form is lower case with hyphens ({@code
 * foot-brake}); scripts write it as a key with the {@link Argument} as its value.
 */
// List.of holds texts alone.
@SuppressWarnings("ImmutableEnumChecker")
public enum Verb {
    /** Turns the key. */
    KEY("key", Reach.CAB, WORD, "turn the key", "on", "off"),
    /** Starts or stops the engine. */
    ENGINE("engine", Reach.CAB, WORD, "start or stop the engine", "start", "stop"),
    /** Sets the throttle: out of gear the engine then turns at that speed. */
    THROTTLE("throttle", Reach.CAB, Argument.ENGINE_SPEED, "set the throttle"),
    /** Moves the brake pedal; 100 % is on the floor. */
    FOOT_BRAKE("foot-brake", Reach.CAB, TRAVEL, "move the brake pedal"),
    /** Moves the trailer hand valve. */
    HAND_VALVE("hand-valve", Reach.CAB, TRAVEL, "move the trailer hand valve"),
    /** Pushes the parking knob in, which releases, or pulls it out, which sets. */
    PARKING_VALVE("parking-valve", Reach.CAB, WORD, "work the parking knob", "push", "pull"),
    /** Pushes the trailer supply knob in, which charges, or pulls it out. */
    TRAILER_VALVE("trailer-valve", Reach.CAB, WORD, "work the trailer knob", "push", "pull"),
    /** Chooses a gear. */
    GEAR("gear", Reach.CAB, WORD, "choose a gear", "neutral", "low", "reverse"),
    /** Moves the clutch pedal; 100 % is on the floor. */
    CLUTCH("clutch", Reach.CAB, TRAVEL, "move the clutch pedal"),
    /** Opens the drain of a reservoir. */
    OPEN_DRAIN("open-drain", Reach.OUTSIDE, RESERVOIR, "open a drain"),
    /** Shuts the drain of a reservoir. */
    SHUT_DRAIN("shut-drain", Reach.OUTSIDE, RESERVOIR, "shut a drain"),
    /** Puts a chock at both sides of a wheel. */
    CHOCK("chock", Reach.OUTSIDE, WHEEL, "chock a wheel"),
    /** Takes the chocks away from a wheel. */
    UNCHOCK("unchock", Reach.OUTSIDE, WHEEL, "take the chocks away"),
    /** Joins both lines behind a unit as they should be. */
    COUPLE_LINES("couple-lines", Reach.OUTSIDE, COUPLING, "couple the lines"),
    /** Takes both lines behind a unit apart. */
    PART_LINES("part-lines", Reach.OUTSIDE, COUPLING, "take both lines apart"),
    /** Takes the supply line behind a unit apart. */
    PART_SUPPLY_LINE("part-supply-line", Reach.OUTSIDE, COUPLING, "take the supply line apart"),
    /** Takes the control line behind a unit apart. */
    PART_CONTROL_LINE("part-control-line", Reach.OUTSIDE, COUPLING, "take the control line apart"),
    /** Couples supply to control and control to supply. */
    CROSS_LINES("cross-lines", Reach.OUTSIDE, COUPLING, "couple the lines crosswise"),
    /** Pulls a push rod out by a bar until the linings touch, and measures it. */
    PRY("pry", Reach.OUTSIDE, WHEEL, "measure the free stroke by a bar"),
    /** Measures how far a push rod is out of its released position. */
    MEASURE("measure", Reach.OUTSIDE, WHEEL, "measure the stroke by a rule"),
    /** Looks at a part of the vehicle. */
    LOOK("look", Reach.ANYWHERE, PART, "look at a part"),
    /** Reads both needles, or the lamps. */
    READ("read", Reach.CAB, WORD, "read instruments", "gauges", "lamps"),
    /** Listens where one stands. */
    LISTEN("listen", Reach.ANYWHERE, WORD, "listen for air", "here"),
    /** Goes somewhere. */
    STAND("stand", Reach.ANYWHERE, STATION, "go somewhere"),
    /** A second person in the cab, or away. */
    HELPER("helper", Reach.ANYWHERE, WORD, "place a helper", "cab", "away"),
    /** Writes something down. */
    NOTE("note", Reach.ANYWHERE, TEXT, "note something");

    /** From where it is done. */
    enum Reach {
        /** In the driver's seat: by a helper there, or the person goes there. */
        CAB,
        /** Outside, at the thing itself: the person goes there. */
        OUTSIDE,
        /** Wherever the person stands. */
        ANYWHERE
    }

    private final String id;
    private final Reach reach;
    private final Argument argument;
    private final String title;
    private final List<String> words;

    Verb(String id, Reach reach, Argument argument, String title, String... words) {
        this.id = id;
        this.reach = reach;
        this.argument = argument;
        this.title = title;
        this.words = List.of(words);
    }

    /** Returns the text form. */
    public String id() {
        return id;
    }

    /** Returns what it does, as an infinitive. */
    public String title() {
        return title;
    }

    /** Returns what it is done to or how far. */
    public Argument argument() {
        return argument;
    }

    /** Returns the words allowed where the argument is one of a few words. */
    public List<String> words() {
        return words;
    }

    Reach reach() {
        return reach;
    }

    /** Returns the verb with a text form, empty if there is none. */
    public static Optional<Verb> byId(String id) {
        for (Verb verb : values()) {
            if (verb.id.equals(id)) {
                return Optional.of(verb);
            }
        }
        return Optional.empty();
    }
}
