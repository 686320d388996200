package org.fandown.operator;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.fandown.evidence.Statement;
import org.fandown.practice.Dash;
import org.fandown.practice.OperatorAction;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.Sighting;
import org.fandown.practice.Sound;
import org.fandown.practice.Station;
import org.fandown.practice.Verb;
import org.fandown.procedure.Durations;
import org.fandown.procedure.Lines;
import org.fandown.procedure.Spot;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/**
 * The person at the truck: where they stand, what they do, what they see, hear and remember. Here
 * alone the truck is touched.
 */
final class Person {
    private static final double LOOKS_EVERY = 0.1;
    private static final double HEARS_EVERY = 0.5;
    private static final double TENTHS = 10;

    private final PracticeTruck truck;
    private final Durations durations;
    private final Cab cab = new Cab(this);
    private final Air air = new Air(this);
    private Spot spot = Spot.GROUND;
    private boolean helper;
    private boolean trailerCharged;
    private int lines = Lines.COUPLED;
    private Optional<Runnable> onlooker = Optional.empty();

    Person(PracticeTruck truck, Durations durations) {
        this.truck = truck;
        this.durations = durations;
    }

    Cab cab() {
        return cab;
    }

    Air air() {
        return air;
    }

    Vehicle vehicle() {
        return truck.vehicle();
    }

    Durations durations() {
        return durations;
    }

    boolean tows() {
        return cab.hasTrailerSupply();
    }

    /** Seconds since the start. */
    double time() {
        return truck.time();
    }

    /** Lets time pass; a purge is heard whatever the person does. */
    void pass(double seconds) {
        double end = time() + Math.max(0, seconds);
        double every = onlooker.isPresent() ? LOOKS_EVERY : HEARS_EVERY;
        while (end - time() > PracticeTruck.TICK / 2) {
            truck.advance(Math.min(end - time(), every));
            onlooker.ifPresent(Runnable::run);
            if (truck.purging()) {
                air.heardPurge();
            }
        }
    }

    /** Lets somebody look on while time passes, or nobody any more. */
    void watchedBy(Optional<Runnable> looksOn) {
        onlooker = looksOn;
    }

    /** Lets time pass until a moment, if it is still to come. */
    void passUntil(double moment) {
        pass(moment - time());
    }

    /**
     * Waits for something to be seen or heard.
     *
     * @param seen looks for it
     * @param patience after how long to give up, s
     * @return whether it was seen
     */
    boolean await(BooleanSupplier seen, double patience) {
        double end = time() + patience;
        while (!seen.getAsBoolean()) {
            if (time() >= end) {
                return false;
            }
            pass(LOOKS_EVERY);
        }
        return true;
    }

    /** Does something; what is done in the cab is done there, by the helper if one sits in it. */
    Optional<String> act(Verb verb, String value) {
        return truck.act(new OperatorAction(verb, value));
    }

    /** Does something and returns what it showed, empty if it could not be done. */
    Optional<Sighting> see(Verb verb, String value) {
        act(verb, value);
        return truck.seen();
    }

    /** Says what is done, what was observed or what follows. */
    void state(Statement statement) {
        truck.state(statement);
    }

    // ---- where the person is

    Spot spot() {
        return spot;
    }

    /** Walks to a spot; the way takes its time. */
    void walk(Spot to) {
        pass(durations.walk(spot, to) / TENTHS);
        stand(to);
    }

    /** Stands at a spot at once, for those who let the way's time pass themselves. */
    void stand(Spot to) {
        spot = to;
        standAt(station(to));
    }

    /** Stands at one place at once. */
    void standAt(Station station) {
        if (station.equals(truck.station())) {
            return;
        }
        boolean leaves = truck.station().equals(Station.CAB) && !helper;
        act(Verb.STAND, station.toString());
        if (leaves) {
            cab.left();
        }
    }

    private Station station(Spot to) {
        return switch (to) {
            case CAB -> Station.CAB;
            case GROUND -> Station.FRONT;
            case WHEEL -> Station.at(chockWheel());
            case COUPLING -> Station.coupling(1);
            case RESERVOIRS -> Station.reservoirs(1);
            case REAR -> Station.REAR;
        };
    }

    /** Puts a helper into the cab, or sends them away. */
    void helper(boolean inCab) {
        if (helper != inCab) {
            helper = inCab;
            act(Verb.HELPER, inCab ? "cab" : "away");
            if (!inCab && !truck.station().equals(Station.CAB)) {
                cab.left();
            }
        }
    }

    /** Whether somebody else sits in the cab. */
    boolean hasHelper() {
        return helper;
    }

    /** Takes over from somebody who walked and worked before: what can be seen of it. */
    void takeOver() {
        helper = truck.helperInCab();
        spot =
                switch (truck.station().spot()) {
                    case CAB -> Spot.CAB;
                    case FRONT -> Spot.GROUND;
                    case REAR -> Spot.REAR;
                    case WHEEL -> Spot.WHEEL;
                    case COUPLING -> Spot.COUPLING;
                    case RESERVOIRS -> Spot.RESERVOIRS;
                };
    }

    // ---- chocks and lines

    /** The wheel that is chocked: the last one of the powered unit on the left. */
    private WheelId chockWheel() {
        int axles = vehicle().powerUnit().axles().size();
        return new WheelId(axles, org.fandown.vehicle.Side.LEFT);
    }

    boolean chocked() {
        return !truck.chocked().isEmpty();
    }

    Optional<String> chock() {
        return act(Verb.CHOCK, chockWheel().toString());
    }

    void unchock() {
        for (WheelId wheel : List.copyOf(truck.chocked())) {
            act(Verb.UNCHOCK, wheel.toString());
        }
    }

    int lines() {
        return lines;
    }

    /** Couples or parts the lines behind the powered unit, see {@link Lines}. */
    void lines(int wanted) {
        lines = wanted;
        Verb verb =
                switch (wanted) {
                    case Lines.COUPLED -> Verb.COUPLE_LINES;
                    case Lines.SERVICE_PARTED -> Verb.PART_CONTROL_LINE;
                    case Lines.SUPPLY_PARTED -> Verb.PART_SUPPLY_LINE;
                    default -> Verb.PART_LINES;
                };
        act(verb, "1");
    }

    /** Somebody else coupled or parted the lines. */
    void linesAre(int now) {
        lines = now;
    }

    String linesInWords() {
        return switch (lines) {
            case Lines.COUPLED -> "connected";
            case Lines.SERVICE_PARTED -> "service-disconnected";
            case Lines.SUPPLY_PARTED -> "supply-disconnected";
            default -> "disconnected";
        };
    }

    boolean trailerCharged() {
        return trailerCharged;
    }

    void trailerIsCharged() {
        trailerCharged = true;
    }

    boolean supplyDrained() {
        return air.supplyDrained();
    }

    // ---- what is seen and heard

    Dash dash() {
        return truck.dash();
    }

    boolean purging() {
        return truck.purging();
    }

    boolean stopLamps() {
        return truck.stopLamps();
    }

    Optional<Boolean> trailerAbsLamp() {
        return truck.trailerAbsLamp();
    }

    /** Air that is heard where the person stands. */
    List<Sound> sounds() {
        return truck.sounds();
    }

    /** How far the vehicle went since the start, m. */
    double metres() {
        return truck.metres();
    }

    /** A slope is seen. */
    boolean onLevelGround() {
        return truck.scenario().ground().grade() == 0;
    }
}
