package org.fandown.bench.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.TimeUnit;
import org.fandown.app.files.DocumentText;
import org.fandown.app.files.RulePacks;
import org.fandown.check.PlaceCode;
import org.fandown.procedure.Durations;
import org.fandown.procedure.Examination;
import org.fandown.procedure.Order;
import org.fandown.procedure.OrderExaminer;
import org.fandown.procedure.Plan;
import org.fandown.procedure.PlanRequest;
import org.fandown.procedure.PlannedStep;
import org.fandown.procedure.Planner;
import org.fandown.procedure.StepSet;
import org.fandown.procedure.Steps;
import org.fandown.procedure.VehicleDurations;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The quickest order of work for a tractor with a box trailer; each in plans per second. */
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 3, jvmArgsAppend = "-XX:+UseSerialGC")
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 4, time = 2)
@State(Scope.Benchmark)
@SuppressWarnings("NullAway.Init") // The harness calls prepare before anything else.
public class PlanBenchmark {
    private static final Path VEHICLE = Path.of("examples/vehicles/tractor-box-trailer.yaml");
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    /** Whose rules hold: twelve checks, fifteen, thirty, and the longest binding order. */
    @Param({"CA-ON", "CA-SK", "NZ", "US-GA"})
    public String rulesOf;

    /** Which checks are taken in. */
    @Param({"ASKED", "THOROUGH"})
    public org.fandown.procedure.Scope checks;

    private Planner planner;
    private OrderExaminer examiner;
    private Order order;

    /** Finds the checks, and the plan that is examined, outside the time that is taken. */
    @Setup
    public void prepare() throws IOException {
        Vehicle vehicle =
                VehicleReader.read(
                        DocumentText.yaml(VEHICLE.toString(), Files.readString(VEHICLE)));
        PlaceCode code = new PlaceCode(rulesOf);
        Durations durations = VehicleDurations.of(vehicle);
        StepSet set =
                Steps.of(
                        RulePacks.builtIn()
                                .rulebookFor(code)
                                .orElseThrow()
                                .inForce(code, vehicle, DAY),
                        durations,
                        checks);
        planner = new Planner(set, durations);
        examiner = new OrderExaminer(set, durations);
        order = new Order("the plan", 0, plan().steps().stream().map(PlannedStep::step).toList());
    }

    /** Finds the quickest order. */
    @Benchmark
    public Plan plan() {
        return planner.plan(PlanRequest.QUICKEST).orElseThrow();
    }

    /** Examines that order: the yardstick. */
    @Benchmark
    public Examination examine() {
        return examiner.examine(order);
    }
}
