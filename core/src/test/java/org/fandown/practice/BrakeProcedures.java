package org.fandown.practice;

import java.util.List;
import java.util.Map;
import org.fandown.air.AirControls.Knob;
import org.fandown.air.AirSystem;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.units.Length;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.Side;
import org.fandown.vehicle.WheelEnd;
import org.fandown.vehicle.WheelId;

/** Push rods, timings, parking brakes of a vehicle. */
final class BrakeProcedures {
    /** A rod that comes out less does not brake, in. */
    private static final double OUT = 0.4;

    /** A rod that stands out further than that is not back, in. */
    private static final double BACK = 0.05;

    private BrakeProcedures() {}

    static void addTo(Map<Check, Procedure> all) {
        all.put(Check.PUSHROD_APPLIED_STROKE, BrakeProcedures::appliedStroke);
        all.put(Check.PUSHROD_FREE_STROKE, BrakeProcedures::freeStroke);
        all.put(Check.CHAMBER_MATCH, BrakeProcedures::chamberMatch);
        all.put(Check.SERVICE_BRAKE_RESPONSE, BrakeProcedures::response);
        all.put(Check.APPLICATION_TIME, BrakeProcedures::applicationTime);
        all.put(Check.RELEASE_TIME, BrakeProcedures::releaseTime);
        all.put(Check.PARKING_BRAKE_RELEASE, BrakeProcedures::wheelsFree);
        all.put(Check.EXHAUST_VALVES, BrakeProcedures::exhausts);
        all.put(Check.EMERGENCY_CONTROL, BrakeProcedures::springsWithPedal);
        all.put(Check.SPRING_BRAKE_FEED, BrakeProcedures::springsHeldOff);
    }

    static void addPartsTo(Map<Component, Procedure> all) {
        all.put(Component.PARKING_BRAKE, BrakeProcedures::parkedRods);
        all.put(Component.SERVICE_BRAKES, BrakeProcedures::appliedRods);
        all.put(Component.AIR_SYSTEM, BrakeProcedures::governorHeard);
    }

    /** Reservoirs at 90 psi, full pedal; limits of 49 CFR 393.47(e)(1): 1 3/4 and 2 in. */
    private static Outcome appliedStroke(Trial trial) {
        AirSystem system = trial.charged(93);
        Trial.foot(system, 1);
        system.advance(3);
        for (WheelId wheel : system.wheels()) {
            double limit = chamber(trial, wheel).type().equals("30") ? 2 : 1.75;
            if (Trial.rod(system, wheel) > limit) {
                return Outcome.within(Trial.rod(system, wheel), 0, limit, "in at " + wheel);
            }
        }
        return Outcome.yes(true, "");
    }

    /**
     * By pry bar: at most 3/4 in by the British Columbia manual, pp. 202-203; at least 3/8 in, the
     * lower end of the usual range (from memory).
     */
    private static Outcome freeStroke(Trial trial) {
        AirSystem system = trial.charged(100);
        for (WheelId wheel : system.wheels()) {
            double free = system.freeStroke(wheel).map(Length::inInches).orElse(0.5);
            double moves = Math.max(0, free - Trial.rod(system, wheel));
            if (moves < 0.375 || moves > 0.75) {
                return Outcome.within(moves, 0.375, 0.75, "in at " + wheel);
            }
        }
        return Outcome.yes(true, "");
    }

    /** Both ends of an axle of one size: 49 CFR 393.47(b). */
    private static Outcome chamberMatch(Trial trial) {
        for (WheelId wheel : trial.charged(100).wheels()) {
            Chamber mate = chamber(trial, new WheelId(wheel.axle(), other(wheel.side())));
            if (!chamber(trial, wheel).sameSizeAs(mate)) {
                return new Outcome(false, "unequal at axle " + wheel.axle());
            }
        }
        return Outcome.yes(true, "");
    }

    private static Side other(Side side) {
        return side == Side.LEFT ? Side.RIGHT : Side.LEFT;
    }

    private static Chamber chamber(Trial trial, WheelId wheel) {
        WheelEnd end = trial.vehicle().axle(wheel.axle()).end(wheel.side());
        return trial.setup().wheel(wheel).chamber().or(end::chamber).orElseThrow();
    }

    /** Every rod of the powered unit comes out with the pedal and goes back. */
    private static Outcome response(Trial trial) {
        AirSystem system = trial.charged(100);
        List<WheelId> wheels = trial.wheels(system, true);
        Trial.foot(system, 0.6);
        system.advance(2);
        for (WheelId wheel : wheels) {
            if (Trial.rod(system, wheel) < OUT) {
                return new Outcome(false, "the rod at " + wheel + " stays in");
            }
        }
        Trial.foot(system, 0);
        system.advance(3);
        for (WheelId wheel : wheels) {
            if (Trial.rod(system, wheel) > BACK) {
                return new Outcome(false, "the rod at " + wheel + " stays out");
            }
        }
        return Outcome.yes(true, "");
    }

    /**
     * 60 psi in each chamber within 0.45 s, towed 0.60 s: 49 CFR 571.121 S5.3.3.1(a). Required of
     * each unit alone, so that it says nothing of a long combination.
     */
    private static Outcome applicationTime(Trial trial) {
        if (trial.units() > 2) {
            return Outcome.NOTHING_TO_TRY;
        }
        AirSystem system = trial.cab().chargedForTiming(100);
        Trial.foot(system, 1);
        return timed(trial, system, 60, true, 0.45, 0.60);
    }

    /** From 95 to 5 psi in each within 0.55 s, towed 1.20 s: 49 CFR 571.121 S5.3.4.1(a). */
    private static Outcome releaseTime(Trial trial) {
        if (trial.units() > 2) {
            return Outcome.NOTHING_TO_TRY;
        }
        AirSystem system = trial.cab().chargedForTiming(105);
        Trial.foot(system, 1);
        system.advance(3);
        Trial.foot(system, 0);
        return timed(trial, system, 5, false, 0.55, 1.20);
    }

    private static Outcome timed(
            Trial trial, AirSystem system, double psi, boolean rising, double own, double towed) {
        double start = system.state().time();
        for (boolean powered : new boolean[] {true, false}) {
            double limit = powered ? own : towed;
            system.advance(Math.max(0, start + limit - system.state().time()));
            for (WheelId wheel : trial.wheels(system, powered)) {
                double now = Trial.psi(system, wheel + ".service");
                if (rising ? now < psi : now > psi) {
                    return new Outcome(false, "late at " + wheel);
                }
            }
        }
        return Outcome.yes(true, "");
    }

    /** Parking brakes released at 100 psi: all rods are back and the wheels turn. */
    private static Outcome wheelsFree(Trial trial) {
        AirSystem system = trial.charged(100);
        system.advance(3);
        for (WheelId wheel : system.wheels()) {
            if (Trial.rod(system, wheel) > BACK) {
                return new Outcome(false, "the rod at " + wheel + " stays out");
            }
        }
        return Outcome.yes(true, "");
    }

    /** The pedal let up blows at its valves; parked, also at the valve of the spring brakes. */
    private static Outcome exhausts(Trial trial) {
        AirSystem system = trial.charged(100);
        if (!Trial.has(system, "rear-service")) {
            return Outcome.NOTHING_TO_TRY;
        }
        List<String> released = letUp(system);
        if (!released.contains("relay-rear-exhaust")
                || !released.contains("quick-release-front-exhaust")) {
            return new Outcome(false, "a valve does not vent");
        }
        Trial.knobs(system, Knob.PULLED, Knob.LEFT_ALONE);
        system.advance(5);
        boolean springs = letUp(system).contains("spring-relay-rear-exhaust");
        return Outcome.yes(springs, "the spring brake valve does not vent");
    }

    private static List<String> letUp(AirSystem system) {
        Trial.foot(system, 0.6);
        system.advance(2);
        Trial.foot(system, 0);
        system.advance(0.1);
        return Trial.heard(system);
    }

    /** Primary reservoir drained: the pedal lets the spring brakes on. */
    private static Outcome springsWithPedal(Trial trial) {
        AirSystem system = trial.charged(100);
        if (trial.tows() || system.trailerKnobIn().isPresent() || Trial.sprung(system).isEmpty()) {
            return Outcome.NOTHING_TO_TRY;
        }
        Trial.drain(system, "primary");
        system.advance(120);
        Trial.foot(system, 0.6);
        system.advance(3);
        return Outcome.yes(Trial.psi(system, "2L.spring") < 45, "the springs stay off");
    }

    /** Primary reservoir drained: the springs stay off with the air of the secondary one. */
    private static Outcome springsHeldOff(Trial trial) {
        AirSystem system = trial.charged(100);
        List<WheelId> sprung = Trial.sprung(system);
        if (sprung.isEmpty()) {
            return Outcome.NOTHING_TO_TRY;
        }
        Trial.drain(system, "primary");
        system.advance(60);
        boolean off = Trial.psi(system, sprung.get(0) + ".spring") > 60;
        return Outcome.yes(off, "the spring brakes come on");
    }

    /** Parked: the rods of all spring brakes of a kind come out about as far. */
    private static Outcome parkedRods(Trial trial) {
        AirSystem system = trial.charged(100);
        if (Trial.sprung(system).isEmpty()) {
            return Outcome.NOTHING_TO_TRY;
        }
        Trial.knobs(system, Knob.PULLED, Knob.PULLED);
        system.advance(5);
        return alike(system, Trial.sprung(system));
    }

    /** Braking: the two rods of each axle come out about as far. */
    private static Outcome appliedRods(Trial trial) {
        AirSystem system = trial.charged(100);
        Trial.foot(system, 0.6);
        system.advance(3);
        for (WheelId wheel : system.wheels()) {
            WheelId mate = new WheelId(wheel.axle(), other(wheel.side()));
            if (Trial.rod(system, wheel) < 0.7 * Trial.rod(system, mate)) {
                return new Outcome(false, "the rod at " + wheel + " lags behind its mate");
            }
        }
        return Outcome.yes(true, "");
    }

    private static Outcome alike(AirSystem system, List<WheelId> wheels) {
        double most = 0;
        for (WheelId wheel : wheels) {
            most = Math.max(most, Trial.rod(system, wheel));
        }
        for (WheelId wheel : wheels) {
            if (Trial.rod(system, wheel) < 0.7 * most) {
                return new Outcome(false, "the rod at " + wheel + " comes out less");
            }
        }
        return Outcome.yes(most > OUT, "no rod comes out");
    }

    /** The dryer sneezes when the pumping stops, which then stays off for a minute. */
    private static Outcome governorHeard(Trial trial) {
        AirSystem system = trial.charged(100);
        Trial.run(system, 1200);
        for (int i = 0; i < 3000 && system.compressorLoaded(); i++) {
            system.advance(0.1);
        }
        system.advance(0.3);
        if (!Trial.heard(system).contains("purge-valve") || system.compressorLoaded()) {
            return new Outcome(false, "no sneeze");
        }
        for (int i = 0; i < 600 && !system.compressorLoaded(); i++) {
            system.advance(0.1);
        }
        return Outcome.yes(!system.compressorLoaded(), "pumping starts again and again");
    }
}
