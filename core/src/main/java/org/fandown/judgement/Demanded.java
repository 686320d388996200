package org.fandown.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Circumstance;
import org.fandown.evidence.Circumstances;
import org.fandown.rulebook.Demand;
import org.fandown.rulebook.NumericLimit;
import org.fandown.rulebook.Ruling;
import org.fandown.units.Quantity;

/** Whether a reading was taken under the circumstances its rule demands. */
final class Demanded {
    private Demanded() {}

    /**
     * A finding if the circumstances spoil the reading or leave it open, empty if they are as
     * demanded.
     *
     * @param at what was noted
     */
    static Optional<Finding> objection(Case before, Ruling ruling, Circumstances at) {
        List<Demand> unstated = new ArrayList<>();
        for (Demand demand : ruling.rule().method().demands()) {
            Optional<String> state = at.state(demand.circumstance());
            Optional<Quantity> quantity = at.quantity(demand.circumstance());
            if (state.isEmpty() && quantity.isEmpty()) {
                unstated.add(demand);
            } else if (!holds(before, demand, at)) {
                return Optional.of(spoiled(ruling, demand, state, quantity));
            }
        }
        return unstated.isEmpty() || before.inspection().conditionsAsPrinted()
                ? Optional.empty()
                : Optional.of(open(ruling, unstated));
    }

    private static boolean holds(Case before, Demand demand, Circumstances at) {
        Circumstance circumstance = demand.circumstance();
        if (demand.limit().isEmpty()) {
            String noted = at.state(circumstance).orElse("");
            return demand.states().stream().anyMatch(s -> circumstance.satisfies(noted, s));
        }
        NumericLimit limit = demand.limit().get();
        Quantity quantity = at.quantity(circumstance).orElseThrow();
        Bounds bounds = Bounds.in(before, quantity.unit(), at);
        Status status =
                Decision.decide(
                        quantity.value(),
                        quantity.value(),
                        bounds.lower(limit),
                        bounds.upper(limit));
        return status == Status.MET || bounds.missing().isPresent();
    }

    private static Finding spoiled(
            Ruling ruling, Demand demand, Optional<String> state, Optional<Quantity> quantity) {
        return Finding.of(
                ruling,
                Status.SPOILED,
                Why.of(
                        () ->
                                "Noted: "
                                        + demand.circumstance().title()
                                        + " "
                                        + state.map(s -> s.replace('-', ' '))
                                                .or(() -> quantity.map(Quantity::toString))
                                                .orElse("")
                                        + ". Needed: "
                                        + demand
                                        + "."
                                        + sentence(ruling.rule().words()),
                        () -> "Do the test again with " + demand + "."));
    }

    private static Finding open(Ruling ruling, List<Demand> unstated) {
        return Finding.of(
                ruling,
                Status.UNDETERMINED,
                Why.of(
                        () ->
                                "Not noted: "
                                        + join(unstated)
                                        + "."
                                        + sentence(ruling.rule().words()),
                        () ->
                                "Note it with the reading, or declare `conditions: as-printed` if every"
                                        + " test was made as printed."));
    }

    private static String join(List<Demand> demands) {
        StringBuilder text = new StringBuilder();
        for (Demand demand : demands) {
            text.append(text.length() == 0 ? "" : ", ").append(demand);
        }
        return text.toString();
    }

    static String sentence(String words) {
        return words.isEmpty() ? "" : " Rule: " + words.strip();
    }
}
