package org.fandown.operator;

import java.util.Optional;
import org.fandown.practice.Dash;
import org.fandown.practice.Verb;

/** The driver's seat: controls, needles, lamps and what is heard there. */
final class Cab {
    /** The brake pedal on the floor, percent. */
    static final int FLOOR = 100;

    private static final double RUNS = 400;
    private static final double STARTS_WITHIN = 10;
    private static final double KNOB = 1;

    /** A needle that moved so far has shown that it does, psi. */
    private static final int MOVED = 30;

    private final Person person;
    private String gear = "neutral";
    private boolean handBrakeSet = true;
    private int foot;
    private Needles least = new Needles(Integer.MAX_VALUE, Integer.MAX_VALUE);
    private Needles most = new Needles(0, 0);

    Cab(Person person) {
        this.person = person;
    }

    private Dash dash() {
        return person.dash();
    }

    Needles needles() {
        Needles now = Needles.read(dash());
        least = least.least(now);
        most = most.most(now);
        person.air().saw(now);
        return now;
    }

    /** Returns whether both needles have been seen to move, at whatever moment so far. */
    boolean needlesMove() {
        return most.primary() - least.primary() >= Usual.NEEDLE_MOVES
                && most.secondary() - least.secondary() >= Usual.NEEDLE_MOVES;
    }

    /** Returns what of a needle that stands still while the other moves, empty if both moved. */
    Optional<String> stuckNeedle() {
        int primary = most.primary() - least.primary();
        int secondary = most.secondary() - least.secondary();
        boolean moved = Math.max(primary, secondary) >= MOVED;
        if (!moved || Math.min(primary, secondary) >= Usual.NEEDLE_MOVES) {
            return Optional.empty();
        }
        return Optional.of(
                "the "
                        + (primary < secondary ? "primary" : "secondary")
                        + " needle stands still while the other moves");
    }

    double rpm() {
        return dash().engine().inRpm();
    }

    boolean engineRuns() {
        return rpm() > RUNS;
    }

    boolean keyOn() {
        return dash().keyOn();
    }

    boolean lowAirLamp() {
        return dash().lowAirLamp();
    }

    boolean buzzer() {
        return dash().lowAirBuzzer();
    }

    boolean warns() {
        return lowAirLamp() || buzzer();
    }

    /** Returns whether the parking brakes are set, by their knob or lever. */
    boolean parked() {
        return dash().parkingKnobIn().map(in -> !in).orElse(handBrakeSet);
    }

    boolean hasTrailerSupply() {
        return dash().trailerKnobIn().isPresent();
    }

    boolean trailerSupplyIn() {
        return dash().trailerKnobIn().orElse(false);
    }

    Optional<Boolean> absLamp() {
        return dash().absLamp();
    }

    /** Travel of the brake pedal, percent. */
    int foot() {
        return foot;
    }

    String gear() {
        return gear;
    }

    void key(boolean on) {
        person.act(Verb.KEY, on ? "on" : "off");
    }

    /** Starts the engine; true if it runs. */
    boolean start() {
        if (engineRuns()) {
            return true;
        }
        if (!keyOn()) {
            key(true);
            person.pass(1);
        }
        person.act(Verb.ENGINE, "start");
        boolean runs = person.await(this::engineRuns, STARTS_WITHIN);
        person.pass(1);
        return runs;
    }

    void stop() {
        throttle(0);
        person.act(Verb.ENGINE, "stop");
        person.await(() -> !engineRuns(), STARTS_WITHIN);
    }

    /** Holds the engine at a speed, rpm; 0 lets it idle. */
    void throttle(int rpm) {
        person.act(Verb.THROTTLE, rpm == 0 ? "0 %" : rpm + " rpm");
    }

    /** Moves the brake pedal, percent of its travel. */
    void foot(int percent) {
        if (percent > 0) {
            person.air().used();
        }
        foot = percent;
        person.act(Verb.FOOT_BRAKE, percent + " %");
    }

    /** Moves the trailer hand valve, percent of its travel. */
    void hand(int percent) {
        person.act(Verb.HAND_VALVE, percent + " %");
    }

    /** Sets or releases the parking brakes; false if the knob does not stay. */
    boolean parking(boolean set) {
        handBrakeSet = set;
        person.act(Verb.PARKING_VALVE, set ? "pull" : "push");
        person.pass(KNOB);
        return parked() == set;
    }

    /** Pushes the trailer supply knob in, or pulls it; false if it does not stay. */
    boolean trailerSupply(boolean in) {
        person.act(Verb.TRAILER_VALVE, in ? "push" : "pull");
        person.pass(KNOB);
        return trailerSupplyIn() == in;
    }

    /** Chooses a gear, with the clutch down where there is one. */
    Optional<String> gear(String chosen) {
        Optional<String> refusal = person.act(Verb.GEAR, chosen);
        if (refusal.isEmpty()) {
            gear = chosen;
        }
        return refusal;
    }

    /** Moves the clutch pedal, percent; refused where there is none. */
    Optional<String> clutch(int percent) {
        return person.act(Verb.CLUTCH, percent + " %");
    }

    /** Somebody else worked the pedal. */
    void footIs(int percent) {
        foot = percent;
    }

    /** Somebody else chose the gear. */
    void gearIs(String chosen) {
        gear = chosen;
    }

    /** Somebody else worked the parking knob or lever. */
    void handBrakeIs(boolean set) {
        handBrakeSet = set;
    }

    /** The person leaves: feet come off the pedals. */
    void left() {
        foot = 0;
    }
}
