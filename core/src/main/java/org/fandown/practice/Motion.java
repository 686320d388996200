package org.fandown.practice;

import java.util.Set;
import java.util.TreeSet;
import org.fandown.units.Fingerprint;
import org.fandown.vehicle.WheelId;

/**
 * How the vehicle moves along the road: driven by engine and grade, held by brakes and chocks.
 *
 * <p>A vehicle that stands stays there until what pushes it is more than all that can hold it. One
 * that rolls is slowed by all of that, but for the chocks, which it has then run over.
 */
final class Motion {
    private static final double GRAVITY = 9.80665;

    private final VehicleWeight weight;
    private final WheelForces brakes;
    private final double gradeForce;
    private final double rollingForce;
    private final Set<WheelId> chocked = new TreeSet<>();
    private double speed;
    private double position;

    Motion(VehicleWeight weight, WheelForces brakes, double grade) {
        this.weight = weight;
        this.brakes = brakes;
        double newtons = weight.kilograms() * GRAVITY;
        double slope = Math.sqrt(1 + grade * grade);
        gradeForce = -newtons * grade / slope;
        rollingForce = PracticeDefault.ROLLING.number() * newtons / slope;
    }

    /** Speed forwards, m/s. */
    double speed() {
        return speed;
    }

    /** Way from the start forwards, m. */
    double position() {
        return position;
    }

    Set<WheelId> chocked() {
        return chocked;
    }

    boolean moves() {
        return speed != 0;
    }

    /** Whether nothing but its own resistance would hold it on this grade. */
    boolean wouldRoll() {
        return Math.abs(gradeForce) > rollingForce;
    }

    /**
     * Lets time pass.
     *
     * @param h how much, s
     * @param drive force of the engine forwards, N
     * @param drag what the stopped engine holds, N
     */
    void advance(double h, double drive, double drag) {
        double push = drive + gradeForce;
        if (speed == 0 && Math.abs(push) <= rollingForce) {
            return;
        }
        double hold = brakes.newtons() + rollingForce + drag;
        if (speed == 0 && Math.abs(push) <= hold + chocks()) {
            return;
        }
        roll(h, push, hold);
    }

    private void roll(double h, double push, double hold) {
        if (speed == 0) {
            chocked.clear();
        }
        double direction = (speed != 0 ? speed : push) > 0 ? 1 : -1;
        double next = speed + h * (push - direction * hold) / weight.kilograms();
        if (next * direction <= 0) {
            next = 0;
        }
        position += h * (speed + next) / 2;
        speed = next;
    }

    /** What chocks hold, N. */
    private double chocks() {
        double sum = 0;
        for (WheelId wheel : chocked) {
            sum += PracticeDefault.CHOCK.number() * weight.onWheel(wheel) * GRAVITY;
        }
        return sum;
    }

    void addTo(Fingerprint print) {
        print.add(speed);
        print.add(position);
        print.add((long) chocked.size());
    }
}
