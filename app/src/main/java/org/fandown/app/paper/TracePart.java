package org.fandown.app.paper;

import java.util.List;

/** The pages that draw the trace: the whole of it, what was recognised, and each test by itself. */
final class TracePart {
    /**
     * Of more than these only what is judged has a row, because nobody would read them; the
     * attached file has all.
     */
    private static final int MOST_ROWS = 60;

    private static final List<Integer> WIDTHS = List.of(4, 23, 7, 7, 19, 12, 9, 19);
    private static final List<String> HEADS =
            List.of(
                    "",
                    "recognised",
                    "from",
                    "to",
                    "measured",
                    "95 % interval",
                    "engine",
                    "judged as, finding");

    private final TraceContent trace;
    private int drawn;

    private TracePart(TraceContent trace) {
        this.trace = trace;
    }

    static void print(Tag page, TraceContent trace) {
        new TracePart(trace).print(page);
    }

    private void print(Tag page) {
        Tag first = page.add("div", "tracepage");
        first.add("h2").text("The trace this report rests on");
        fact(first, "Log: ", Clean.entry(trace.log()));
        fact(first, "SHA-256 of the log: ", trace.sha256());
        fact(first, "", String.join(" ", trace.facts()));
        remarks(first);
        picture(first, trace.overview());
        if (!trace.tests().isEmpty()) {
            table(page);
            tests(page);
        }
    }

    private void remarks(Tag page) {
        if (trace.remarks().isEmpty()) {
            fact(page, "Remarks on the log: ", "none; no gap, sensor error or jump of its clock.");
            return;
        }
        fact(page, "Remarks on the log", "");
        trace.remarks().forEach(remark -> fact(page, "\u2013 ", Clean.entry(remark)));
    }

    private static void fact(Tag page, String lead, String text) {
        Tag line = page.add("div", "fact");
        line.add("span", "strong").text(lead);
        line.text(text);
    }

    private void table(Tag page) {
        page.add("div", "fact")
                .text(
                        "The numbers stand above the drawings. An interval holds the true value in"
                                + " about 95 of 100 cases, as far as the doubt comes from reading"
                                + " and noise. In the drawings of single tests the scale of pressure"
                                + " does not start at 0; dots and bars show what was measured.");
        Tag table = page.add("table", "findings tests").columns(WIDTHS);
        Tag head = table.add("thead").add("tr");
        HEADS.forEach(text -> head.add("th").text(text));
        Tag body = table.add("tbody");
        List<TraceContent.Test> shown =
                trace.tests().stream()
                        .filter(test -> test.number() <= MOST_ROWS || !test.judged().isEmpty())
                        .toList();
        shown.forEach(test -> row(body.add("tr", "met"), test));
        int more = trace.tests().size() - shown.size();
        if (more > 0) {
            page.add("div", "fact").text(more + " more stand in the attached file trace.json.");
        }
    }

    private static void row(Tag row, TraceContent.Test test) {
        row.add("td").add("span", "number").text(Integer.toString(test.number()));
        row.add("td", "value").text(test.name());
        for (String text :
                List.of(
                        test.from(),
                        test.to(),
                        test.value(),
                        test.interval(),
                        test.engine(),
                        test.judged())) {
            row.add("td").text(text);
        }
    }

    private void tests(Tag page) {
        for (TraceContent.Test test : trace.tests()) {
            test.drawing()
                    .ifPresent(
                            drawing -> {
                                Tag block = page.add("div", "testblock");
                                Tag head = block.add("div", "testhead");
                                head.add("span", "number").text(Integer.toString(test.number()));
                                head.add("span", "strong").text(" " + test.name() + ": ");
                                head.text(measured(test));
                                picture(block, drawing);
                            });
        }
    }

    private static String measured(TraceContent.Test test) {
        return test.value()
                + (test.interval().isEmpty() ? "" : " (95 %: " + test.interval() + ")")
                + ", "
                + test.from()
                + " to "
                + test.to()
                + (test.engine().isEmpty() ? "" : ", engine " + test.engine());
    }

    private void picture(Tag parent, org.fandown.plot.Drawing drawing) {
        ShapePen.add(parent, drawing, drawn);
        drawn++;
    }
}
