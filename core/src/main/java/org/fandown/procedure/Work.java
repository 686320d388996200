package org.fandown.procedure;

import java.util.Optional;

/** What is done between checks to bring the vehicle into the state a check needs. */
public enum Work {
    /** Puts chocks at both sides of a wheel. */
    CHOCK("chock", "Chock the wheels", Spot.WHEEL, 20, Amount.NONE),
    /** Takes the chocks away. */
    UNCHOCK("unchock", "Take the chocks away", Spot.WHEEL, 15, Amount.NONE),
    /** Turns the key on. */
    KEY_ON("key-on", "Turn the key on", Spot.CAB, 2, Amount.NONE),
    /** Starts the engine; the key is on from then on. */
    START_ENGINE("start-engine", "Start the engine", Spot.CAB, 5, Amount.NONE),
    /** Stops the engine; the key is left on. */
    STOP_ENGINE("stop-engine", "Stop the engine, leave the key on", Spot.CAB, 3, Amount.NONE),
    /** Pulls the parking knob. */
    SET_PARKING("set-parking-brakes", "Set the parking brakes", Spot.CAB, 3, Amount.NONE),
    /** Pushes the parking knob in. */
    RELEASE_PARKING(
            "release-parking-brakes", "Release the parking brakes", Spot.CAB, 4, Amount.NONE),
    /** Pushes the trailer supply knob in. */
    OPEN_TRAILER_SUPPLY(
            "open-trailer-supply", "Push the trailer supply knob in", Spot.CAB, 10, Amount.NONE),
    /** Pulls the trailer supply knob. */
    CLOSE_TRAILER_SUPPLY(
            "close-trailer-supply", "Pull the trailer supply knob", Spot.CAB, 4, Amount.NONE),
    /** Takes the service line apart. */
    PART_SERVICE_LINE("part-service-line", "Part the service line", Spot.COUPLING, 20, Amount.NONE),
    /** Takes the supply line apart. */
    PART_SUPPLY_LINE("part-supply-line", "Part the supply line", Spot.COUPLING, 20, Amount.NONE),
    /** Takes both lines apart. */
    PART_LINES("part-lines", "Part both trailer lines", Spot.COUPLING, 30, Amount.NONE),
    /** Couples both lines. */
    COUPLE_LINES("couple-lines", "Couple the trailer lines", Spot.COUPLING, 30, Amount.NONE),
    /** Drains the supply reservoir and shuts its drain. */
    DRAIN_SUPPLY(
            "drain-supply-reservoir",
            "Drain the supply reservoir and shut its drain",
            Spot.RESERVOIRS,
            45,
            Amount.NONE),
    /** Lets the compressor pump to a pressure, engine at fast idle. */
    PUMP_UP("pump-up", "Build up", Spot.CAB, 0, Amount.PRESSURE),
    /** Pumps the pedal down to a pressure. */
    FAN_DOWN("fan-down", "Fan down", Spot.CAB, 0, Amount.PRESSURE),
    /** Lets the air settle. */
    WAIT("wait", "Let the air settle", Spot.CAB, 0, Amount.TIME);

    /** What a work is done so far or so long. */
    enum Amount {
        NONE,
        PRESSURE,
        TIME
    }

    private final String id;
    private final String title;
    private final Spot spot;
    private final int seconds;
    private final Amount amount;

    Work(String id, String title, Spot spot, int seconds, Amount amount) {
        this.id = id;
        this.title = title;
        this.spot = spot;
        this.seconds = seconds;
        this.amount = amount;
    }

    /** The text form, lower case with hyphens. */
    public String id() {
        return id;
    }

    /** What is done, in sentence case, as an order. */
    public String title() {
        return title;
    }

    /** Where it is done. A wait is done wherever the person stands. */
    public Spot spot() {
        return spot;
    }

    Amount amount() {
        return amount;
    }

    int seconds() {
        return seconds;
    }

    /** What can hurt somebody, empty text if nothing. */
    public String caution() {
        return switch (this) {
            case CHOCK ->
                    "Chock before anything else. Face the wheel from the side; never kneel in"
                            + " its path.";
            case UNCHOCK -> "Set the parking brakes before you take the chocks away.";
            case START_ENGINE ->
                    "Neutral, parking brakes set or wheels chocked. Nobody is under or"
                            + " near the push rods.";
            case SET_PARKING ->
                    "Push rods of spring brakes move at once: hands and people away from"
                            + " them.";
            case RELEASE_PARKING ->
                    "The vehicle can roll: wheels chocked, or your foot on the" + " brake.";
            case OPEN_TRAILER_SUPPLY ->
                    "The trailer's brakes let go: is it chocked or the tractor" + " held?";
            case CLOSE_TRAILER_SUPPLY -> "The trailer's push rods move at once: nobody near them.";
            case PART_SERVICE_LINE, PART_SUPPLY_LINE, PART_LINES ->
                    "Never part a supply line that holds air: the hose whips. Pull the trailer"
                            + " supply knob first; wear eye protection.";
            case COUPLE_LINES ->
                    "Couple with the trailer supply valve closed; wear eye protection.";
            case DRAIN_SUPPLY -> "Eye and ear protection; stand beside the drain, not below it.";
            case PUMP_UP -> "Never leave fast idle unattended, and never in a closed hall.";
            case FAN_DOWN -> "Spring brakes can come on by themselves: nobody near push rods.";
            case KEY_ON, STOP_ENGINE, WAIT -> "";
        };
    }

    /** The work with a text form, empty if there is none. */
    public static Optional<Work> byId(String id) {
        for (Work work : values()) {
            if (work.id.equals(id)) {
                return Optional.of(work);
            }
        }
        return Optional.empty();
    }
}
