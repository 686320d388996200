package org.fandown.bench;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.InspectionReader;
import org.fandown.evidence.VehicleSource;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Judge;
import org.fandown.judgement.Judgement;
import org.fandown.record.JudgementDocument;
import org.fandown.record.MeasuredStrokes;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/** What happens to one inspection, alone and together; each in inspections per second. */
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 3, jvmArgsAppend = "-XX:+UseSerialGC")
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class InspectionBenchmark {
    private static final String FILE = "tractor-trailer.json";

    /** Reads the text of the inspection as JSON, into a tree. The yardstick of all others. */
    @Benchmark
    public Node readJson(Subject subject) {
        return Json.read(FILE, subject.json());
    }

    /** Reads the text into an inspection: tree, units, vehicle, everything checked. */
    @Benchmark
    public Inspection readInspection(Subject subject) {
        return inspection(subject);
    }

    /** Finds the rules in force for the place, the vehicle and the day. */
    @Benchmark
    public Judge findRules(Subject subject) {
        return subject.judgeFor(subject.inspection());
    }

    /** Judges an inspection that is in memory, by rules that were found before. */
    @Benchmark
    public Judgement judge(Subject subject) {
        return subject.judge().judge(subject.inspection());
    }

    /** Judges, and puts the reason and the advice of every finding into words. */
    @Benchmark
    public void judgeWithReasons(Subject subject, Blackhole hole) {
        Judgement judgement = subject.judge().judge(subject.inspection());
        for (Finding finding : judgement.findings()) {
            hole.consume(finding.why().reason());
            hole.consume(finding.why().advice());
        }
        hole.consume(judgement);
    }

    /** Judges, and writes the judgement as JSON. */
    @Benchmark
    public String judgeToJson(Subject subject) {
        Judgement judgement = subject.judge().judge(subject.inspection());
        return Json.write(JudgementDocument.of(judgement, Optional.empty()));
    }

    /** From text to text with rules found before, as for many days of one vehicle. */
    @Benchmark
    public String textToText(Subject subject) {
        return written(subject.judge(), inspection(subject));
    }

    /** From text to text with everything anew but the rule packs. */
    @Benchmark
    public String textToTextWithRules(Subject subject) {
        Inspection inspection = inspection(subject);
        return written(subject.judgeFor(inspection), inspection);
    }

    private static Inspection inspection(Subject subject) {
        return new InspectionReader(VehicleSource.NONE).read(Json.read(FILE, subject.json()));
    }

    /** The judgement with what the strokes mean for stopping, as the command line writes it. */
    private static String written(Judge judge, Inspection inspection) {
        Judgement judgement = judge.judge(inspection);
        return Json.write(JudgementDocument.of(judgement, MeasuredStrokes.estimate(inspection)));
    }
}
