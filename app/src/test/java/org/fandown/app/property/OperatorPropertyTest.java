package org.fandown.app.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.fandown.check.PlaceCode;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Judgement;
import org.fandown.judgement.Status;
import org.fandown.operator.Performance;
import org.fandown.practice.PracticeEvent;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.Run;
import org.fandown.practice.Scenario;
import org.fandown.procedure.Scope;
import org.fandown.procedure.StepSet;
import org.fandown.rulebook.RulesInForce;
import org.fandown.vehicle.Vehicle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A sound truck, inspected by the perfect operator as the place asks, is fit to move there. Each
 * vehicle goes to two places; with the system property {@code fandown.everywhere} set to {@code
 * true} to all of them, which takes minutes; {@code fandown.vehicles} names those to try alone.
 */
class OperatorPropertyTest {
    private static final boolean EVERYWHERE = Boolean.getBoolean("fandown.everywhere");
    private static final String ONLY = System.getProperty("fandown.vehicles", "");
    private static final Map<String, Vehicle> VEHICLES = Performed.vehicles();
    private static final List<String> TOUR =
            List.of(
                    "CA", "US-GA", "GB", "CA-QC", "US-CA", "AU-WA", "CA-BC", "US", "NZ", "CA-YT",
                    "US-NC", "CA-NB");

    /** A rule that a sound truck of ours does not meet there, and why. */
    private record Known(String vehicle, String rule, String why) {}

    private static final List<Known> KNOWN =
            List.of(
                    new Known(
                            "straight-truck",
                            "ca-nl.governor-cut-out",
                            "its governor is set to 130 psi, the place allows 125 psi"),
                    new Known(
                            "motor-coach-disc",
                            "ca-nl.governor-cut-out",
                            "its governor is set to 135 psi, the place allows 125 psi"),
                    new Known(
                            "motor-coach-disc",
                            "us-ca.governor-cut-out.handbook",
                            "its governor is set to 135 psi, the place allows less than 130 psi"),
                    new Known(
                            "gravel-truck-manual-adjusters",
                            "us.chamber-match.law",
                            "its file has unequal chambers on axle 2"),
                    new Known(
                            "truck-full-trailer",
                            "us.build-up.dual",
                            "its large reservoirs take 45 s, which a needle cannot tell from more"),
                    new Known(
                            "truck-full-trailer",
                            "us.governor-cut-in.truck",
                            "its governor cuts in at 102 psi, ours where the file says nothing; read to a psi"
                                    + " after an application, that cannot prove 100 psi"),
                    new Known(
                            "tractor-plain-file",
                            "us.governor-cut-in.truck",
                            "its governor cuts in at 102 psi, ours where the file says nothing; read to a psi"
                                    + " after an application, that cannot prove 100 psi"));

    static Stream<String> vehicles() {
        return VEHICLES.keySet().stream().filter(name -> ONLY.isEmpty() || ONLY.contains(name));
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void a_sound_truck_is_fit_to_move_where_it_is_inspected(String name) {
        Vehicle vehicle = VEHICLES.get(name);
        Map<String, Performance> performed = new TreeMap<>();
        List<String> open = new ArrayList<>();
        for (PlaceCode place : places(name)) {
            RulesInForce rules = Performed.rules(place, vehicle);
            StepSet steps = Performed.steps(rules, Scope.ASKED);
            Performance performance =
                    performed.computeIfAbsent(
                            Performed.key(steps),
                            key -> Performed.on(Performed.plan(steps), Scenario.of(vehicle)));
            performance.notDone().forEach(it -> open.add(place + ", not done: " + it));
            performance.abnormal().forEach(it -> open.add(place + ", abnormal: " + it));
            open(name, Performed.judged(rules, performance), open);
        }
        assertThat(open).as(name).isEmpty();
    }

    private static List<PlaceCode> places(String vehicle) {
        if (EVERYWHERE) {
            return Examples.PLACES;
        }
        int at = new ArrayList<>(VEHICLES.keySet()).indexOf(vehicle);
        return List.of(
                new PlaceCode(TOUR.get(at)), new PlaceCode(TOUR.get((at + 5) % TOUR.size())));
    }

    private static void open(String vehicle, Judgement judgement, List<String> open) {
        for (Finding finding : judgement.findings()) {
            boolean known =
                    KNOWN.stream()
                            .anyMatch(
                                    k ->
                                            k.vehicle().equals(vehicle)
                                                    && k.rule().equals(id(finding)));
            if (finding.decides() && finding.status() != Status.MET && !known) {
                open.add(
                        judgement.inspection().place()
                                + ", "
                                + finding.status()
                                + ": "
                                + id(finding)
                                + finding.wheel().map(wheel -> " at " + wheel).orElse("")
                                + ": "
                                + finding.why().reason());
            }
        }
    }

    private static String id(Finding finding) {
        return finding.ruling().rule().id();
    }

    @Test
    void a_performance_endangers_nobody_and_replays_to_the_same_bits() {
        Vehicle vehicle = VEHICLES.get("tractor-box-trailer");
        RulesInForce rules = Performed.rules(new PlaceCode("US-GA"), vehicle);
        PracticeTruck truck = PracticeTruck.of(Scenario.of(vehicle));
        Performed.concluded(Performed.plan(Performed.steps(rules, Scope.ASKED)), truck);

        assertThat(truck.events())
                .noneMatch(event -> event.kind() == PracticeEvent.Kind.HAZARD)
                .anyMatch(event -> event.text().equals("conclude: fit to move; no defect"));
        assertThat(Run.of(truck, "").replay().fingerprint()).isEqualTo(truck.fingerprint());
    }
}
