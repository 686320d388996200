package org.fandown.contract.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.files.RulePacks;
import org.fandown.app.store.Role;
import org.fandown.browser.RunningSite;
import org.fandown.check.PlaceCode;
import org.fandown.contract.people.PeopleSite;
import org.fandown.contract.people.Person;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.document.Tree;
import org.fandown.practice.OperatorAction;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.Run;
import org.fandown.practice.RunWriter;
import org.fandown.practice.Scenario;
import org.fandown.practice.ScenarioReader;
import org.fandown.practice.Verb;
import org.fandown.referee.MarksDocument;
import org.fandown.referee.Referee;
import org.fandown.referee.Sheet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What devices can count on when they send an exercise, from the outside over HTTP. */
class PracticeRecordContractTest {
    private static final Path SCENARIOS = Path.of("..", "examples", "scenarios");
    private static final String ID = "0b7e3a52-93d1-4c0e-9a65-0d5f6f0a1c02";
    private static final PlaceCode PLACE = new PlaceCode("CA-ON");
    private static final LocalDate DAY = LocalDate.of(2026, 11, 30);
    private static final double FIVE_HOURS = 5 * 3600;

    private static String run = "";
    private static String marks = "";

    @TempDir private Path folder;

    @BeforeAll
    static void drive() {
        PracticeTruck truck = PracticeTruck.of(scenario());
        truck.act(new OperatorAction(Verb.CHOCK, "2L"));
        truck.act(new OperatorAction(Verb.KEY, "on"));
        truck.act(new OperatorAction(Verb.ENGINE, "start"));
        truck.advance(90);
        Run made = Run.of(truck, "Cold start");
        run = Json.writeCompact(RunWriter.write(made));
        var rules =
                RulePacks.builtIn()
                        .rulebookFor(PLACE)
                        .orElseThrow()
                        .inForce(PLACE, made.scenario().vehicle(), DAY);
        marks = Json.writeCompact(MarksDocument.of(Referee.mark(made, rules, Sheet.OURS)));
    }

    private static Scenario scenario() {
        return new ScenarioReader(path -> DocumentFiles.read(SCENARIOS.resolve(path)))
                .read(DocumentFiles.read(SCENARIOS.resolve("cold-start.yaml")));
    }

    private static String sent(String run, String marks) {
        return sent("\"CA-ON\"", "\"guided\"", run, marks);
    }

    private static String sent(String place, String mode, String run, String marks) {
        Node record =
                Tree.map()
                        .put("format", "fandown-record/1")
                        .put("id", ID)
                        .put("kind", "practice")
                        .put("made", "2026-11-30T23:40:00-05:00")
                        .put("place", Json.read("", place))
                        .put("mode", Json.read("", mode))
                        .put("shown", Tree.list().add(Tree.number(2)))
                        .put("run", Json.read("", run))
                        .put("marks", Json.read("", marks))
                        .build();
        return "{\"records\":[" + Json.writeCompact(record) + "]}";
    }

    @Test
    void exercise_is_done_again_marked_again_and_kept_once() throws Exception {
        try (RunningSite site = RunningSite.in(folder)) {
            assertThat(site.post("api/records", sent(run, marks)).body()).contains("\"new\"");
            assertThat(site.post("api/records", sent(run, marks)).body()).contains("\"before\"");
            assertThat(site.get("api/records/" + ID).body()).contains("fandown-marks/1");
            assertThat(site.get("api/records?words=cold").body())
                    .contains(ID)
                    .contains("\"kind\":\"practice\"")
                    .contains("not passed");
        }
    }

    @Test
    void learner_has_exercises_kept_and_reads_only_their_own() throws Exception {
        try (PeopleSite site = PeopleSite.in(folder.resolve("own"))) {
            Person learner = site.as(Role.LEARNER);
            assertThat(learner.post("api/records", sent(run, marks)).body()).contains("\"new\"");
            assertThat(learner.get("api/records/" + ID).statusCode()).isEqualTo(200);
            assertThat(learner.get("api/records").body()).contains(ID).contains("\"count\":1");
            assertThat(learner.get("api/records?kind=practice").body()).contains(ID);
            assertThat(learner.get("api/records?kind=inspection").body()).doesNotContain(ID);
        }
        try (PeopleSite site = PeopleSite.in(folder.resolve("other"))) {
            Person learner = site.as(Role.LEARNER);
            Person instructor = site.as(Role.INSTRUCTOR);
            instructor.post("api/records", sent(run, marks));
            assertThat(instructor.get("api/records/" + ID).statusCode()).isEqualTo(200);
            assertThat(learner.get("api/records/" + ID).statusCode()).isEqualTo(404);
            assertThat(learner.get("api/records/" + ID + "/seal").statusCode()).isEqualTo(404);
            assertThat(learner.get("api/records").body()).doesNotContain(ID);
        }
    }

    @Test
    void exercise_is_no_inspection() throws Exception {
        try (RunningSite site = RunningSite.in(folder)) {
            site.post("api/records", sent(run, marks));
            assertThat(site.get("api/records?kind=inspection").body()).doesNotContain(ID);
            assertThat(site.get("api/records?kind=practice").body()).contains(ID);
            var report = site.get("api/records/" + ID + "/report.pdf");
            assertThat(report.statusCode()).isEqualTo(404);
            assertThat(report.body()).contains("no inspection");
        }
    }

    @Test
    void marks_that_do_not_come_out_here_are_refused() throws Exception {
        String better = marks.replaceFirst("\"passed\":false", "\"passed\":true");
        assertThat(better).isNotEqualTo(marks);
        assertRefused(sent(run, better), "marked otherwise here", " of ");
        assertRefused(
                sent(run, marks.replaceFirst("\"kept\":\\d+", "\"kept\":100")),
                "marked otherwise here");
    }

    @Test
    void run_that_does_not_come_out_here_to_the_same_bits_is_refused() throws Exception {
        assertRefused(sent(run.replaceFirst("\"ticks\":4500", "\"ticks\":4600"), marks), "bits");
        String changed = run.replaceFirst("\"fingerprint\":\".", "\"fingerprint\":\"0");
        String again = run.replaceFirst("\"fingerprint\":\".", "\"fingerprint\":\"1");
        assertRefused(sent(changed.equals(run) ? again : changed, marks), "bits");
    }

    @Test
    void run_that_would_take_too_long_to_do_again_is_refused_before_it_is_done() throws Exception {
        long ticks = Math.round(FIVE_HOURS / PracticeTruck.TICK);
        assertRefused(
                sent(run.replaceFirst("\"ticks\":4500", "\"ticks\":" + ticks), marks),
                "too long",
                "4 h");
    }

    @Test
    void place_without_rules_and_unknown_mode_are_refused() throws Exception {
        assertRefused(sent("\"FR\"", "\"free\"", run, marks), "rule pack");
        assertRefused(sent("\"nowhere\"", "\"free\"", run, marks), "place code");
        assertRefused(sent("\"CA-ON\"", "\"easy\"", run, marks), "guided");
    }

    private void assertRefused(String body, String... because) throws Exception {
        try (RunningSite site = RunningSite.in(folder)) {
            assertThat(site.post("api/records", body).body()).contains("refused").contains(because);
            assertThat(site.get("api/records").body()).contains("\"count\":0");
        }
    }
}
