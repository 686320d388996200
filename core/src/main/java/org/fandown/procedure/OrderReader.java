package org.fandown.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.MapNode;
import org.fandown.document.Nearest;
import org.fandown.document.Node;
import org.fandown.document.Values;
import org.fandown.rulebook.RulesInForce;
import org.fandown.units.Dimension;
import org.fandown.units.Num;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * Reads an order of work: a list of steps, each the id of a check ({@code governor-cut-in}) or of
 * work ({@code stop-engine}, {@code fan-down: 60 psi}, {@code wait: 2 min}).
 */
public final class OrderReader {
    private static final String STEPS = "steps";
    private static final String START = "start-pressure";
    private static final int MOST_PSI = 150;
    private static final int MOST_SECONDS = 3600;

    private final StepSet checks;
    private final WorkNeeds works;
    private final Rig rig;

    /** A reader of orders for one vehicle under the rules of one place. */
    public OrderReader(RulesInForce rules, Durations durations) {
        checks = Steps.of(rules, durations, Scope.THOROUGH);
        rig = new Rig(rules.vehicle(), durations);
        works = new WorkNeeds(rig);
    }

    /**
     * Reads one order.
     *
     * @throws DocumentException if the document is not an order for this vehicle
     */
    public Order read(Node document) {
        Fields fields = Fields.of(document);
        String title = fields.optionalText("title").orElse("");
        int psi =
                fields.optionalQuantity(START, Dimension.GAUGE_PRESSURE)
                        .map(p -> pressure(fields, p))
                        .orElse(0);
        List<Step> steps = new ArrayList<>();
        for (Node node : fields.list(STEPS)) {
            steps.add(step(node));
        }
        fields.end();
        if (steps.isEmpty()) {
            throw fields.refuse(
                    STEPS, "the list is empty", "at least one step", "write a step, such as chock");
        }
        return new Order(title, psi, steps);
    }

    private static int pressure(Fields fields, Quantity pressure) {
        double psi = pressure.valueIn(Unit.PSI);
        if (!(psi >= 0 && psi <= MOST_PSI)) {
            throw fields.refuse(
                    START,
                    "no vehicle is found with that pressure",
                    "0 psi to 150 psi",
                    "correct the pressure or its unit");
        }
        return (int) Num.round(psi);
    }

    private Step step(Node node) {
        if (node instanceof MapNode map) {
            return measured(Fields.of(map));
        }
        String id = Values.text(node);
        Optional<Work> work = Work.byId(id);
        if (work.isPresent()) {
            return plain(node, work.get());
        }
        Optional<CheckStep> check = checks.find(id);
        return check.orElseThrow(() -> unknown(node, id));
    }

    private Step plain(Node node, Work work) {
        if (work.amount() == Work.Amount.PRESSURE) {
            throw Values.refuse(
                    node,
                    "this work needs a pressure",
                    work.id() + ": a pressure",
                    "write '" + work.id() + ": 60 psi'");
        }
        boolean timed = work.amount() == Work.Amount.TIME;
        return works.step(work, timed ? rig.durations().settling() / 10 : 0);
    }

    private Step measured(Fields fields) {
        List<String> keys = fields.keys();
        String key = keys.isEmpty() ? "" : keys.get(0);
        Optional<Work> work = Work.byId(key);
        if (work.isEmpty() || work.get().amount() == Work.Amount.NONE) {
            throw fields.refuseHere(
                    "this is no step with a measure",
                    "pump-up or fan-down with a pressure, wait with a time",
                    "write a step without a measure as a single word");
        }
        boolean time = work.get().amount() == Work.Amount.TIME;
        Quantity quantity = fields.quantity(key, time ? Dimension.TIME : Dimension.GAUGE_PRESSURE);
        fields.end();
        double amount = quantity.valueIn(time ? Unit.SECOND : Unit.PSI);
        double most = time ? MOST_SECONDS : MOST_PSI;
        if (!(amount >= 0 && amount <= most)) {
            throw fields.refuse(
                    key,
                    "this is out of range",
                    time ? "0 s to 1 h" : "0 psi to 150 psi",
                    "correct the figure or its unit");
        }
        return works.step(work.get(), (int) Num.round(amount));
    }

    private DocumentException unknown(Node node, String id) {
        List<String> known = new ArrayList<>();
        for (Work work : Work.values()) {
            known.add(work.id());
        }
        checks.checks().forEach(check -> check.checks().forEach(c -> known.add(c.id())));
        return Values.refuse(
                node,
                "this vehicle has no such step",
                String.join(", ", known),
                Nearest.advice(id, known, "take one of these; docs/formats.md describes them"));
    }
}
