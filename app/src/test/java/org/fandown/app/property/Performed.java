package org.fandown.app.property;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fandown.app.files.DocumentText;
import org.fandown.check.PlaceCode;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.Instruments;
import org.fandown.evidence.Report;
import org.fandown.judgement.Judge;
import org.fandown.judgement.Judgement;
import org.fandown.operator.Operator;
import org.fandown.operator.Performance;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.Scenario;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Durations;
import org.fandown.procedure.Plan;
import org.fandown.procedure.PlanRequest;
import org.fandown.procedure.Planner;
import org.fandown.procedure.Scope;
import org.fandown.procedure.StepSet;
import org.fandown.procedure.Steps;
import org.fandown.procedure.VehicleDurations;
import org.fandown.rulebook.RulesInForce;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;

/** Plans that the operator performed on practice trucks, and how they are judged. */
final class Performed {
    static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final OffsetDateTime MOMENT = OffsetDateTime.parse("2026-11-25T08:00:00-05:00");

    private Performed() {}

    /** The vehicles, by name: the examples, and two kinds more. */
    static Map<String, Vehicle> vehicles() {
        Map<String, Vehicle> all = new LinkedHashMap<>();
        Examples.VEHICLES.forEach((name, text) -> all.put(name, provable(text)));
        all.put("bobtail-tractor", provable(BOBTAIL));
        all.put("tractor-plain-file", provable(PLAIN));
        return all;
    }

    /**
     * A vehicle whose governor does not cut in exactly at the least figure of the rules: a needle
     * read to a psi cannot prove that.
     */
    static Vehicle provable(String text) {
        String above =
                text.replace("cut-in: 100 psi", "cut-in: 105 psi")
                        .replace("cut-in: 690 kPa", "cut-in: 720 kPa");
        return VehicleReader.read(DocumentText.yaml("vehicle.yaml", above));
    }

    static RulesInForce rules(PlaceCode place, Vehicle vehicle) {
        return Examples.rulebook(place).inForce(place, vehicle, DAY);
    }

    static StepSet steps(RulesInForce rules, Scope scope) {
        return Steps.of(rules, VehicleDurations.of(rules.vehicle()), scope);
    }

    static Plan plan(StepSet steps) {
        Durations durations = VehicleDurations.of(steps.rules().vehicle());
        return new Planner(steps, durations).plan(PlanRequest.QUICKEST).orElseThrow();
    }

    static Performance on(Plan plan, Scenario scenario) {
        return Operator.perform(plan, PracticeTruck.of(scenario));
    }

    /** Performs a plan to the end, where the operator says what follows. */
    static Performance concluded(Plan plan, PracticeTruck truck) {
        return Operator.perform(plan, truck, MOMENT, report());
    }

    /** Judges what was performed by the rules of a place that asks for the same steps. */
    static Judgement judged(RulesInForce rules, Performance performance) {
        Inspection inspection =
                new Inspection(
                        rules.place(),
                        MOMENT,
                        rules.vehicle(),
                        report(),
                        Instruments.USUAL,
                        false,
                        performance.observed().noted(),
                        List.of(),
                        true);
        return Judge.by(rules).judge(inspection);
    }

    private static Report report() {
        Map<Report.Entry, String> entries = new EnumMap<>(Report.Entry.class);
        for (Report.Entry entry : Report.Entry.values()) {
            entries.put(entry, entry.isYesNo() ? "yes" : "given");
        }
        return new Report(entries);
    }

    /** What tells the work of one place from that of another. */
    static String key(StepSet set) {
        StringBuilder key = new StringBuilder();
        for (CheckStep step : set.checks()) {
            key.append(step.checks()).append(step.change()).append(step.manner());
            step.needs().forEach(need -> key.append(need.aspect()).append(need.asked()));
        }
        return key.toString();
    }

    private static final String BOBTAIL =
            """
            name: Tractor 9 without trailer
            use: property
            units:
              - kind: tractor
                id: T9
                built: 2019-06-03
                supply: supply-reservoir
                governor: { cut-in: 105 psi, cut-out: 125 psi }
                abs: yes
                gross-mass: 18000 kg
                axles:
                  - { position: steer, brake: drum, chamber: clamp 20, spring-brake: no, adjuster: automatic, arm: 5.5 in }
                  - { position: drive, brake: drum, chamber: clamp 30, spring-brake: yes, adjuster: automatic, arm: 5.5 in }
                  - { position: drive, brake: drum, chamber: clamp 30, spring-brake: yes, adjuster: automatic, arm: 5.5 in }
            """;

    private static final String PLAIN =
            """
            name: Tractor 3 with flat trailer 8
            use: property
            units:
              - kind: tractor
                id: T3
                built: 2012-02-20
                abs: yes
                gross-mass: 16000 kg
                axles:
                  - { position: steer, brake: drum, chamber: clamp 24, spring-brake: no, adjuster: automatic, arm: 6 in }
                  - { position: drive, brake: drum, chamber: clamp 30, spring-brake: yes, adjuster: automatic, arm: 6 in }
              - kind: trailer
                id: F8
                built: 2014-09-11
                abs: yes
                gross-mass: 15000 kg
                axles:
                  - { brake: drum, chamber: clamp 30, spring-brake: yes, adjuster: automatic, arm: 5.5 in }
                  - { brake: drum, chamber: clamp 30, spring-brake: yes, adjuster: automatic, arm: 5.5 in }
            """;
}
