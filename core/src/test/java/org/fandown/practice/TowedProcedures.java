package org.fandown.practice;

import java.util.Map;
import org.fandown.air.AirControls.Coupling;
import org.fandown.air.AirControls.Knob;
import org.fandown.air.AirSystem;
import org.fandown.air.InCab;
import org.fandown.check.Check;
import org.fandown.vehicle.WheelId;

/** Lines to towed units, tractor protection, brakes of towed units. */
final class TowedProcedures {
    private static final double OUT = 0.4;
    private static final double BACK = 0.05;

    /** How long a driver waits for a trailer to let go, s (assumption). */
    private static final double PATIENCE = 10;

    private TowedProcedures() {}

    static void addTo(Map<Check, Procedure> all) {
        put(all, Check.TRACTOR_PROTECTION, TowedProcedures::linesPart);
        put(all, Check.TRACTOR_PROTECTION_FITTED, TowedProcedures::controlLineShut);
        put(all, Check.TRAILER_BRAKES_APPLY, TowedProcedures::apply);
        put(all, Check.TRAILER_BRAKES_RELEASE, TowedProcedures::release);
        put(all, Check.TRAILER_SERVICE_BRAKES, TowedProcedures::service);
        put(all, Check.AIR_REACHES_TRAILERS, TowedProcedures::reaches);
        put(all, Check.SUPPLY_LINE_TIGHT, TowedProcedures::supplyLine);
    }

    private static void put(Map<Check, Procedure> all, Check check, Procedure procedure) {
        all.put(check, t -> t.tows() ? procedure.of(t) : Outcome.NOTHING_TO_TRY);
    }

    /** Both lines parted: the tractor keeps 20 psi or more; 49 CFR 393.43(b) (from memory). */
    private static Outcome linesPart(Trial trial) {
        AirSystem system = trial.charged(100);
        system.control(system.controls().withCoupling(1, Coupling.OPEN));
        system.advance(120);
        double high = Math.max(Trial.psi(system, "primary"), Trial.psi(system, "secondary"));
        return Outcome.within(high, 20, 100, "psi");
    }

    /** Trailer supply knob out, pedal down: no air at the control line. */
    private static Outcome controlLineShut(Trial trial) {
        AirSystem system = trial.charged(100);
        Trial.knobs(system, Knob.LEFT_ALONE, Knob.PULLED);
        system.advance(3);
        Trial.foot(system, 1);
        system.advance(2);
        boolean shut = Trial.psi(system, "control-line-1") < 1;
        return Outcome.yes(shut, "the pedal sends air to the control line");
    }

    /** Trailer supply knob out: its brakes are on within 3 s; 49 CFR 571.121 S5.6.3.2. */
    private static Outcome apply(Trial trial) {
        AirSystem system = trial.charged(100);
        system.control(system.controls().withTrailer(Knob.PULLED));
        return Outcome.within(seconds(trial, system, true), 0.05, 3, "s");
    }

    /** Knob in again: they are off after a while. */
    private static Outcome release(Trial trial) {
        AirSystem system = trial.charged(110);
        system.control(system.controls().withTrailer(Knob.PULLED));
        system.advance(60);
        system.control(system.controls().withTrailer(Knob.PUSHED));
        return Outcome.within(seconds(trial, system, false), 0.05, PATIENCE, "s");
    }

    private static double seconds(Trial trial, AirSystem system, boolean out) {
        double start = system.state().time();
        while (system.state().time() < start + 60) {
            system.advance(0.05);
            if (rods(trial, system, out)) {
                return system.state().time() - start;
            }
        }
        return InCab.NEVER;
    }

    private static boolean rods(Trial trial, AirSystem system, boolean out) {
        for (WheelId wheel : trial.wheels(system, false)) {
            double rod = Trial.rod(system, wheel);
            if (out ? rod < OUT : rod > BACK) {
                return false;
            }
        }
        return true;
    }

    /** Hand valve, then pedal: the rods of the towed units come out and go back. */
    private static Outcome service(Trial trial) {
        AirSystem system = trial.charged(100);
        system.advance(3);
        if (!rods(trial, system, false)) {
            return new Outcome(false, "a brake is on before");
        }
        Trial.hand(system, 0.6);
        system.advance(3);
        boolean hand = rods(trial, system, true);
        Trial.hand(system, 0);
        system.advance(4);
        boolean back = rods(trial, system, false);
        Trial.foot(system, 0.6);
        system.advance(3);
        boolean foot = rods(trial, system, true);
        String what = !hand ? "not with the hand valve" : !foot ? "not with the pedal" : "not off";
        return Outcome.yes(hand && back && foot, what);
    }

    /**
     * Built up from empty with all knobs in: each towed unit has air at its drain and at its
     * control line; Georgia driver manual 2020, p. 67.
     */
    private static Outcome reaches(Trial trial) {
        AirSystem system = AirSystem.of(trial.vehicle(), trial.setup());
        Trial.run(system, 1200);
        for (int i = 0; i < 900 && Trial.psi(system, "primary") < 90; i++) {
            system.advance(1);
        }
        Trial.knobs(system, Knob.PUSHED, Knob.PUSHED);
        system.advance(240);
        Trial.hand(system, 1);
        system.advance(3);
        for (int unit = 2; unit <= trial.units(); unit++) {
            if (Trial.psi(system, "unit" + unit + ".reservoir") < 60
                    || Trial.psi(system, "control-line-" + unit) < 60) {
                return new Outcome(false, "no air at unit " + unit);
            }
        }
        return Outcome.yes(true, "");
    }

    /** Supply line parted: soon no air blows from either end; a Saskatchewan manual. */
    private static Outcome supplyLine(Trial trial) {
        AirSystem system = trial.charged(100);
        system.control(system.controls().withCoupling(1, Coupling.SUPPLY_OPEN));
        system.advance(30);
        boolean quiet =
                Trial.heard(system).stream().noneMatch(name -> name.startsWith("open-supply"));
        return Outcome.yes(quiet, "air goes on blowing from the line");
    }
}
