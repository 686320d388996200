package org.fandown.practice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fandown.air.AirControls.Knob;
import org.fandown.air.AirSetup;
import org.fandown.air.AirSystem;
import org.fandown.air.Ambient;
import org.fandown.air.FaultCase;
import org.fandown.evidence.Statement;
import org.fandown.practice.PracticeEvent.Kind;
import org.fandown.units.Decimals;
import org.fandown.units.Fingerprint;
import org.fandown.units.RotationalSpeed;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/**
 * A vehicle that a person can walk round, operate and read, without a screen.
 *
 * <p>Time passes in even ticks of {@value #TICK} s, and actions act between two of them. The same
 * scenario and the same actions between the same ticks give the same bits on every machine. Not
 * safe for use by several threads.
 */
public final class PracticeTruck {
    /** Length of a tick, s. */
    public static final double TICK = 0.02;

    /** Parts of a tick in which engine and wheels push at each other. */
    private static final int FINE = 10;

    /** A change of the engine's speed that the compressor notices, rpm. */
    private static final double NOTICED_RPM = 0.5;

    /** Time in which a vehicle that is found parked has come to rest, s. */
    private static final double SETTLING = 5;

    final Hands hands = new Hands();
    final Drivetrain drivetrain;
    final Motion motion;
    final WheelForces brakes;
    final Person person = new Person();
    final Dice dice;
    private final Scenario scenario;
    private final AirSetup setup;
    private final AirSystem air;
    private final Hearing hearing;
    private final Lamps lamps;
    private final Watch watch;
    private final Doing doing;
    private final List<PracticeEvent> events = new ArrayList<>();
    private final List<RunEntry> log = new ArrayList<>();
    private long ticks;
    private double rpm;
    private Optional<Sighting> seen = Optional.empty();

    private PracticeTruck(Scenario scenario) {
        this.scenario = scenario;
        Vehicle vehicle = scenario.vehicle();
        setup = FaultCase.all(AirSetup.SOUND, scenario.faults());
        Ambient around = new Ambient(Ambient.STANDARD.pressure(), scenario.ground().air());
        air = AirSystem.of(vehicle, setup, around, AirSystem.QUICK);
        VehicleWeight weight = new VehicleWeight(vehicle);
        brakes = new WheelForces(vehicle, air, weight);
        motion = new Motion(weight, brakes, scenario.ground().grade());
        drivetrain = new Drivetrain(scenario.transmission());
        hearing = new Hearing(vehicle, air.outlets());
        lamps = new Lamps(vehicle, setup, air);
        watch = new Watch(this);
        doing = new Doing(this);
        dice = new Dice(scenario.seed());
        find(scenario.start());
        watch.begin();
    }

    /**
     * Makes the vehicle of a scenario, as it is found.
     *
     * @throws IllegalArgumentException if a fault is of a part this vehicle has not
     */
    public static PracticeTruck of(Scenario scenario) {
        return new PracticeTruck(scenario);
    }

    private void find(StartState start) {
        if (start.pressure().pascals() > 0) {
            air.fill(start.pressure());
        }
        boolean parks = air.parkingKnobIn().isPresent();
        brakes.handBrake(!parks && start.parked());
        if (start.parked()) {
            hands.parking(Knob.PULLED);
        }
        settle();
        hands.trailer(start.trailerCharged() ? Knob.PUSHED : Knob.PULLED);
        settle();
    }

    /** Lets a hand do what it does at a knob, and leave it. */
    private void settle() {
        control();
        air.advance(SETTLING);
        hands.parking(Knob.LEFT_ALONE);
        hands.trailer(Knob.LEFT_ALONE);
        control();
    }

    /** Returns what stands there. */
    public Scenario scenario() {
        return scenario;
    }

    /** Returns the vehicle. */
    public Vehicle vehicle() {
        return scenario.vehicle();
    }

    /** Returns the time since the start, s. */
    public double time() {
        return ticks * TICK;
    }

    /** Returns the air system, for the inside view and for those who check. */
    public AirSystem air() {
        return air;
    }

    /**
     * Does something. What cannot be done is refused, and becomes an event as well.
     *
     * @return the reason for a refusal, empty if it was done
     */
    public Optional<String> act(OperatorAction action) {
        seen = Optional.empty();
        log.add(new RunEntry.Act(ticks, action));
        Optional<String> refusal = doing.doIt(action);
        if (refusal.isPresent()) {
            note(Kind.REFUSED, action + ": " + refusal.get());
        }
        return refusal;
    }

    /** Says something: the truck does not move for it, but it becomes part of the run. */
    public void state(Statement statement) {
        log.add(new RunEntry.Stated(ticks, statement));
        note(Kind.STATED, statement.toString());
    }

    /** Gives up waiting for a sign that did not come. */
    void giveUp(ScriptStep.Wait wait) {
        log.add(new RunEntry.GaveUp(ticks, wait));
        note(
                Kind.OBSERVED,
                "waited "
                        + Decimals.formatShort(wait.atMost(), 1)
                        + " s for "
                        + wait.sign().id()
                        + " in vain");
    }

    /**
     * Lets time pass, in whole ticks.
     *
     * @param seconds how much; rounded up to whole ticks
     * @throws IllegalArgumentException if it is negative
     */
    public void advance(double seconds) {
        if (!(seconds >= 0)) {
            throw new IllegalArgumentException("Time does not go backwards.");
        }
        long count = (long) Math.ceil(seconds / TICK - 1e-6);
        for (long i = 0; i < count; i++) {
            tick();
        }
    }

    void tick() {
        if (hands.advance(TICK)) {
            control();
        }
        drive();
        boolean stands = drivetrain.rpm() == 0 && rpm != 0;
        if (stands || Math.abs(drivetrain.rpm() - rpm) >= NOTICED_RPM) {
            rpm = drivetrain.rpm();
            air.turn(RotationalSpeed.ofRpm(rpm));
        }
        air.advance(TICK);
        ticks++;
        lamps.advance(TICK);
        watch.look();
    }

    private void drive() {
        if (drivetrain.engaged()) {
            double h = TICK / FINE;
            for (int i = 0; i < FINE; i++) {
                motion.advance(h, drivetrain.advance(h, motion.speed()), drivetrain.hold());
            }
        } else {
            motion.advance(TICK, drivetrain.advance(TICK, motion.speed()), 0);
        }
    }

    void control() {
        rpm = drivetrain.rpm();
        air.control(hands.controls(rpm));
    }

    void note(Kind kind, String text) {
        events.add(new PracticeEvent(time(), kind, text));
    }

    void show(Sighting sighting) {
        seen = Optional.of(sighting);
    }

    /**
     * Returns what the last action showed, empty if it was none of measuring, looking, draining.
     */
    public Optional<Sighting> seen() {
        return seen;
    }

    /** Returns what happened so far, in order. */
    public List<PracticeEvent> events() {
        return Collections.unmodifiableList(events);
    }

    /** Returns what was done and said so far, in order. */
    public List<RunEntry> log() {
        return Collections.unmodifiableList(log);
    }

    /** Returns how many ticks have passed since the start. */
    public long ticks() {
        return ticks;
    }

    AirSetup setup() {
        return setup;
    }

    Lamps lamps() {
        return lamps;
    }

    /** Returns what a driver sees on the dash. */
    public Dash dash() {
        return new Dash(
                air.primaryNeedle(),
                air.secondaryNeedle(),
                RotationalSpeed.ofRpm(drivetrain.rpm()),
                lamps.keyOn(),
                lamps.lowAir(),
                lamps.buzzer(),
                lamps.abs(),
                air.parkingKnobIn(),
                air.trailerKnobIn(),
                motion.speed());
    }

    /** Returns whether the stop lamps are lit. */
    public boolean stopLamps() {
        return air.stopLamps();
    }

    /** Returns whether the ABS lamp of a towed unit is lit, empty if it has none. */
    public Optional<Boolean> trailerAbsLamp() {
        return lamps.trailerAbs();
    }

    /** Returns the air that is heard escaping where the person stands. */
    public List<Sound> sounds() {
        return hearing.from(person.station(), drivetrain.running());
    }

    /** Returns where the person stands. */
    public Station station() {
        return person.station();
    }

    /** Returns whether somebody else sits in the cab. */
    public boolean helperInCab() {
        return person.helper();
    }

    /** Returns the chocked wheels. */
    public Set<WheelId> chocked() {
        return Collections.unmodifiableSet(motion.chocked());
    }

    /** Returns how far the vehicle went since the start, m; backwards below 0. */
    public double metres() {
        return motion.position();
    }

    /** Returns the travel of the brake pedal, 0 to 1. */
    public double footBrake() {
        return hands.foot();
    }

    /** Returns the travel of the trailer hand valve, 0 to 1. */
    public double handValve() {
        return hands.hand();
    }

    /** Returns whether the engine runs. */
    public boolean engineRuns() {
        return drivetrain.running();
    }

    /** Returns whether air is heard leaving the dryer. */
    public boolean purging() {
        return watch.purging();
    }

    /** Returns a number made of all bits of this run so far. */
    public long fingerprint() {
        Fingerprint print = new Fingerprint();
        print.add(ticks);
        print.add(air.state().fingerprint());
        hands.addTo(print);
        drivetrain.addTo(print);
        motion.addTo(print);
        lamps.addTo(print);
        print.add((long) events.size());
        return print.value();
    }
}
