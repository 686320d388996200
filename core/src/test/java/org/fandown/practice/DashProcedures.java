package org.fandown.practice;

import java.util.Map;
import org.fandown.air.AirSetup.Defect;
import org.fandown.air.AirSystem;
import org.fandown.air.InCab;
import org.fandown.check.Check;

/** Warnings, knobs, gauges and lamps. */
final class DashProcedures {
    private DashProcedures() {}

    static void addTo(Map<Check, Procedure> all) {
        // before 60 psi: 49 CFR 571.121 S5.1.5; at most 75 psi: California driver handbook
        all.put(Check.LOW_AIR_WARNING, t -> Outcome.within(warns(t), 60, 75, "psi"));
        all.put(Check.LOW_AIR_WARNING_WORKS, DashProcedures::warningWorks);
        // 20 to 45 psi: Georgia driver manual 2020, p. 52; Newfoundland and Labrador manual
        all.put(Check.PARKING_VALVE_CLOSING, DashProcedures::parkingPop);
        all.put(Check.TRAILER_SUPPLY_CLOSING, DashProcedures::trailerPop);
        all.put(Check.GAUGE_ERROR, DashProcedures::gaugeError);
        all.put(Check.GAUGE_WORKS, DashProcedures::gaugeWorks);
        all.put(Check.STOP_LAMPS, DashProcedures::stopLamps);
        all.put(Check.ABS_LAMP, t -> lamp(t, Defect.ABS_LAMP_DEAD, Defect.ABS_LAMP_STAYS_ON));
        all.put(
                Check.TRAILER_ABS_LAMP,
                t -> lamp(t, Defect.TRAILER_ABS_LAMP_DEAD, Defect.TRAILER_ABS_LAMP_STAYS_ON));
    }

    /** Either of lamp and buzzer, as the first is what a driver notices. */
    private static double warns(Trial trial) {
        double lamp = trial.cab().lowAirLamp();
        return lamp == InCab.NEVER ? trial.cab().lowAirBuzzer() : lamp;
    }

    /** In an empty system with the key on: lamp and buzzer; 49 CFR 571.121 S5.1.5. */
    private static Outcome warningWorks(Trial trial) {
        AirSystem system = AirSystem.of(trial.vehicle(), trial.setup());
        system.advance(0.1);
        String which = system.lowAirLamp() ? "no buzzer" : "no lamp";
        return Outcome.yes(system.lowAirLamp() && system.lowAirBuzzer(), which);
    }

    private static Outcome parkingPop(Trial trial) {
        return trial.charged(100).parkingKnobIn().isEmpty()
                ? Outcome.NOTHING_TO_TRY
                : Outcome.within(trial.cab().parkingPop(), 20, 45, "psi");
    }

    private static Outcome trailerPop(Trial trial) {
        return trial.charged(100).trailerKnobIn().isEmpty()
                ? Outcome.NOTHING_TO_TRY
                : Outcome.within(trial.cab().trailerPop(), 20, 45, "psi");
    }

    /** Within 7 percent of the cut-out, here 125 psi: 49 CFR 571.121 S5.1.4. */
    private static Outcome gaugeError(Trial trial) {
        AirSystem system = trial.charged(100);
        system.advance(10);
        double primary = system.primaryNeedle().inPsi() - Trial.psi(system, "primary");
        double secondary = system.secondaryNeedle().inPsi() - Trial.psi(system, "secondary");
        double worst = Math.max(Math.abs(primary), Math.abs(secondary));
        return Outcome.within(worst, 0, 0.07 * 125, "psi");
    }

    /** Both needles follow when air is let out. */
    private static Outcome gaugeWorks(Trial trial) {
        AirSystem system = trial.charged(100);
        double primary = system.primaryNeedle().inPsi();
        double secondary = system.secondaryNeedle().inPsi();
        for (int i = 0; i < 8; i++) {
            Trial.foot(system, 1);
            system.advance(1);
            Trial.foot(system, 0);
            system.advance(1);
        }
        boolean both =
                primary - system.primaryNeedle().inPsi() > 5
                        && secondary - system.secondaryNeedle().inPsi() > 5;
        return Outcome.yes(both, "a needle stands still");
    }

    private static Outcome stopLamps(Trial trial) {
        AirSystem system = trial.charged(100);
        boolean before = system.stopLamps();
        Trial.foot(system, 0.4);
        system.advance(1);
        boolean braking = system.stopLamps();
        Trial.foot(system, 0);
        system.advance(2);
        return Outcome.yes(!before && braking && !system.stopLamps(), "not with the pedal");
    }

    private static Outcome lamp(Trial trial, Defect dead, Defect staysOn) {
        if (trial.setup().has(dead)) {
            return new Outcome(false, "does not light");
        }
        return Outcome.yes(!trial.setup().has(staysOn), "stays on");
    }
}
