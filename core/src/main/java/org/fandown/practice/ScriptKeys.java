package org.fandown.practice;

import java.util.ArrayList;
import java.util.List;
import org.fandown.evidence.StatementReader;

/** The keys of a script's steps. */
final class ScriptKeys {
    static final String STEPS = "steps";
    static final String AT = "at";
    static final String AFTER = "after";
    static final String WAIT = "wait";
    static final String PRESSURE = "pressure";
    static final String AT_MOST = "at-most";
    static final String REPEAT = "repeat";

    /** What a step can begin with. */
    static final List<String> OF_STEPS = ofSteps();

    private ScriptKeys() {}

    private static List<String> ofSteps() {
        List<String> keys = new ArrayList<>(List.of(AT, AFTER, WAIT, REPEAT));
        keys.addAll(StatementReader.KEYS);
        for (Verb verb : Verb.values()) {
            keys.add(verb.id());
        }
        return List.copyOf(keys);
    }
}
