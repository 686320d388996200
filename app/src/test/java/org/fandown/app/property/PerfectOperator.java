package org.fandown.app.property;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.fandown.air.Fault;
import org.fandown.air.FaultCase;
import org.fandown.check.PlaceCode;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Judgement;
import org.fandown.judgement.Status;
import org.fandown.operator.Abnormal;
import org.fandown.operator.Performance;
import org.fandown.practice.FaultChecks;
import org.fandown.practice.Scenario;
import org.fandown.procedure.Plan;
import org.fandown.procedure.Scope;
import org.fandown.rulebook.RulesInForce;
import org.fandown.vehicle.Vehicle;

/** The thorough plan of a place for an example vehicle, as the perfect operator performs it. */
final class PerfectOperator {
    private static final Map<String, PerfectOperator> ALL = new TreeMap<>();

    private final RulesInForce rules;
    private final Plan plan;
    private final Result sound;

    private PerfectOperator(String name, PlaceCode place) {
        Vehicle vehicle = Performed.provable(Examples.VEHICLES.get(name));
        rules = Performed.rules(place, vehicle);
        plan = Performed.plan(Performed.steps(rules, Scope.THOROUGH));
        sound = perform(Scenario.of(vehicle));
    }

    /** Plans and performs once for all tests. */
    static synchronized PerfectOperator with(String vehicle, String place) {
        return ALL.computeIfAbsent(
                vehicle + " in " + place,
                key -> new PerfectOperator(vehicle, new PlaceCode(place)));
    }

    /**
     * A performance and what the judge says of it.
     *
     * @param performance what was done and noticed
     * @param judgement the judge's findings on the inspection
     */
    record Result(Performance performance, Judgement judgement) {
        /** The deciding rules that are not met. */
        Set<String> notMet() {
            Set<String> ids = new TreeSet<>();
            for (Finding finding : judgement.findings()) {
                if (finding.decides() && finding.status() == Status.NOT_MET) {
                    ids.add(finding.ruling().rule().id() + " " + finding.wheel());
                }
            }
            return ids;
        }
    }

    Vehicle vehicle() {
        return rules.vehicle();
    }

    /** The performance on the sound vehicle. */
    Result sound() {
        return sound;
    }

    Result on(FaultCase fault) {
        return perform(Scenario.of(vehicle()).with(fault));
    }

    private Result perform(Scenario scenario) {
        Performance performance = Performed.on(plan, scenario);
        return new Result(performance, Performed.judged(rules, performance));
    }

    /**
     * Whether a fault was found: a rule that the sound vehicle meets is not met, or something
     * abnormal was named under a check or a part that is meant to find the fault.
     */
    boolean finds(Fault fault, Result result) {
        Set<String> more = result.notMet();
        more.removeAll(sound.notMet());
        return !more.isEmpty()
                || result.performance().abnormal().stream().anyMatch(it -> isMeant(fault, it));
    }

    private static boolean isMeant(Fault fault, Abnormal named) {
        return named.check().map(FaultChecks.checks(fault)::contains).orElse(false)
                || named.part().map(FaultChecks.parts(fault)::contains).orElse(false);
    }
}
