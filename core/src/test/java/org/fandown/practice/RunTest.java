package org.fandown.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.fandown.practice.Practices.scenario;
import static org.fandown.practice.Practices.script;

import java.util.ArrayList;
import java.util.List;
import org.fandown.document.DocumentException;
import org.fandown.document.Json;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunTest {
    private static final String STEPS =
            """
            {'key': 'on'}, {'after': '1.02 s', 'gear': 'low'}, {'after': '0.5 s',
            'engine': 'start'}, {'begin': 'low-air-warning-works'}, {'after': '3 s',
            'read': 'lamps'}, {'wait': 'purge', 'at-most': '2 s'},
            {'record': {'readings': {'low-air-warning-works': true}}},
            {'conclude': {'verdict': 'not-proven'}}, {'after': '4 s'}""";
    private static final Scenario EMPTY = scenario("combination", "");

    @Test
    void a_run_is_done_again_to_the_last_bit() {
        PracticeTruck truck = driven(STEPS);

        PracticeTruck again = Run.of(truck, "T").replay();

        assertThat(again.fingerprint()).isEqualTo(truck.fingerprint());
        assertThat(again.events()).isEqualTo(truck.events());
        assertThat(again.log()).isEqualTo(truck.log());
        assertThat(again.ticks()).isEqualTo(truck.ticks());
    }

    @Test
    void what_was_refused_and_what_was_waited_for_in_vain_is_part_of_the_run() {
        Run run = Run.of(driven(STEPS), "T");

        assertThat(run.entries())
                .contains(new RunEntry.Act(51, new OperatorAction(Verb.GEAR, "low")))
                .filteredOn(entry -> entry instanceof RunEntry.GaveUp)
                .hasSize(1);
    }

    @Test
    void a_statement_moves_nothing() {
        PracticeTruck silent = driven("{'key': 'on'}, {'after': '4 s'}");
        PracticeTruck telling = driven("{'key': 'on'}, {'begin': 'abs-lamp'}, {'after': '4 s'}");

        assertThat(telling.air().state().fingerprint())
                .isEqualTo(silent.air().state().fingerprint());
        assertThat(telling.events())
                .contains(new PracticeEvent(0, PracticeEvent.Kind.STATED, "begin: abs-lamp"));
    }

    @Test
    void a_stored_run_is_read_back_the_same() {
        Run run = Run.of(driven(STEPS), "A title");

        Run read = RunReader.read(Json.read("run.json", Json.write(RunWriter.write(run))));

        assertThat(read).isEqualTo(run);
        assertThat(read.replay().fingerprint()).isEqualTo(run.fingerprint());
    }

    @Test
    void a_watcher_sees_every_tick_and_every_entry_between_them() {
        List<String> seen = new ArrayList<>();
        Run.of(driven("{'key': 'on'}, {'after': '0.04 s', 'key': 'off'}"), "")
                .replay(
                        new RunWatcher() {
                            @Override
                            public void tick(PracticeTruck truck) {
                                seen.add("tick " + truck.ticks());
                            }

                            @Override
                            public void before(PracticeTruck truck, RunEntry entry) {
                                seen.add("key " + truck.dash().keyOn());
                            }

                            @Override
                            public void after(
                                    PracticeTruck truck, RunEntry entry, boolean refused) {
                                seen.add("then " + truck.dash().keyOn());
                            }
                        });

        assertThat(seen)
                .containsExactly(
                        "tick 0",
                        "key false",
                        "then true",
                        "tick 1",
                        "tick 2",
                        "key true",
                        "then false");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "\"fandown-run/1\"; \"fandown-run/2\"; format; fandown-run/1",
                "\"simulated\": true; \"simulated\": false; simulated; true",
                "\"tick\": 51; \"tick\": 900; entries[1].tick; 0 to",
                "\"tick\": 76; \"tick\": 50; entries[2].tick; 51 to",
                "\"fingerprint\": \"; \"fingerprint\": \"x; fingerprint; 16 hexadecimal",
                "\"gear\": \"low\"; \"after\": \"1 s\"; entries[1].step; something to do",
                "\"gear\": \"low\"; \"part-lines\": \"4\"; entries[1].step.part-lines; 1 to 1",
            })
    void a_stored_run_that_cannot_be_is_refused(
            String good, String bad, String path, String allowed) {
        String text = Json.write(RunWriter.write(Run.of(driven(STEPS), "T")));
        assertThat(text).contains(good);

        DocumentException refusal =
                catchThrowableOfType(
                        DocumentException.class,
                        () -> RunReader.read(Json.read("run.json", text.replace(good, bad))));

        assertThat(refusal.path()).isEqualTo(path);
        assertThat(refusal.allowed()).contains(allowed);
        assertThat(refusal.nextStep()).isNotEmpty();
    }

    @Test
    void ticks_that_fall_make_no_run() {
        List<RunEntry> entries =
                List.of(
                        new RunEntry.Act(5, new OperatorAction(Verb.KEY, "on")),
                        new RunEntry.Act(4, new OperatorAction(Verb.KEY, "off")));

        assertThatThrownBy(() -> new Run("", EMPTY, entries, 9, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must not fall");
    }

    private static PracticeTruck driven(String steps) {
        PracticeTruck truck = PracticeTruck.of(EMPTY);
        new ScriptRun(truck, script(EMPTY.vehicle(), steps)).perform(1, each -> {});
        return truck;
    }
}
