package org.fandown.app.paper;

import java.util.List;
import java.util.Optional;
import org.fandown.plot.Drawing;

/**
 * The recorded trace that a report was judged by, as it is printed behind the report.
 *
 * @param log the name of the log
 * @param sha256 the SHA-256 of its bytes, in hexadecimal digits
 * @param facts what it is and what it holds, each a sentence
 * @param remarks what a person should know before trusting it
 * @param overview the whole of it
 * @param tests what was recognised in it
 * @param json the same as JSON, put into the document as the file {@code trace.json}
 */
public record TraceContent(
        String log,
        String sha256,
        List<String> facts,
        List<String> remarks,
        Drawing overview,
        List<Test> tests,
        String json) {
    /** Copies the lists. */
    public TraceContent {
        facts = List.copyOf(facts);
        remarks = List.copyOf(remarks);
        tests = List.copyOf(tests);
    }

    /**
     * Something recognised.
     *
     * @param number its number in the drawings
     * @param name what was done
     * @param from when it began, as a stopwatch shows it
     * @param to when it ended
     * @param value what was measured
     * @param interval the interval that holds the true value; empty if there is none
     * @param engine speed of the engine meanwhile; empty if nothing tells
     * @param judged as which check it was judged, and what came of it; empty if it was not
     * @param drawing its drawing, empty if there is none
     */
    public record Test(
            int number,
            String name,
            String from,
            String to,
            String value,
            String interval,
            String engine,
            String judged,
            Optional<Drawing> drawing) {}

    /**
     * The drawings in the order in which they are printed: the whole, then each test that has one.
     */
    List<Drawing> drawings() {
        List<Drawing> all = new java.util.ArrayList<>();
        all.add(overview);
        tests.forEach(test -> test.drawing().ifPresent(all::add));
        return all;
    }
}
