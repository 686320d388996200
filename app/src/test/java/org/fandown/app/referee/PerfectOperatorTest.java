package org.fandown.app.referee;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.util.EnumMap;
import java.util.Map;
import org.fandown.evidence.Report;
import org.fandown.operator.Operator;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.Run;
import org.fandown.practice.Scenario;
import org.fandown.procedure.Plan;
import org.fandown.procedure.PlanRequest;
import org.fandown.procedure.Planner;
import org.fandown.procedure.Scope;
import org.fandown.referee.Marks;
import org.fandown.rulebook.RulesInForce;
import org.fandown.vehicle.Vehicle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The planner, the operator and the referee share what the rules demand, and nothing else: an
 * operator without mistakes who keeps to the quickest order loses no point on a sound vehicle.
 */
class PerfectOperatorTest {
    private static final OffsetDateTime MOMENT = OffsetDateTime.parse("2026-11-24T12:00:00Z");

    @ParameterizedTest
    @CsvSource({
        "US, straight-truck",
        "CA-BC, straight-truck",
        "GB, straight-truck",
        "US, tractor-box-trailer",
        "CA-ON, tractor-box-trailer"
    })
    void loses_no_point_on_a_sound_vehicle(String place, String name) {
        Vehicle vehicle = Marked.vehicle(name);
        RulesInForce rules = Marked.rules(place, vehicle);
        Plan plan = Planner.plan(rules, Scope.ASKED, PlanRequest.QUICKEST).orElseThrow();
        PracticeTruck truck = PracticeTruck.of(Scenario.of(vehicle));
        Operator.perform(plan, truck, MOMENT, complete());

        Marks marks = Marked.mark(Run.of(truck, "perfect"), place);

        assertThat(marks.kept()).as(Marked.text(marks)).isEqualTo(marks.of());
        assertThat(marks.passed()).isTrue();
        assertThat(marks.replayed()).isTrue();
    }

    /** Papers are no part of a run on the practice truck. */
    private static Report complete() {
        Map<Report.Entry, String> entries = new EnumMap<>(Report.Entry.class);
        for (Report.Entry entry : Report.Entry.values()) {
            entries.put(entry, entry.isYesNo() ? "yes" : "12 345 km");
        }
        return new Report(entries);
    }
}
