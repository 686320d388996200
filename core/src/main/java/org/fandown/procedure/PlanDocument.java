package org.fandown.procedure;

import java.util.List;
import org.fandown.check.Check;
import org.fandown.document.MapNode;
import org.fandown.document.Tree;
import org.fandown.rulebook.Ruling;

/** Writes plans and examinations as documents, for programs. */
public final class PlanDocument {
    private static final double TENTHS = 10;

    private PlanDocument() {}

    /** Writes a plan. */
    public static MapNode of(Plan plan) {
        Tree.ListBuilder leftOut = Tree.list();
        for (StepSet.LeftOut left : plan.set().leftOut()) {
            leftOut.add(Tree.map().put("check", left.check().id()).put("why", left.why()));
        }
        Tree.MapBuilder map = head(plan);
        if (plan.request().asPrinted()) {
            PlaceOrders.printed(plan.set())
                    .ifPresent(printed -> map.put("printed-order", printed(printed)));
        }
        return map.put("steps", steps(plan.steps())).put("left-out", leftOut).build();
    }

    private static Tree.MapBuilder head(Plan plan) {
        return Tree.map()
                .put("format", "fandown-plan/1")
                .put("place", plan.set().rules().place().code())
                .put("on", plan.set().rules().day().toString())
                .put("vehicle", plan.set().rules().vehicle().name())
                .put("scope", plan.set().scope())
                .put("good-practice-only", plan.set().isPracticeOnly())
                .put("seconds", plan.tenths() / TENTHS, 1)
                .put("engine-starts", plan.engineStarts());
    }

    private static Tree.MapBuilder printed(PlaceOrders.Printed printed) {
        Tree.ListBuilder turns = Tree.list();
        for (List<Check> turn : printed.order().turns()) {
            Tree.ListBuilder ids = Tree.list();
            turn.forEach(check -> ids.add(check.id()));
            turns.add(ids);
        }
        Tree.MapBuilder map = Tree.map().put("turns", turns);
        source(printed.ruling(), map);
        return map;
    }

    /** Writes what is wrong with an order. */
    public static MapNode of(Examination examination) {
        Tree.ListBuilder violations = Tree.list();
        for (Violation violation : examination.violations()) {
            violations.add(violation(violation));
        }
        Tree.ListBuilder unproven = Tree.list();
        for (Check check : examination.unproven()) {
            unproven.add(check.id());
        }
        return Tree.map()
                .put("format", "fandown-order-examination/1")
                .put("sound", examination.isSound())
                .put("seconds", examination.tenths() / TENTHS, 1)
                .put("violations", violations)
                .put("unproven", unproven)
                .put("steps", steps(examination.steps()))
                .build();
    }

    private static Tree.MapBuilder violation(Violation violation) {
        Tree.MapBuilder map =
                Tree.map()
                        .put("step", violation.number())
                        .put("kind", violation.need().weight())
                        .put("needs", violation.asked())
                        .put("spoiled-by", violation.culprit())
                        .put("text", violation.text());
        violation.order().flatMap(Precedence::rule).ifPresent(ruling -> source(ruling, map));
        violation.mend().ifPresent(mend -> map.put("mend", mend.text()));
        return map;
    }

    private static Tree.ListBuilder steps(List<PlannedStep> steps) {
        Tree.ListBuilder list = Tree.list();
        steps.forEach(step -> list.add(step(step)));
        return list;
    }

    private static Tree.MapBuilder step(PlannedStep planned) {
        Step step = planned.step();
        Tree.MapBuilder map =
                Tree.map()
                        .put("number", planned.number())
                        .put("step", step.text())
                        .put("does", step.action())
                        .put("at", planned.after().spot().id())
                        .put("begins", planned.begin() / TENTHS, 1)
                        .put("walk", planned.walk() / TENTHS, 1)
                        .put("takes", planned.tenths() / TENTHS, 1)
                        .put("psi-before", planned.before().psi())
                        .put("psi-after", planned.after().psi());
        if (step instanceof CheckStep check) {
            check(check, map);
        }
        Tree.ListBuilder reasons = Tree.list();
        for (Reason reason : planned.reasons()) {
            Tree.MapBuilder why =
                    Tree.map()
                            .put("sense", reason.sense())
                            .put("step", reason.other())
                            .put("why", reason.text());
            reason.rule().ifPresent(ruling -> source(ruling, why));
            reasons.add(why);
        }
        map.put("reasons", reasons);
        return step.caution().isEmpty() ? map : map.put("caution", step.caution());
    }

    private static void source(Ruling ruling, Tree.MapBuilder map) {
        map.put("rule", ruling.rule().id())
                .put("source", ruling.value().source().toString())
                .put("provenance", ruling.rule().provenance());
    }

    private static void check(CheckStep check, Tree.MapBuilder map) {
        Tree.ListBuilder checks = Tree.list();
        check.checks().forEach(c -> checks.add(c.id()));
        Tree.ListBuilder rules = Tree.list();
        for (Ruling ruling : check.rulings()) {
            rules.add(Tree.map().put("rule", ruling.rule().id()).put("limit", ruling.asked()));
        }
        map.put("checks", checks).put("rules", rules).put("look-for", check.words().lookFor());
        if (!check.methods().isEmpty()) {
            Tree.ListBuilder methods = Tree.list();
            for (Ruling ruling : check.methods()) {
                Tree.MapBuilder method = Tree.map().put("text", ruling.asked());
                source(ruling, method);
                methods.add(method);
            }
            map.put("methods", methods);
        }
        if (check.manner().helper()) {
            map.put("helper", true);
        }
    }
}
