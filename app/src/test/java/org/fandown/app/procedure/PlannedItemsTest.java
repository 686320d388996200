package org.fandown.app.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.files.RulePacks;
import org.fandown.check.PlaceCode;
import org.fandown.procedure.Durations;
import org.fandown.procedure.PlanRequest;
import org.fandown.procedure.Planner;
import org.fandown.procedure.Problem;
import org.fandown.procedure.Scope;
import org.fandown.procedure.Step;
import org.fandown.procedure.Steps;
import org.fandown.procedure.VehicleDurations;
import org.fandown.procedure.Work;
import org.fandown.procedure.WorkStep;
import org.fandown.rulebook.RulesInForce;
import org.fandown.vehicle.VehicleReader;
import org.junit.jupiter.api.Test;

/** More work than the search can tell apart is refused. */
class PlannedItemsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private static Planner planner() {
        PlaceCode place = new PlaceCode("CA-SK");
        Path file = Path.of("../examples/vehicles/tractor-box-trailer.yaml");
        RulesInForce rules =
                RulePacks.builtIn()
                        .rulebookFor(place)
                        .orElseThrow()
                        .inForce(place, VehicleReader.read(DocumentFiles.read(file)), DAY);
        Durations durations = VehicleDurations.of(rules.vehicle());
        return new Planner(Steps.of(rules, durations, Scope.ASKED), durations);
    }

    private static PlanRequest following(int works) {
        Step wait = new WorkStep(Work.WAIT, 1, List.of());
        List<Step> steps = Collections.nCopies(works, wait);
        return new PlanRequest(0, PlanRequest.Goal.QUICKEST, steps, false);
    }

    @Test
    void checks_and_followed_work_are_counted_together() {
        Planner planner = planner();
        int checks = planner.problem(following(0)).checks().size();
        int room = Problem.MOST_ITEMS - checks;

        assertThat(planner.problem(following(room)).items()).hasSize(Problem.MOST_ITEMS);
        assertThatThrownBy(() -> planner.problem(following(room + 1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(checks + " checks and " + (room + 1) + " pieces of work");
    }
}
