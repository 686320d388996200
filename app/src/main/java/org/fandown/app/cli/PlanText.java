package org.fandown.app.cli;

import org.fandown.plot.ClockText;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Plan;
import org.fandown.procedure.PlannedStep;
import org.fandown.procedure.Reason;
import org.fandown.procedure.Scope;
import org.fandown.procedure.StepSet;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.RulesInForce;
import org.fandown.rulebook.Ruling;

/** Prints a plan as a card. */
final class PlanText {
    private static final String INDENT = "            ";

    private final Plan plan;
    private final Screen screen;

    PlanText(Plan plan, Screen screen) {
        this.plan = plan;
        this.screen = screen;
    }

    void print() {
        RulesInForce rules = plan.set().rules();
        screen.title(
                "Order of work for "
                        + rules.vehicle().name()
                        + ", "
                        + rules.lineage().get(0).name()
                        + ", "
                        + rules.day());
        screen.line(
                ClockText.whole(plan.tenths() / 10.0)
                        + " on the clock, engine started "
                        + times(plan.engineStarts())
                        + ", found with "
                        + plan.request().startPsi()
                        + " psi.");
        if (plan.set().isPracticeOnly()) {
            screen.wrapped(
                    "",
                    "No rule known here asks for a check that a person makes at the vehicle. This"
                            + " is what the trade does; it proves nothing about the law of the"
                            + " place.");
        } else if (plan.set().scope() == Scope.THOROUGH) {
            screen.wrapped("", "Checks without a rule are good practice.");
        }
        if (plan.request().asPrinted()) {
            screen.wrapped("", PrintedOrderWords.of(plan.set()));
        }
        screen.line("");
        plan.steps().forEach(this::step);
        leftOut();
        Cautions.print(screen);
        screen.done();
    }

    private void step(PlannedStep planned) {
        String head =
                pad(planned.number() + ".", 4) + pad(ClockText.whole(planned.begin() / 10.0), 8);
        String psi =
                planned.before().psi() == planned.after().psi()
                        ? ""
                        : " (" + planned.before().psi() + " to " + planned.after().psi() + " psi)";
        screen.hanging(head, planned.step().action() + psi);
        if (!planned.step().caution().isEmpty()) {
            screen.hanging(INDENT + "! ", planned.step().caution());
        }
        if (planned.step() instanceof CheckStep check) {
            check(check);
        }
        for (Reason reason : planned.reasons()) {
            screen.hanging(INDENT + "because ", said(reason));
        }
    }

    private void check(CheckStep check) {
        if (!check.words().lookFor().isEmpty()) {
            screen.hanging(INDENT + "look for ", check.words().lookFor());
        }
        for (Ruling ruling : check.rulings()) {
            String label = ruling.limit() instanceof Limit.IsYes ? "asked " : "limit ";
            screen.hanging(INDENT + label, ruling.asked() + " (" + ruling.rule().id() + ")");
        }
        for (Ruling ruling : check.methods()) {
            screen.hanging(INDENT + "method ", ruling.asked().strip() + " " + source(ruling));
        }
        if (check.manner().helper()) {
            screen.hanging(INDENT, "with a helper in the cab, or a pedal holder");
        }
    }

    private String said(Reason reason) {
        String where =
                switch (reason.sense()) {
                    case AFTER -> "after step " + reason.other() + ": ";
                    case BEFORE -> "before step " + reason.other() + ": ";
                    case FOR -> reason.other() == 0 ? "" : "for step " + reason.other() + ": ";
                };
        return where + reason.text() + reason.rule().map(r -> " " + source(r)).orElse("");
    }

    private static String source(Ruling ruling) {
        return "("
                + ruling.rule().id()
                + "; "
                + ruling.value().source()
                + "; "
                + ruling.rule().provenance().title()
                + ")";
    }

    /** How often: {@code once}, {@code twice}, {@code 3 times}. */
    private static String times(int count) {
        return count == 1 ? "once" : count == 2 ? "twice" : count + " times";
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    private void leftOut() {
        if (!plan.set().leftOut().isEmpty()) {
            screen.heading("Asked for, but not part of this order");
            for (StepSet.LeftOut left : plan.set().leftOut()) {
                screen.hanging("  ", left.check().title() + ": " + left.why());
            }
        }
    }
}
