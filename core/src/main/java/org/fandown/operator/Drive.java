package org.fandown.operator;

import java.util.function.BooleanSupplier;

/** Moves the vehicle, or tries to: pulls in low gear, rolls and stops. */
final class Drive {
    /** Clutch travel at which a gentle pull is enough, percent. */
    private static final int GENTLE = 72;

    private static final int CLEAR = 100;
    private static final int PULLS = 900;
    private static final double STOPS = 6;

    /** A vehicle that went no further has stood, m. */
    private static final double STOOD = 0.05;

    private final Person person;
    private final Cab cab;

    Drive(Person person) {
        this.person = person;
        cab = person.cab();
    }

    /** Pulls gently for a few seconds, then lets go; true if the vehicle moved. */
    boolean pull() {
        double from = person.metres();
        engage();
        person.await(() -> moved(from), 4);
        boolean moved = moved(from);
        disengage();
        stop(from);
        return moved;
    }

    private boolean moved(double from) {
        return Math.abs(person.metres() - from) > STOOD;
    }

    /** Rolls until something is seen; true if it was within the time. */
    boolean roll(BooleanSupplier seen, double patience) {
        engage();
        if (cab.clutch(GENTLE - 20).isEmpty()) {
            person.pass(1);
            cab.clutch(0);
        }
        return person.await(seen, patience);
    }

    private void engage() {
        boolean manual = cab.clutch(CLEAR).isEmpty();
        cab.gear("low");
        if (!manual) {
            person.pass(1);
            return;
        }
        cab.throttle(PULLS);
        person.pass(1);
        for (int travel = 79; travel >= GENTLE; travel--) {
            cab.clutch(travel);
            person.pass(0.3);
        }
    }

    /** Takes the engine off the wheels; the vehicle rolls on. */
    void disengage() {
        cab.clutch(CLEAR);
        cab.throttle(0);
        cab.gear("neutral");
        cab.clutch(0);
    }

    /** Waits until the vehicle stands, by the speedometer; true if it does in time. */
    boolean stands(double patience) {
        return person.await(() -> person.dash().metresPerSecond() == 0, patience);
    }

    private void stop(double from) {
        if (moved(from)) {
            cab.foot(50);
            stands(STOPS);
            cab.foot(0);
            person.pass(2);
        }
    }
}
