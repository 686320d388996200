package org.fandown.app.cli;

import org.fandown.plot.ClockText;
import org.fandown.referee.Feedback;
import org.fandown.referee.ItemMarks;
import org.fandown.referee.Marks;

/** Prints a marked sheet for a person at a terminal. */
final class MarksText {
    private final Marks marks;
    private final Screen screen;

    MarksText(Marks marks, Screen screen) {
        this.marks = marks;
        this.screen = screen;
    }

    void print() {
        screen.title(marks.run().scenario().title());
        String title = marks.run().title();
        screen.wrapped(
                "",
                (title.isEmpty() ? "" : title + ". ")
                        + marks.run().scenario().vehicle().name()
                        + ", marked by the rules of "
                        + marks.place()
                        + ". A simulation.");
        screen.heading(verdict());
        screen.line(Marks.CARE);
        screen.heading(marks.sheet().title());
        if (!marks.sheet().note().isEmpty()) {
            screen.wrapped("", marks.sheet().note());
        }
        TextTable table = new TextTable();
        for (ItemMarks item : marks.items()) {
            table.add(
                    "  " + (item.feedback().isEmpty() ? "ok" : item.critical() ? "!!" : "x"),
                    item.of() - item.deducted() + " of " + item.of(),
                    item.item().title() + (item.critical() ? " (fails the run)" : ""));
        }
        screen.table(table);
        feedback();
        time();
        screen.done();
    }

    private String verdict() {
        String points =
                marks.kept() + " of " + marks.of() + " points, " + marks.needed() + " needed";
        if (marks.passed()) {
            return "PASSED: " + points;
        }
        return "NOT PASSED: "
                + points
                + (marks.critical() ? "; a mistake that fails the run was made" : "");
    }

    private void feedback() {
        boolean any = marks.items().stream().anyMatch(item -> !item.feedback().isEmpty());
        screen.heading(any ? "What to do better" : "Nothing to do better");
        for (ItemMarks item : marks.items()) {
            for (Feedback each : item.feedback()) {
                String clock = ClockText.tenths(each.seconds());
                String head = " ".repeat(Math.max(0, 8 - clock.length())) + clock + "  ";
                screen.hanging(head, each.happened());
                String indent = " ".repeat(head.length());
                if (!each.spoiled().isEmpty()) {
                    screen.wrapped(indent, each.spoiled());
                }
                screen.hanging(indent + "Instead: ", each.instead());
            }
        }
    }

    private void time() {
        if (marks.planSeconds() > 0) {
            screen.heading(
                    "The run took "
                            + ClockText.whole(marks.run().seconds())
                            + " min, the quickest order by our model "
                            + ClockText.whole(marks.planSeconds())
                            + " min.");
        }
    }
}
