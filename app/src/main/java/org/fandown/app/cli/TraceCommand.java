package org.fandown.app.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fandown.app.files.DigestReader;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.files.LogFiles;
import org.fandown.app.files.WholeFile;
import org.fandown.check.Check;
import org.fandown.check.PlaceCode;
import org.fandown.document.Json;
import org.fandown.document.MapNode;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.Instruments;
import org.fandown.evidence.Observations;
import org.fandown.evidence.Report;
import org.fandown.judgement.Judge;
import org.fandown.judgement.Judgement;
import org.fandown.judgement.LossDemand;
import org.fandown.judgement.Status;
import org.fandown.plot.SvgText;
import org.fandown.rulebook.RulesInForce;
import org.fandown.trace.CandumpReader;
import org.fandown.trace.LogReader;
import org.fandown.trace.NetworkTrace;
import org.fandown.trace.TraceLog;
import org.fandown.trace.TraceReadings;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb {@code trace}: what a recorded trace shows, and what the rules say of it. */
@Command(
        name = "trace",
        mixinStandardHelpOptions = true,
        description = {
            "Recognises in a recorded log which air tests were done, and measures them.",
            "With --place and --vehicle, judges what was found by the rules of the place."
        },
        footer = {
            "",
            "Exit codes: 0 done, or fit to move; 1 not fit to move, 3 not proven, 2 bad usage or"
                    + " bad input.",
            "An example: fandown trace examples/traces/cold-start.csv",
            "While it is recorded: candump -L can0 | fandown trace - --follow"
        })
final class TraceCommand implements Callable<Integer> {
    private static final NetworkTrace.SampleSink NOTHING = (channel, seconds, value) -> {};

    @Spec private CommandSpec spec;
    @Mixin private PackOptions packOptions;
    @Mixin private LiveOptions live;

    @Parameters(
            paramLabel = "LOG",
            description = "a candump log of the vehicle network, or CSV; - for standard input")
    private String name;

    @Option(names = "--place", paramLabel = "CODE", description = "ISO 3166 code such as CA-BC")
    private @Nullable String place;

    @Option(
            names = "--vehicle",
            paramLabel = "FILE",
            description = "the vehicle file (YAML or JSON)")
    private @Nullable Path vehicle;

    @Option(
            names = "--moment",
            paramLabel = "MOMENT",
            description =
                    "when the tests were done, such as 2026-11-25T06:40:00-05:00; default now")
    private @Nullable String moment;

    @Option(
            names = "--delta-times",
            description = "the times of the candump log are those since the line before")
    private boolean deltaTimes;

    @Option(
            names = "--as-printed",
            description =
                    "declare that each test was made as the rules print it, where the log does not"
                            + " tell")
    private boolean asPrinted;

    @Option(
            names = "--plot",
            paramLabel = "OUT.svg",
            description = "draw both circuits and what was recognised as SVG")
    private @Nullable Path plot;

    @Option(
            names = "--report",
            paramLabel = "OUT.pdf",
            description = "write the report to sign as PDF too, with the trace drawn in it")
    private @Nullable Path report;

    @Option(names = "--json", description = "write what was found as JSON")
    private boolean json;

    private TraceCommand() {}

    @Override
    public Integer call() {
        Optional<Case> asked = asked();
        TracePictures pictures = new TracePictures();
        TraceTests tests = new TraceTests(asked.map(a -> a.limits()).orElse(List.of()));
        TraceLog log = new TraceLog(name, times(), isDrawn() ? pictures::sample : NOTHING);
        String sha256 = read(log, pictures, asked, tests);
        if (plot != null) {
            String svg = SvgText.of(TraceSheet.of(log, name, pictures));
            WholeFile.write("plot", plot, svg.getBytes(StandardCharsets.UTF_8));
        }
        TraceReadings readings = TraceReadings.of(log.recognised());
        Optional<Judgement> judgement = asked.map(a -> a.judge(log, readings));
        List<Check> missing = judgement.map(j -> missing(j, readings)).orElse(List.of());
        if (report != null && judgement.isPresent()) {
            new TraceReport(name, log, pictures, readings, judgement.get())
                    .write(sha256, missing, tests.ended(), report);
        }
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            MapNode document =
                    TraceJson.of(log, name, known(sha256), judgement, missing, tests.ended());
            out.println(live.follow() ? TraceJson.line(document) : Json.write(document));
            out.flush();
        } else {
            Screen screen = new Screen(out);
            TraceText text = new TraceText(log, screen);
            if (live.follow()) {
                screen.line("");
            }
            text.print(name);
            text.tests(tests.ended());
            text.missing(missing);
            judgement.ifPresent(judged -> judged(judged, screen));
            screen.done();
        }
        return judgement.map(j -> ExitCode.of(j.verdict())).orElse(ExitCode.DONE);
    }

    private static void judged(Judgement judgement, Screen screen) {
        screen.line("");
        new JudgementText(judgement, Optional.empty(), false, screen).print();
    }

    private boolean isDrawn() {
        return plot != null || report != null;
    }

    private CandumpReader.Times times() {
        return deltaTimes ? CandumpReader.Times.SINCE_LAST : CandumpReader.Times.AS_WRITTEN;
    }

    /** Reads the log; returns its SHA-256, empty if nobody asks for it. */
    private String read(
            TraceLog log, TracePictures pictures, Optional<Case> asked, TraceTests tests) {
        if (isDrawn()) {
            log.onRecognised(pictures::recognised);
        }
        if (live.vin()) {
            log.readVin();
        }
        log.mark(live.marks(spec.commandLine(), name));
        log.advise(tests.advisor());
        DigestReader digest = new DigestReader(log);
        LogReader reader = report == null ? log : digest;
        if (live.follow()) {
            LiveVoice voice = new LiveVoice(spec.commandLine().getOut(), json);
            LiveRun run = new LiveRun(name, log, asked.map(a -> r -> a.judge(log, r)), voice);
            tests.listen(run::advice);
            run.follow(reader, live.quietFor(spec.commandLine()), live.marksTyped());
        } else {
            LogFiles.read(name, reader);
        }
        pictures.finish();
        log.requirePressure();
        return report == null ? "" : digest.sha256();
    }

    private static Optional<String> known(String sha256) {
        return Optional.of(sha256).filter(text -> !text.isEmpty());
    }

    /** Whose rules, and for what and when. */
    private record Case(
            PlaceCode place,
            Vehicle vehicle,
            OffsetDateTime moment,
            boolean asPrinted,
            RulesInForce rules) {
        Judgement judge(TraceLog log, TraceReadings readings) {
            return Judge.by(rules)
                    .judge(inspection(log.instruments(), readings, log.isSimulated()));
        }

        List<LossDemand> limits() {
            return LossDemand.of(
                    rules, inspection(Instruments.USUAL, TraceReadings.of(List.of()), false));
        }

        private Inspection inspection(
                Instruments instruments, TraceReadings readings, boolean simulated) {
            return new Inspection(
                    place,
                    moment,
                    vehicle,
                    new Report(Map.of()),
                    instruments,
                    asPrinted,
                    Observations.of(readings.readings()),
                    List.of(),
                    simulated);
        }
    }

    /** Read before the log, so that a slip there shows at once. */
    private Optional<Case> asked() {
        live.quietFor(spec.commandLine());
        if (place == null && vehicle == null) {
            if (moment != null || asPrinted || report != null) {
                throw bad("--moment, --as-printed and --report go with --place and --vehicle.");
            }
            return Optional.empty();
        }
        if (place == null || vehicle == null) {
            throw bad("Judging needs both --place CODE and --vehicle FILE; or leave both away.");
        }
        PlaceCode code = PackOptions.place(place, spec.commandLine());
        Vehicle what = VehicleReader.read(DocumentFiles.read(vehicle));
        OffsetDateTime when = moment();
        RulesInForce rules =
                packOptions
                        .rulebook(packOptions.packs(), code, spec.commandLine())
                        .inForce(code, what, when.toLocalDate());
        return Optional.of(new Case(code, what, when, asPrinted, rules));
    }

    private OffsetDateTime moment() {
        if (moment == null) {
            return OffsetDateTime.now(ZoneId.systemDefault()).withNano(0);
        }
        try {
            return OffsetDateTime.parse(moment);
        } catch (DateTimeParseException e) {
            throw new ParameterException(
                    spec.commandLine(),
                    "'" + moment + "' is not a moment. Write it as 2026-11-25T06:40:00-05:00.",
                    e);
        }
    }

    /** Checks of the place that a trace can hold, and this one does not. */
    static List<Check> missing(Judgement judgement, TraceReadings readings) {
        return TraceReadings.possible().stream()
                .filter(check -> !readings.readings().containsKey(check))
                .filter(
                        check ->
                                judgement.findings().stream()
                                        .anyMatch(
                                                f ->
                                                        f.ruling().rule().check() == check
                                                                && f.decides()
                                                                && f.status()
                                                                        == Status.NOT_CHECKED))
                .toList();
    }

    private ParameterException bad(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
