package org.fandown.app.cli;

import org.fandown.check.Check;
import org.fandown.plot.ClockText;
import org.fandown.procedure.Examination;
import org.fandown.procedure.Violation;

/** Prints what is wrong with an order. */
final class ExaminationText {
    private final Examination examination;
    private final Screen screen;

    ExaminationText(Examination examination, Screen screen) {
        this.examination = examination;
        this.screen = screen;
    }

    void print() {
        String title = examination.order().title();
        screen.title(
                (title.isEmpty() ? "This order" : title)
                        + (examination.isSound() ? ": sound" : ": not sound"));
        screen.line(ClockText.whole(examination.tenths() / 10.0) + " on the clock.");
        for (Violation violation : examination.violations()) {
            screen.line("");
            screen.wrapped("", violation.text());
            violation.mend().ifPresent(mend -> screen.hanging("  Mend: ", mend.text()));
        }
        if (!examination.unproven().isEmpty()) {
            screen.heading("Asked for here, and not proven by this order");
            for (Check check : examination.unproven()) {
                screen.line("  " + check.title());
            }
        }
        Cautions.print(screen);
        screen.done();
    }
}
