package org.fandown.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Nearest;
import org.fandown.document.Node;
import org.fandown.evidence.StatementReader;
import org.fandown.units.Dimension;
import org.fandown.units.GaugePressure;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.Vehicle;

/**
 * Reads a script for one vehicle, strictly: a wheel, reservoir or line that the vehicle has not is
 * refused where it stands.
 */
public final class ScriptReader {
    private static final int MOST_TIMES = 1000;
    private static final double MOST_PSI = 250;

    private final ActionReader actions;
    private final StatementReader statements;

    /**
     * A reader of scripts for a vehicle.
     *
     * @param vehicle the vehicle that the script is done with
     */
    public ScriptReader(Vehicle vehicle) {
        actions = new ActionReader(vehicle);
        statements = new StatementReader(vehicle);
    }

    /**
     * Reads one script.
     *
     * @throws DocumentException if the document is not a script, or not one for this vehicle
     */
    public Script read(Node document) {
        Fields fields = Fields.of(document);
        String title = fields.optionalText("title").orElse("");
        List<ScriptStep> steps = steps(fields);
        fields.end();
        ScriptLength length = ScriptLength.of(steps);
        if (!length.isBearable()) {
            throw fields.refuse(
                    ScriptKeys.STEPS,
                    "with all its repetitions and waits the script could be too long",
                    ScriptLength.ALLOWED,
                    "repeat less often, or split the script");
        }
        return new Script(title, steps);
    }

    private List<ScriptStep> steps(Fields fields) {
        List<Node> items = fields.list(ScriptKeys.STEPS);
        if (items.isEmpty()) {
            throw fields.refuse(
                    ScriptKeys.STEPS,
                    "the list is empty",
                    "at least one step",
                    "write a step such as '- key: on'");
        }
        List<ScriptStep> steps = new ArrayList<>();
        items.forEach(item -> step(Fields.of(item), steps));
        return steps;
    }

    /** One item is a time to pass, something to do or wait for, or both in this order. */
    private void step(Fields fields, List<ScriptStep> steps) {
        boolean timed = time(fields, steps);
        if (fields.has(ScriptKeys.REPEAT)) {
            int times = fields.integer(ScriptKeys.REPEAT, 1, MOST_TIMES);
            steps.add(new ScriptStep.Repeat(times, steps(fields)));
        } else {
            thing(fields, timed).ifPresent(steps::add);
        }
        requireOneThing(fields);
        fields.end();
    }

    /**
     * Reads one thing that is done, said or waited for, without a time.
     *
     * @throws DocumentException if it is none, or not one for this vehicle
     */
    ScriptStep thing(Fields fields) {
        ScriptStep step = thing(fields, false).orElseThrow();
        requireOneThing(fields);
        fields.end();
        return step;
    }

    private Optional<ScriptStep> thing(Fields fields, boolean timed) {
        if (fields.has(ScriptKeys.WAIT)) {
            return Optional.of(waiting(fields));
        }
        for (String key : StatementReader.KEYS) {
            if (fields.has(key)) {
                return Optional.of(new ScriptStep.State(statements.read(key, fields.node(key))));
            }
        }
        return verb(fields, timed).map(verb -> action(fields, verb));
    }

    private static boolean time(Fields fields, List<ScriptStep> steps) {
        boolean at = fields.has(ScriptKeys.AT);
        boolean after = fields.has(ScriptKeys.AFTER);
        if (at && after) {
            throw fields.refuseKey(
                    ScriptKeys.AFTER,
                    "a step has one time",
                    "'at', the moment since the start, or 'after', the time since the step before",
                    "remove one of the two");
        }
        if (at) {
            steps.add(new ScriptStep.At(seconds(fields, ScriptKeys.AT)));
        } else if (after) {
            steps.add(new ScriptStep.After(seconds(fields, ScriptKeys.AFTER)));
        }
        return at || after;
    }

    private static double seconds(Fields fields, String key) {
        Quantity time = fields.quantity(key, Dimension.TIME);
        double seconds = Amounts.seconds(time);
        if (!(seconds >= 0 && seconds <= ScriptStep.MOST_SECONDS)) {
            throw fields.refuse(
                    key, "this time is out of range", "0 s to 24 h", "correct the time");
        }
        return seconds;
    }

    private static ScriptStep waiting(Fields fields) {
        Awaited sign = fields.choice(ScriptKeys.WAIT, Awaited.values());
        GaugePressure pressure = GaugePressure.ofPsi(0);
        if (sign.hasPressure()) {
            Quantity written = fields.quantity(ScriptKeys.PRESSURE, Dimension.GAUGE_PRESSURE);
            double psi = written.valueIn(Unit.PSI);
            if (!(psi >= 0 && psi <= MOST_PSI)) {
                throw fields.refuse(
                        ScriptKeys.PRESSURE,
                        "no needle shows that",
                        "0 psi to 250 psi",
                        "correct the pressure or its unit");
            }
            pressure = new GaugePressure(Amounts.pascals(written));
        }
        if (!fields.has(ScriptKeys.AT_MOST)) {
            throw fields.missing(
                    ScriptKeys.AT_MOST, "the time after which the wait is given up, such as 5 min");
        }
        double most = seconds(fields, ScriptKeys.AT_MOST);
        if (most == 0) {
            throw fields.refuse(
                    ScriptKeys.AT_MOST,
                    "that is no wait",
                    "more than 0 s, up to 24 h",
                    "correct the time");
        }
        return new ScriptStep.Wait(sign, pressure, most);
    }

    private static Optional<Verb> verb(Fields fields, boolean timed) {
        for (String key : fields.keys()) {
            Optional<Verb> verb = Verb.byId(key);
            if (verb.isPresent()) {
                return verb;
            }
            if (!ScriptKeys.OF_STEPS.contains(key)) {
                throw fields.refuseKey(
                        key,
                        "this is not something a step can be",
                        String.join(", ", ScriptKeys.OF_STEPS),
                        Nearest.advice(
                                key,
                                ScriptKeys.OF_STEPS,
                                "take one of these; docs/formats.md describes them"));
            }
        }
        if (!timed) {
            throw fields.refuseHere(
                    "this step is empty", "something to do", "write a step such as 'key: on'");
        }
        return Optional.empty();
    }

    private ScriptStep action(Fields fields, Verb verb) {
        return new ScriptStep.Do(actions.read(verb, fields.node(verb.id())));
    }

    /** Two things in one step would leave their order open. */
    private static void requireOneThing(Fields fields) {
        List<String> things = new ArrayList<>();
        for (String key : fields.keys()) {
            boolean thing =
                    Verb.byId(key).isPresent()
                            || StatementReader.KEYS.contains(key)
                            || key.equals(ScriptKeys.WAIT)
                            || key.equals(ScriptKeys.REPEAT);
            if (thing) {
                things.add(key);
            }
        }
        if (things.size() > 1) {
            throw fields.refuseKey(
                    things.get(1),
                    "a step does one thing",
                    "one thing in each step",
                    "write it as a step of its own, '- " + things.get(1) + ": ...'");
        }
    }
}
