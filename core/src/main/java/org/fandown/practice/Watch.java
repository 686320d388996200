package org.fandown.practice;

import java.util.Optional;
import org.fandown.air.AirSystem;
import org.fandown.practice.PracticeEvent.Kind;
import org.fandown.units.Decimals;

/** Notices what the vehicle shows by itself, tick by tick, and what endangers somebody. */
final class Watch {
    /** Purge flow that is heard through the whole cab, kg/s. */
    private static final double PURGE_HEARD = 0.002;

    /** Way after which a vehicle has rolled away, m. */
    private static final double ROLLED = 0.3;

    private final PracticeTruck truck;
    private boolean purging;
    private boolean pumping;
    private boolean lamp;
    private boolean buzzer;
    private boolean stopLamps;
    private boolean running;
    private Optional<Boolean> parkingIn = Optional.empty();
    private Optional<Boolean> trailerIn = Optional.empty();
    private double stoodAt;
    private boolean rolled;

    Watch(PracticeTruck truck) {
        this.truck = truck;
    }

    void begin() {
        AirSystem air = truck.air();
        pumping = air.compressorLoaded();
        parkingIn = air.parkingKnobIn();
        trailerIn = air.trailerKnobIn();
    }

    boolean purging() {
        return purging;
    }

    void look() {
        AirSystem air = truck.air();
        boolean blows = air.purgeFlow() > PURGE_HEARD;
        if (blows && !purging) {
            sign("the dryer purges" + needles());
        }
        purging = blows;
        compressor(air);
        warnings();
        knobs(air);
        boolean lit = air.stopLamps();
        if (lit != stopLamps) {
            sign(lit ? "stop lamps on" : "stop lamps off");
        }
        stopLamps = lit;
        engine();
        movement();
    }

    private void compressor(AirSystem air) {
        boolean loaded = air.compressorLoaded();
        if (loaded && !pumping && truck.engineRuns()) {
            sign("the compressor pumps again" + needles());
        }
        pumping = loaded;
    }

    private void warnings() {
        boolean lit = truck.lamps().lowAir();
        if (lit != lamp) {
            sign((lit ? "low-air lamp on" : "low-air lamp off") + needles());
        }
        lamp = lit;
        boolean sounds = truck.lamps().buzzer();
        if (sounds != buzzer) {
            sign((sounds ? "low-air buzzer on" : "low-air buzzer off") + needles());
        }
        buzzer = sounds;
    }

    private void knobs(AirSystem air) {
        Optional<Boolean> parking = air.parkingKnobIn();
        if (!parking.equals(parkingIn)) {
            sign("parking knob " + (parking.orElse(false) ? "in" : "out") + needles());
        }
        parkingIn = parking;
        Optional<Boolean> trailer = air.trailerKnobIn();
        if (!trailer.equals(trailerIn)) {
            sign("trailer supply knob " + (trailer.orElse(false) ? "in" : "out") + needles());
        }
        trailerIn = trailer;
    }

    private void engine() {
        boolean runs = truck.engineRuns();
        if (runs && !running) {
            sign("the engine runs");
        } else if (!runs && running) {
            sign("the engine stops");
        }
        running = runs;
    }

    private void movement() {
        if (!truck.motion.moves()) {
            stoodAt = truck.motion.position();
            rolled = false;
            return;
        }
        if (rolled || Math.abs(truck.motion.position() - stoodAt) < ROLLED) {
            return;
        }
        rolled = true;
        if (truck.person.cabIsEmpty()) {
            truck.note(Kind.HAZARD, "the vehicle rolls away with nobody in the cab");
        } else if (!truck.person.inCab()) {
            truck.note(Kind.HAZARD, "the vehicle moves while somebody stands beside it");
        } else {
            sign("the vehicle moves");
        }
    }

    private void sign(String text) {
        truck.note(Kind.SIGN, text);
    }

    private String needles() {
        AirSystem air = truck.air();
        return " (primary "
                + Decimals.format(air.primaryNeedle().inPsi(), 0)
                + " psi, secondary "
                + Decimals.format(air.secondaryNeedle().inPsi(), 0)
                + " psi)";
    }
}
