package org.fandown.practice;

import java.util.List;
import org.fandown.document.MapNode;
import org.fandown.document.Tree;
import org.fandown.evidence.StatementDocument;

/**
 * Writes a script as the tree of a script file. {@link ScriptReader} reads the tree back to an
 * equal script, to the last bit of every number, if its amounts were read from a file.
 */
public final class ScriptDocument {
    private ScriptDocument() {}

    /**
     * Writes a script.
     *
     * @param script the script
     * @return the tree of its file
     */
    public static MapNode of(Script script) {
        Tree.MapBuilder map = Tree.map();
        if (!script.title().isEmpty()) {
            map.put("title", script.title());
        }
        return map.put("steps", steps(script.steps())).build();
    }

    private static Tree.ListBuilder steps(List<ScriptStep> steps) {
        Tree.ListBuilder list = Tree.list();
        steps.forEach(step -> list.add(step(step)));
        return list;
    }

    /** Writes one step that is neither a repetition nor a time. */
    static MapNode thing(ScriptStep step) {
        if (step instanceof ScriptStep.Wait wait) {
            return waiting(wait).build();
        }
        if (step instanceof ScriptStep.State said) {
            return StatementDocument.of(said.statement());
        }
        OperatorAction action = ((ScriptStep.Do) step).action();
        return Tree.map().put(action.verb().id(), action.value()).build();
    }

    private static MapNode step(ScriptStep step) {
        if (step instanceof ScriptStep.At at) {
            return Tree.map().put(ScriptKeys.AT, Amounts.ofSeconds(at.seconds())).build();
        }
        if (step instanceof ScriptStep.After after) {
            return Tree.map().put(ScriptKeys.AFTER, Amounts.ofSeconds(after.seconds())).build();
        }
        if (step instanceof ScriptStep.Repeat repeat) {
            return Tree.map()
                    .put(ScriptKeys.REPEAT, repeat.times())
                    .put(ScriptKeys.STEPS, steps(repeat.steps()))
                    .build();
        }
        return thing(step);
    }

    private static Tree.MapBuilder waiting(ScriptStep.Wait wait) {
        Tree.MapBuilder map = Tree.map().put(ScriptKeys.WAIT, wait.sign().id());
        if (wait.sign().hasPressure()) {
            map.put(ScriptKeys.PRESSURE, Amounts.ofPascals(wait.pressure().pascals()));
        }
        return map.put(ScriptKeys.AT_MOST, Amounts.ofSeconds(wait.atMost()));
    }
}
