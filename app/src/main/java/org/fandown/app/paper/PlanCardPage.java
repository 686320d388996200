package org.fandown.app.paper;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.fandown.plot.ClockText;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Plan;
import org.fandown.procedure.PlannedStep;
import org.fandown.procedure.Reason;
import org.fandown.rulebook.RulesInForce;
import org.fandown.rulebook.Ruling;
import org.w3c.dom.Document;

/** Lays the card of a plan out as a page tree. */
final class PlanCardPage {
    private static final String SHEET =
            "@page { margin: 8mm 10mm }"
                    + " body { font-family: 'Fandown Sans'; line-height: 1.2; margin: 0;"
                    + " color: #000 }"
                    + " table { width: 100%; border-collapse: collapse; table-layout: fixed }"
                    + " td, th { padding: 0.15em 0.4em 0.15em 0; vertical-align: top;"
                    + " text-align: left; border-bottom: 0.4pt solid #999 }"
                    + " h1 { font-size: 1.4em; margin: 0 0 0.2em 0 }"
                    + " .strong { font-weight: 700 } .small { font-size: 0.85em; color: #222 }"
                    + " .caution { font-weight: 700; font-size: 0.9em }";

    private final Plan plan;

    private PlanCardPage(Plan plan) {
        this.plan = plan;
    }

    static Document of(Plan plan, double points) {
        return new PlanCardPage(plan).lay(points);
    }

    static String title(Plan plan) {
        RulesInForce rules = plan.set().rules();
        return "Order of work, "
                + Clean.text(Clean.entry(rules.vehicle().name()))
                + ", "
                + rules.lineage().get(0).name()
                + ", "
                + rules.day();
    }

    private Document lay(double points) {
        RulesInForce rules = plan.set().rules();
        Tag html = Tag.root("html").set("lang", "en");
        Tag head = html.add("head");
        head.add("title").text(title(plan));
        String size = "@page { size: " + PaperSize.of(rules.place()).css() + " }";
        head.add("style").text(SHEET + size + " body { font-size: " + points + "pt }");
        Tag body = html.add("body");
        body.add("h1").text(title(plan));
        body.add("div", "small").text(summary());
        Tag table = body.add("table").columns(List.of(4, 7, 36, 29, 24));
        Tag header = table.add("tr");
        for (String name : new String[] {"", "at", "do", "look for, limit", "why here"}) {
            header.add("th").text(name);
        }
        plan.steps().forEach(step -> row(table, step));
        orders(body);
        body.add("div", "caution")
                .text(
                        "Chock before anything else; never go under a vehicle that is not chocked."
                                + " Never open a spring-brake chamber. Local law, the maker and"
                                + " licensed technicians come first.");
        return html.document();
    }

    /** Where the orders that the place asks for or prints can be read. */
    private void orders(Tag body) {
        Set<Ruling> rulings = new LinkedHashSet<>();
        plan.steps().stream()
                .flatMap(step -> step.reasons().stream())
                .forEach(reason -> reason.rule().ifPresent(rulings::add));
        for (Ruling ruling : rulings) {
            body.add("div", "small")
                    .text("Order of the place: " + ruling.rule().id() + ", " + cited(ruling) + ".");
        }
    }

    private static String cited(Ruling ruling) {
        return ruling.value().source().work()
                + ", "
                + ruling.value().source().section()
                + "; "
                + ruling.rule().provenance().title();
    }

    private String summary() {
        String text =
                ClockText.whole(plan.tenths() / 10.0)
                        + " min on the clock, engine starts: "
                        + plan.engineStarts()
                        + ", rules checked on "
                        + plan.set().rules().lineage().get(0).checkedOn()
                        + ".";
        return plan.set().isPracticeOnly()
                ? text + " No rule known here asks for these checks; they are good practice."
                : text;
    }

    private static void row(Tag table, PlannedStep planned) {
        Tag row = table.add("tr");
        row.add("td").text(String.valueOf(planned.number()));
        row.add("td").text(ClockText.whole(planned.begin() / 10.0));
        Tag does = row.add("td");
        boolean check = planned.step() instanceof CheckStep;
        Tag action = check ? does.add("div", "strong") : does.add("div");
        action.text(planned.step().action());
        if (!planned.step().caution().isEmpty()) {
            does.add("div", "small").text("! " + planned.step().caution());
        }
        Tag look = row.add("td", "small");
        if (planned.step() instanceof CheckStep step) {
            look.add("div").text(step.words().lookFor());
            for (Ruling ruling : step.rulings()) {
                look.add("div").add("span", "strong").text(ruling.asked());
            }
            for (Ruling ruling : step.methods()) {
                look.add("div").text(ruling.asked().strip() + " (" + cited(ruling) + ")");
            }
        }
        Tag why = row.add("td", "small");
        planned.reasons().stream().limit(2).forEach(reason -> why.add("div").text(said(reason)));
    }

    private static String said(Reason reason) {
        return switch (reason.sense()) {
            case AFTER -> "after " + reason.other() + ": " + reason.text();
            case BEFORE -> "before " + reason.other() + ": " + reason.text();
            case FOR -> (reason.other() == 0 ? "" : "for " + reason.other() + ": ") + reason.text();
        };
    }
}
