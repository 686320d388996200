package org.fandown.practice;

import org.fandown.practice.Scenario.Transmission;
import org.fandown.units.Fingerprint;

/**
 * Engine, clutch and gears: from the pedals to the engine's speed and the force at the wheels.
 *
 * <p>The pedal asks for a speed, and the engine's governor gives torque in proportion to what is
 * missing. A clutch or converter passes torque in proportion to its slip up to what it can hold. An
 * engine that is held below its stalling speed stops.
 */
final class Drivetrain {
    /** Turns a minute for a radian a second. */
    private static final double RPM = 30 / Math.PI;

    private static final double IDLE = PracticeDefault.IDLE.number();
    private static final double RANGE = PracticeDefault.GOVERNED.number() - IDLE;
    private static final double RATIO = PracticeDefault.LOW_RATIO.number();
    private static final double RADIUS = PracticeDefault.TYRE_RADIUS.number();
    private static final double DRAG = PracticeDefault.DRAG.number();

    /** Below this speed a stopping engine stands. */
    private static final double STANDING = 20;

    /** From this travel of the clutch pedal on nothing is passed. */
    private static final double CLEAR = 0.8;

    /** Up to this travel all is passed. */
    private static final double CLOSED = 0.2;

    enum Gear {
        NEUTRAL(0),
        LOW(RATIO),
        REVERSE(-RATIO);

        private final double ratio;

        Gear(double ratio) {
            this.ratio = ratio;
        }
    }

    private enum State {
        STOPPED,
        CRANKING,
        RUNNING
    }

    private final boolean automatic;
    private State state = State.STOPPED;
    private double cranked;
    private double rpm;
    private double throttle;
    private double clutch;
    private Gear gear = Gear.NEUTRAL;

    Drivetrain(Transmission transmission) {
        automatic = transmission == Transmission.AUTOMATIC;
    }

    boolean hasClutch() {
        return !automatic;
    }

    double rpm() {
        return rpm;
    }

    boolean running() {
        return state == State.RUNNING;
    }

    boolean turning() {
        return state != State.STOPPED;
    }

    boolean inGear() {
        return gear != Gear.NEUTRAL;
    }

    /** Whether engine and wheels push at each other. */
    boolean engaged() {
        return inGear() && engagement() > 0;
    }

    void crank() {
        state = State.CRANKING;
        cranked = 0;
    }

    void stop() {
        state = State.STOPPED;
    }

    void gear(Gear next) {
        gear = next;
    }

    double throttle() {
        return throttle;
    }

    void throttle(double travel) {
        throttle = travel;
    }

    /** Sets the pedal so that the free engine turns at a speed. */
    void throttleFor(double speed) {
        throttle = Math.min(1, Math.max(0, (speed - IDLE) / RANGE));
    }

    double clutch() {
        return clutch;
    }

    void clutch(double travel) {
        clutch = travel;
    }

    /**
     * Lets time pass.
     *
     * @param h how much, s
     * @param speed of the vehicle forwards, m/s
     * @return force at the wheels forwards, N
     */
    double advance(double h, double speed) {
        double passed = passedTorque(speed);
        turn(h, passed);
        return passed * gear.ratio / RADIUS;
    }

    private double engagement() {
        if (automatic) {
            return 1;
        }
        return Math.min(1, Math.max(0, (CLEAR - clutch) / (CLEAR - CLOSED)));
    }

    /** Torque from the engine into the gears, N m. */
    private double passedTorque(double speed) {
        if (!engaged() || state == State.STOPPED) {
            return 0;
        }
        double slip = rpm - speed / RADIUS * gear.ratio * RPM;
        double most = mostPassed();
        return Math.max(-most, Math.min(most, PracticeDefault.SLIP.number() * slip));
    }

    private double mostPassed() {
        double share = rpm / IDLE;
        return automatic
                ? PracticeDefault.CREEP.number() * share * share
                : engagement() * PracticeDefault.CLUTCH_TORQUE.number();
    }

    /** What a stopped engine holds at the wheels through gears and clutch, N. */
    double hold() {
        if (automatic || !engaged() || state != State.STOPPED) {
            return 0;
        }
        double torque = Math.min(DRAG, engagement() * PracticeDefault.CLUTCH_TORQUE.number());
        return torque * RATIO / RADIUS;
    }

    private void turn(double h, double passed) {
        switch (state) {
            case STOPPED -> rpm = rpm < STANDING ? 0 : rpm + spin(h, -DRAG);
            case CRANKING -> crank(h);
            case RUNNING -> run(h, passed);
        }
    }

    private void crank(double h) {
        rpm = PracticeDefault.CRANK.number();
        cranked += h;
        if (cranked >= PracticeDefault.CRANK_TIME.number()) {
            state = State.RUNNING;
            rpm = IDLE;
        }
    }

    private void run(double h, double passed) {
        double missing = IDLE + throttle * RANGE - rpm;
        double torque = PracticeDefault.GOVERNOR_GAIN.number() * missing;
        double held = Math.max(-DRAG, Math.min(PracticeDefault.TORQUE.number(), torque));
        rpm = Math.max(0, rpm + spin(h, held - passed));
        if (rpm < PracticeDefault.STALL.number()) {
            state = State.STOPPED;
        }
    }

    private static double spin(double h, double torque) {
        return torque / PracticeDefault.INERTIA.number() * RPM * h;
    }

    void addTo(Fingerprint print) {
        print.add(state.name());
        print.add(gear.name());
        print.add(rpm);
        print.add(cranked);
        print.add(throttle);
        print.add(clutch);
    }
}
