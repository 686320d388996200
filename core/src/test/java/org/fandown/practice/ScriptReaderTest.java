package org.fandown.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.fandown.practice.Practices.combination;
import static org.fandown.practice.Practices.script;
import static org.fandown.practice.Practices.truck;

import java.util.List;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.check.Verdict;
import org.fandown.document.DocumentException;
import org.fandown.document.Json;
import org.fandown.evidence.ClaimedDefect;
import org.fandown.evidence.Statement;
import org.fandown.units.GaugePressure;
import org.fandown.vehicle.Vehicle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ScriptReaderTest {
    private static final String ALL_FORMS =
            """
            {'key': 'on'}, {'at': '1:30 min'}, {'after': '2 s', 'foot-brake': '100 %'},
            {'wait': 'purge', 'at-most': '5 min'},
            {'after': '1 s', 'wait': 'needles-at-least', 'pressure': '634 kPa', 'at-most': '0.1 h'},
            {'repeat': 6, 'steps': [{'foot-brake': '1/3 %'}, {'repeat': 2, 'steps':
            [{'after': '0.1 s'}]}]},
            {'throttle': '1100 rpm'}, {'couple-lines': 1}, {'open-drain': 'unit2'},
            {'chock': '3R'}, {'stand': 'reservoirs 2'}, {'look': 'tires'}, {'note': 'done'}""";

    /** Every form of an observation, each with what is easily lost when it is written. */
    private static final String ALL_STATEMENTS =
            """
            {'after': '1 s', 'begin': 'air-loss-applied'}, {'begin': 'pushrod-applied-stroke'},
            {'record': {'circumstances': {'engine': 'off', 'applications': 3},
              'readings': {
                'governor-cut-out': ['121 psi', '122 psi'],
                'gauge-error': {'value': '2 %', 'note': 'by the workshop gauge'},
                'build-up-from-empty': {'time': '5 min 3 s', 'to': '100 psi'},
                'build-up': {'from': '85 psi', 'to': '100 psi', 'time': '40 s'},
                'air-loss-applied': {'start': '110 psi', 'end': '108 1/2 psi', 'time': '60 s'},
                'air-loss-released': {'loss': '2 psi', 'time': '1 min', 'engine': 'running'},
                'reservoir-reserve': {'before': '800 kPa', 'after': '600 kPa', 'applications': 5},
                'low-air-warning-works': true},
              'wheels': {'all': {'service-brake': 'applied'}, '1L': '1 3/8 in',
                '2R': {'released': '79 mm', 'fully-applied-length': '115.3 mm'}},
              'parts': {'tires': {'condition': 'flat', 'severity': 'major', 'note': '3R'},
                'horn': 'ok', 'all-others': 'ok'}}},
            {'record': {'wheels': {'3L': {'applied': '1.5 in', 'free': '0.5 in', 'lining': '8 mm',
              'cam-angle': '10 deg', 'indicator-hidden': true, 'makers-limit': '2 in',
              'defects': ['oil on the lining']}}}},
            {'conclude': {'verdict': 'not-proven', 'defects': ['air-loss-applied', 'tires',
              {'check': 'pushrod-applied-stroke', 'at': '3R'},
              {'part': 'air-lines', 'at': 'unit2'}]}},
            {'conclude': {'verdict': 'fit-to-move'}}""";

    @Test
    void every_form_of_a_step_is_read() {
        Script read = script(combination(), ALL_FORMS);

        assertThat(read.steps())
                .containsExactly(
                        act(Verb.KEY, "on"),
                        new ScriptStep.At(90),
                        new ScriptStep.After(2),
                        act(Verb.FOOT_BRAKE, "100 %"),
                        new ScriptStep.Wait(Awaited.PURGE, GaugePressure.ofPsi(0), 300),
                        new ScriptStep.After(1),
                        new ScriptStep.Wait(
                                Awaited.NEEDLES_AT_LEAST, GaugePressure.ofKilopascals(634), 360),
                        new ScriptStep.Repeat(
                                6,
                                List.of(
                                        act(Verb.FOOT_BRAKE, "1/3 %"),
                                        new ScriptStep.Repeat(
                                                2, List.of(new ScriptStep.After(0.1))))),
                        act(Verb.THROTTLE, "1100 rpm"),
                        act(Verb.COUPLE_LINES, "1"),
                        act(Verb.OPEN_DRAIN, "unit2"),
                        act(Verb.CHOCK, "3R"),
                        act(Verb.STAND, "reservoirs 2"),
                        act(Verb.LOOK, "tires"),
                        act(Verb.NOTE, "done"));
    }

    @Test
    void what_is_written_is_read_back_the_same() {
        Script read =
                new ScriptReader(combination())
                        .read(Practices.json("{'title': 'All', 'steps': [" + ALL_FORMS + "]}"));

        assertThat(again(read)).isEqualTo(read);
    }

    @Test
    void what_is_said_is_written_and_read_back_the_same() {
        Script read = script(combination(), ALL_STATEMENTS);

        assertThat(read.steps()).hasSize(7);
        assertThat(again(read)).isEqualTo(read);
    }

    @Test
    void a_conclusion_names_checks_and_parts() {
        ScriptStep said =
                script(
                                combination(),
                                "{'conclude': {'verdict': 'not-fit-to-move', 'defects':"
                                        + " [{'part': 'tires', 'at': '3R'}, 'abs-lamp']}}")
                        .steps()
                        .get(0);

        assertThat(said)
                .isEqualTo(
                        new ScriptStep.State(
                                new Statement.Conclude(
                                        Verdict.NOT_FIT_TO_MOVE,
                                        List.of(
                                                ClaimedDefect.of(Component.TIRES, "3R"),
                                                ClaimedDefect.of(Check.ABS_LAMP, "")))));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0 s",
                "0.1 s",
                "1/3 s",
                "0.000000000001 s",
                "17.3 s",
                "1.23456 h",
                "0.7 min",
                "1:01 min",
                "1 d"
            })
    void time_is_read_back_to_the_last_bit(String time) {
        Script read = script(truck(), "{'after': '" + time + "'}");

        assertThat(again(read)).isEqualTo(read);
    }

    @ParameterizedTest
    @EnumSource(Verb.class)
    void every_verb_is_read(Verb verb) {
        String value =
                switch (verb.argument()) {
                    case WORD -> verb.words().get(0);
                    case TRAVEL, ENGINE_SPEED -> "40 %";
                    case WHEEL -> "2L";
                    case RESERVOIR -> "secondary";
                    case COUPLING -> "1";
                    case STATION -> "coupling 1";
                    case PART -> "air-lines";
                    case TEXT -> "a note";
                };

        assertThat(script(combination(), "{'" + verb.id() + "': '" + value + "'}").steps())
                .containsExactly(act(verb, value));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "{'foot-break': '1 %'}; steps[0].foot-break; not something a step can be;"
                        + " foot-brake; did you mean 'foot-brake'",
                "{'dance': 'on'}; steps[0].dance; not something a step can be; key; formats.md",
                "{'key': 'in'}; steps[0].key; cannot be done so; on, off; did you mean 'on'",
                "{'foot-brake': 80}; steps[0].foot-brake; unit is missing; share; add the unit",
                "{'foot-brake': '101 %'}; steps[0].foot-brake; cannot be done so; 0 % to 100 %;"
                        + " correct",
                "{'throttle': '4000 rpm'}; steps[0].throttle; cannot be done so; 3000 rpm; correct",
                "{'throttle': '20 psi'}; steps[0].throttle; pressure; rotation; rpm",
                "{'chock': '9L'}; steps[0].chock; not on the vehicle; axles 1 to 3; count",
                "{'measure': '2'}; steps[0].measure; not a wheel; 1L; count",
                "{'open-drain': 'unit3'}; steps[0].open-drain; no such reservoir; supply, primary,"
                        + " secondary, unit2; did you mean 'unit2'",
                "{'part-lines': 2}; steps[0].part-lines; no lines; 1 to 1; unit in front",
                "{'stand': 'roof'}; steps[0].stand; cannot be done so; cab, front; correct",
                "{'stand': 'coupling 2'}; steps[0].stand; no such place; 'coupling 1'; count",
                "{'look': 'tyres'}; steps[0].look; cannot be done so; walk-round; 'tires'",
                "{'at': '1 s', 'after': '1 s'}; steps[0].after; one time; 'at'; remove",
                "{'at': '-1 s'}; steps[0].at; out of range; 0 s to 24 h; correct",
                "{'after': '25 h'}; steps[0].after; out of range; 0 s to 24 h; correct",
                "{'key': 'on', 'engine': 'start'}; steps[0].engine; one thing; one thing; of its"
                        + " own",
                "{'key': 'on', 'wait': 'purge', 'at-most': '1 s'}; steps[0].wait; one thing; one"
                        + " thing; of its own",
                "{}; steps[0]; empty; something to do; key: on",
                "{'wait': 'purge'}; steps[0]; 'at-most' is missing; at-most; add",
                "{'wait': 'purge', 'at-most': '0 s'}; steps[0].at-most; no wait; more than 0 s;"
                        + " correct",
                "{'wait': 'needles-at-least', 'at-most': '1 s'}; steps[0]; 'pressure' is missing;"
                        + " pressure; add",
                "{'wait': 'needles-at-most', 'pressure': '260 psi', 'at-most': '1 s'};"
                        + " steps[0].pressure; no needle; 0 psi to 250 psi; correct",
                "{'wait': 'purge', 'pressure': '60 psi', 'at-most': '1 s'}; steps[0].pressure;"
                        + " not known here; at-most; remove",
                "{'wait': 'bang', 'at-most': '1 s'}; steps[0].wait; not one; purge; names",
                "{'repeat': 0, 'steps': [{'key': 'on'}]}; steps[0].repeat; out of range; 1 to 1000;"
                        + " correct",
                "{'repeat': 2, 'steps': []}; steps[0].steps; empty; at least one; write a step",
                "{'repeat': 2}; steps[0]; 'steps' is missing; list; add",
                "{'repeat': 1000, 'steps': [{'after': '2 min'}]}; steps; too long; 24 h; split",
                "{'begin': 'air-los-applied'}; steps[0].begin; not a check; formats.md;"
                        + " 'air-loss-applied'",
                "{'begin': 'training'}; steps[0].begin; nobody makes; formats.md; on paper",
                "{'begin': 'reservoir-volume'}; steps[0].begin; nobody makes; formats.md; by"
                        + " itself",
                "{'record': {}}; steps[0].record; nothing; readings, wheels or parts; readings:",
                "{'record': {'reading': {}}}; steps[0].record.reading; not known here; readings;"
                        + " 'readings'",
                "{'record': {'readings': {'governor-cut-out': '120 Hz'}}};"
                        + " steps[0].record.readings.governor-cut-out; unit; pressure; psi",
                "{'record': {'wheels': {'9L': '1 in'}}}; steps[0].record.wheels.9L; not on the"
                        + " vehicle; axles 1 to 3; count",
                "{'conclude': {}}; steps[0].conclude; 'verdict' is missing; verdict; add",
                "{'conclude': {'verdict': 'fit-to-mve'}}; steps[0].conclude.verdict; not one;"
                        + " fit-to-move; 'fit-to-move'",
                "{'conclude': {'verdict': 'fit-to-move', 'defects': ['tyres']}};"
                        + " steps[0].conclude.defects[0]; not a check; parts; 'tires'",
                "{'conclude': {'verdict': 'fit-to-move', 'defects': [{'part': 'tires', 'check':"
                        + " 'abs-lamp'}]}}; steps[0].conclude.defects[0].part; one thing; either;"
                        + " remove",
                "{'conclude': {'verdict': 'fit-to-move', 'defects': [{'part': 'tires', 'at':"
                        + " 'unit3'}]}}; steps[0].conclude.defects[0].at; no such place; unit1 to"
                        + " unit2; count",
                "{'key': 'on', 'begin': 'abs-lamp'}; steps[0].begin; one thing; one thing; of its"
                        + " own",
                "'purge'; steps[0]; text cannot stand here; map; write",
            })
    void what_cannot_be_is_refused(
            String step, String path, String problem, String allowed, String next) {
        DocumentException refusal =
                catchThrowableOfType(DocumentException.class, () -> script(combination(), step));

        assertThat(refusal.path()).isEqualTo(path);
        assertThat(refusal.problem()).containsIgnoringCase(problem);
        assertThat(refusal.allowed()).containsIgnoringCase(allowed);
        assertThat(refusal.nextStep()).containsIgnoringCase(next);
        assertThat(refusal.line()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "{'trailer-valve': 'push'}; tows nothing",
                "{'hand-valve': '10 %'}; tows nothing",
                "{'cross-lines': 1}; no lines to a trailer",
                "{'open-drain': 'unit2'}; no such reservoir",
                "{'stand': 'coupling 1'}; no such place",
            })
    void parts_of_a_trailer_are_refused_where_there_is_none(String step, String problem) {
        DocumentException refusal =
                catchThrowableOfType(DocumentException.class, () -> script(truck(), step));

        assertThat(refusal.problem()).contains(problem);
    }

    @Test
    void repetitions_within_repetitions_are_multiplied() {
        Vehicle vehicle = truck();
        String inner = "{'repeat': 1000, 'steps': [{'key': 'on'}]}";
        String outer = "{'repeat': %d, 'steps': [" + inner + "]}";

        assertThat(script(vehicle, outer.formatted(99)).steps()).hasSize(1);
        assertThat(
                        catchThrowableOfType(
                                DocumentException.class,
                                () -> script(vehicle, outer.formatted(101))))
                .hasMessageContaining("too long");
    }

    private static ScriptStep act(Verb verb, String value) {
        return new ScriptStep.Do(new OperatorAction(verb, value));
    }

    private static Script again(Script script) {
        String text = Json.write(ScriptDocument.of(script));
        return new ScriptReader(combination()).read(Json.read("b.json", text));
    }
}
