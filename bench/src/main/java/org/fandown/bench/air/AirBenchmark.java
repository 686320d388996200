package org.fandown.bench.air;

import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.fandown.air.AirControls;
import org.fandown.air.AirSystem;
import org.fandown.air.StepControl;
import org.fandown.units.GaugePressure;
import org.fandown.units.TimeSpan;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The air system of a tractor and trailer through time; each in milliseconds for one run. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 3, jvmArgsAppend = "-XX:+UseSerialGC")
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@State(Scope.Benchmark)
@SuppressWarnings("NullAway.Init") // The harness calls prepare before anything else.
public class AirBenchmark {
    /** How much simulated time each benchmark goes through, s. */
    static final Map<String, Double> SIMULATED =
            Map.of(
                    "twelveMinutes", (double) InCab.SECONDS,
                    "liveStep", 0.005,
                    "rigByEngine", (double) RigScript.SECONDS,
                    "rigByDormandPrince", (double) RigScript.SECONDS);

    /** Steps of the engine for the rig, and tolerances of the solver, of equal error. */
    static final StepControl RIG_STEPS =
            new StepControl(
                    TimeSpan.ofSeconds(0.001), TimeSpan.ofSeconds(0.5), GaugePressure.ofPsi(0.5));

    static final double RIG_RELATIVE = 1e-4;
    static final double RIG_KILOGRAMS = 1e-7;

    private static final double LIVE = 0.005;
    private static final double PERIOD = 4;

    private InCab test;
    private AirSystem live;
    private AirControls released;
    private AirControls applied;
    private EngineRun engine;
    private DormandPrinceRun solver;

    /** Makes everything that runs, outside the time that is taken. */
    @Setup
    public void prepare() {
        test = new InCab(InCab.example("tractor-box-trailer"));
        live = test.start(StepControl.LIVE);
        live.fill(GaugePressure.ofPsi(100));
        released = live.controls();
        applied = released.withFoot(0.5);
        Rig rig = new Rig();
        engine = new EngineRun(rig);
        solver = new DormandPrinceRun(rig);
    }

    /** A whole test in the cab, from laying out the system to the last second. */
    @Benchmark
    public AirSystem twelveMinutes() {
        return test.run(AirSystem.QUICK);
    }

    /** One even step of 5 ms, brakes applied every other four seconds. */
    @Benchmark
    public AirSystem liveStep() {
        double time = live.state().time();
        long half = (long) Math.floor(time / PERIOD);
        AirControls now = half % 2 == 0 ? released : applied;
        if (live.controls().foot() != now.foot()) {
            live.control(now);
        }
        live.advance(LIVE);
        return live;
    }

    /** The rig of four minutes by the engine. */
    @Benchmark
    public double[][] rigByEngine() {
        return engine.run(RIG_STEPS);
    }

    /** The same by a general-purpose solver. */
    @Benchmark
    public double[][] rigByDormandPrince() {
        return solver.run(RIG_RELATIVE, RIG_KILOGRAMS);
    }
}
