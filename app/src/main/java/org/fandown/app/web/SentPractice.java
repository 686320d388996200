package org.fandown.app.web;

import java.time.LocalDate;
import java.util.Map;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReentrantLock;
import org.fandown.app.files.RulePacks;
import org.fandown.check.PlaceCode;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.document.Values;
import org.fandown.evidence.CommonKeys;
import org.fandown.practice.Run;
import org.fandown.practice.RunReader;
import org.fandown.referee.Marks;
import org.fandown.referee.MarksDocument;
import org.fandown.referee.Referee;
import org.fandown.referee.Sheet;
import org.fandown.rulebook.Rulebook;

/**
 * The part of a record that is of an exercise: {@code place}, {@code mode}, {@code shown}, {@code
 * run} and {@code marks}. The run is done again and marked here, one at a time; a run that comes
 * out otherwise than the device says is refused.
 */
final class SentPractice {
    /** Doing an hour again takes some seconds. */
    private static final double MOST_HOURS = 4;

    /** No key of a real vehicle has small letters. */
    private static final String CHAIN = "practice";

    private static final int MOST_ENTRIES = 20_000;
    private static final int MOST_STEPS = 1000;

    /** Marking takes a whole processor; of several devices that send, each waits for its turn. */
    private static final Lock ONE_AT_A_TIME = new ReentrantLock();

    private SentPractice() {}

    /**
     * Reads it and holds it against what comes out here.
     *
     * @param fields the record
     * @param day the day it was made, where it was made
     * @param packs the rules
     * @throws DocumentException if it is not such a record, or comes out otherwise
     */
    static Summary read(Fields fields, LocalDate day, RulePacks packs) {
        PlaceCode place = CommonKeys.place(fields);
        Rulebook rulebook = packs.rulebookFor(place).orElseThrow(() -> noRules(fields, packs));
        fields.choice("mode", Map.of("guided", true, "free", true, "test", true));
        fields.list("shown").forEach(step -> Values.integer(step, 1, MOST_STEPS));
        Run run = bearable(RunReader.read(fields.node("run")), fields);
        Marks marks = mark(run, rulebook, place, day);
        if (!marks.replayed()) {
            throw fields.refuse(
                    "run",
                    "it does not come out here to the same bits",
                    "a run as this version of the program made it",
                    "load the pages anew, and make the exercise again");
        }
        Node document = MarksDocument.of(marks);
        if (!same(fields.node("marks"), document)) {
            throw fields.refuse(
                    "marks",
                    "the run is marked otherwise here: " + words(marks),
                    "the marks of this run by the rules that the server has",
                    "load the pages anew, and make the exercise again");
        }
        return new Summary(
                place.code(),
                run.scenario().vehicle().name(),
                words(marks),
                run.scenario().title(),
                document,
                CHAIN);
    }

    private static DocumentException noRules(Fields fields, RulePacks packs) {
        return fields.refuse(
                "place",
                "it has no rule pack",
                packs.places().toString(),
                "take one of these places");
    }

    private static Run bearable(Run run, Fields fields) {
        if (run.seconds() > MOST_HOURS * 3600 || run.entries().size() > MOST_ENTRIES) {
            throw fields.refuse(
                    "run",
                    "the exercise is too long to be done again here",
                    "at most 4 h and " + MOST_ENTRIES + " actions",
                    "leave it on the device");
        }
        return run;
    }

    private static Marks mark(Run run, Rulebook rulebook, PlaceCode place, LocalDate day) {
        ONE_AT_A_TIME.lock();
        try {
            return Referee.mark(
                    run, rulebook.inForce(place, run.scenario().vehicle(), day), Sheet.OURS);
        } finally {
            ONE_AT_A_TIME.unlock();
        }
    }

    /** Where each was written does not matter, nor by whom. */
    private static boolean same(Node a, Node b) {
        return Json.writeCompact(a).equals(Json.writeCompact(b));
    }

    private static String words(Marks marks) {
        return marks.kept() + " of " + marks.of() + (marks.passed() ? ", passed" : ", not passed");
    }
}
