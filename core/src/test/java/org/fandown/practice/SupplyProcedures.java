package org.fandown.practice;

import java.util.List;
import java.util.Map;
import org.fandown.air.AirSetup.Defect;
import org.fandown.air.AirSystem;
import org.fandown.air.InCab;
import org.fandown.check.Check;

/**
 * Governor, build-up, air loss, reservoirs. Each limit stands with its source; see the {@code
 * where} words of the reference tests for the editions.
 */
final class SupplyProcedures {
    private static final double RPM = 1200;

    /** A gauge is read to a psi. */
    private static final double READ = 1;

    private SupplyProcedures() {}

    static void addTo(Map<Check, Procedure> all) {
        // about 120 to 140 psi: Georgia driver manual 11M.1.2; North Carolina driver manual, p. 149
        all.put(Check.GOVERNOR_CUT_OUT, t -> Outcome.within(t.cab().cutOut(), 120, 140, "psi"));
        // at least 100 psi: 49 CFR 571.121 S5.1.1.1; a Saskatchewan manual has the same
        all.put(Check.GOVERNOR_CUT_IN, SupplyProcedures::cutIn);
        all.put(Check.BUILD_UP, SupplyProcedures::buildUp);
        all.put(Check.AIR_LOSS_RELEASED, SupplyProcedures::released);
        all.put(Check.AIR_LOSS_APPLIED, SupplyProcedures::applied);
        all.put(Check.NO_AUDIBLE_LEAK, SupplyProcedures::quiet);
        all.put(Check.CHECK_VALVE, SupplyProcedures::checkValves);
        all.put(Check.RESERVOIR_DRAIN, SupplyProcedures::drains);
        all.put(Check.SAFETY_VALVE_OPENING, SupplyProcedures::safetyValve);
    }

    /**
     * 85 to 100 psi within 45 s: Georgia driver manual 2020, p. 52, which allows more for larger
     * reservoirs without a figure, so that it says nothing of a long combination.
     */
    private static Outcome buildUp(Trial trial) {
        return trial.units() > 2
                ? Outcome.NOTHING_TO_TRY
                : Outcome.within(trial.cab().buildUp(RPM), 0.1, 45, "s");
    }

    /** Braking down from 120 psi at idle, watching the needles all the time. */
    private static Outcome cutIn(Trial trial) {
        AirSystem system = trial.charged(120);
        Trial.run(system, 700);
        for (int i = 0; i < 3000 && system.compressorLoaded(); i++) {
            system.advance(0.1);
        }
        for (int i = 0; i < 1200 && !system.compressorLoaded(); i++) {
            Trial.foot(system, i % 20 < 10 ? 1 : 0);
            system.advance(0.1);
        }
        double high = Math.max(system.primaryNeedle().inPsi(), system.secondaryNeedle().inPsi());
        double shown = system.compressorLoaded() ? high : InCab.NEVER;
        return Outcome.within(shown, 100, 120, "psi");
    }

    /** 2 and 3 psi a minute: driver manuals as reprinted in Augusta; 5: California handbook. */
    private static Outcome released(Trial trial) {
        double most = trial.units() == 1 ? 2 : trial.units() == 2 ? 3 : 5;
        return Outcome.within(trial.cab().lossReleased(), -5, most, "psi");
    }

    /** 3 and 4 psi a minute: the same, and Ontario handbook; 6: California and Ontario. */
    private static Outcome applied(Trial trial) {
        double most = trial.units() == 1 ? 3 : trial.units() == 2 ? 4 : 6;
        return Outcome.within(trial.cab().lossApplied(), -5, most, "psi");
    }

    /** After the sneeze of the dryer, engine off: knobs in, pedal down, knobs out. */
    private static Outcome quiet(Trial trial) {
        AirSystem system = trial.charged(122);
        Trial.run(system, RPM);
        for (int i = 0; i < 600 && system.compressorLoaded(); i++) {
            system.advance(0.1);
        }
        Trial.run(system, 0);
        system.advance(30);
        List<String> heard = Trial.heard(system);
        return Outcome.yes(heard.isEmpty(), String.join(", ", heard));
    }

    /** The supply reservoir drained, both needles hold: 49 CFR 571.121 S5.1.2.3 (the valve). */
    private static Outcome checkValves(Trial trial) {
        AirSystem system = trial.charged(100);
        if (noDrain(system)) {
            return Outcome.NOTHING_TO_TRY;
        }
        Trial.drain(system, "supply");
        system.advance(60);
        double low = Math.min(Trial.psi(system, "primary"), Trial.psi(system, "secondary"));
        return Outcome.yes(low > 95, "a needle fell");
    }

    private static boolean noDrain(AirSystem system) {
        return system.outlets().stream().noneMatch(way -> way.name().equals("drain-supply"));
    }

    /** Air alone comes from each drain, and while one reservoir empties no other does. */
    private static Outcome drains(Trial trial) {
        List<String> names =
                trial.charged(100).outlets().stream()
                        .filter(way -> way.name().startsWith("drain-"))
                        .map(way -> way.volume())
                        .toList();
        for (String name : names) {
            if (trial.setup().water().containsKey(name)) {
                boolean oil = trial.setup().has(Defect.OIL_CARRIED_OVER);
                return new Outcome(false, (oil ? "oil at " : "water at ") + name);
            }
            AirSystem system = trial.charged(100);
            Trial.drain(system, name);
            system.advance(1);
            if (!Trial.heard(system).contains("drain-" + name)) {
                return new Outcome(false, "nothing comes out of " + name);
            }
            system.advance(40);
            String other = name.equals("primary") ? "secondary" : "primary";
            if (!name.endsWith(".reservoir") && Trial.psi(system, other) < 80) {
                return new Outcome(false, other + " empties with " + name);
            }
        }
        return Outcome.yes(true, "");
    }

    /**
     * In the workshop, with the governor held loaded: opens at 150 psi or less and above the
     * highest cut-out, 145 psi by the widest range found; California Vehicle Code 26503.
     */
    private static Outcome safetyValve(Trial trial) {
        Trial held = new Trial(trial.vehicle(), trial.setup().with(Defect.GOVERNOR_STUCK_LOADED));
        AirSystem system = held.charged(100);
        Trial.run(system, RPM);
        for (int i = 0; i < 18000; i++) {
            system.advance(0.05);
            if (Trial.heard(system).contains("safety-valve")) {
                return Outcome.within(Trial.psi(system, "supply"), 140, 150 + READ, "psi");
            }
            if (Trial.psi(system, "supply") > 200) {
                break;
            }
        }
        return Outcome.within(InCab.NEVER, 140, 150 + READ, "psi");
    }
}
