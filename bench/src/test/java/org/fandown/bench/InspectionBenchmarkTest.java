package org.fandown.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collection;
import java.util.List;
import org.fandown.check.Check;
import org.fandown.check.Verdict;
import org.fandown.judgement.Judgement;
import org.fandown.judgement.Status;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

class InspectionBenchmarkTest {

    @ParameterizedTest
    @ValueSource(strings = {"CA-ON", "US"})
    void timed_inspection_leaves_out_nothing_a_rule_that_decides_asks_for(String place) {
        Subject subject = new Subject();
        subject.place = place;
        subject.prepare();

        Judgement judgement = subject.judge().judge(subject.inspection());

        assertThat(judgement.inspection().place().code()).isEqualTo(place);
        assertThat(judgement.verdict()).isEqualTo(Verdict.FIT_TO_MOVE);
        assertThat(judgement.findings())
                .filteredOn(f -> f.ruling().rule().check() == Check.PUSHROD_APPLIED_STROKE)
                .filteredOn(f -> f.status() == Status.MET)
                .hasSizeGreaterThanOrEqualTo(10);
    }

    @Test
    void every_benchmark_runs_and_stands_in_the_table() throws RunnerException {
        Collection<RunResult> results =
                new Runner(
                                new OptionsBuilder()
                                        .include(InspectionBenchmark.class.getName())
                                        .mode(Mode.SingleShotTime)
                                        .forks(0)
                                        .warmupIterations(0)
                                        .measurementIterations(1)
                                        .param("place", "CA-ON")
                                        .shouldFailOnError(true)
                                        .verbosity(VerboseMode.SILENT)
                                        .build())
                        .run();

        assertThat(new ResultTable(results).text())
                .contains(
                        List.of(
                                "CA-ON",
                                "readJson",
                                "readInspection",
                                "findRules",
                                "judge ",
                                "judgeWithReasons",
                                "judgeToJson",
                                "textToText ",
                                "textToTextWithRules"));
    }
}
