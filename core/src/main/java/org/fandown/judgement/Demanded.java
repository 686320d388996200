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
        boolean asPrinted = before.inspection().conditionsAsPrinted();
        if (asPrinted && at.isEmpty()) {
            return Optional.empty();
        }
        for (Demand demand : ruling.rule().method().demands()) {
            if (isStated(demand, at) && !holds(before, demand, at)) {
                return Optional.of(spoiled(ruling, demand, at));
            }
        }
        return asPrinted ? Optional.empty() : unstated(before, ruling, at);
    }

    private static boolean isStated(Demand demand, Circumstances at) {
        return at.state(demand.circumstance()).isPresent()
                || at.quantity(demand.circumstance()).isPresent();
    }

    private static Optional<Finding> unstated(Case before, Ruling ruling, Circumstances at) {
        List<String> unstated = new ArrayList<>();
        for (Demand demand : ruling.rule().method().demands()) {
            if (!isStated(demand, at)) {
                unstated.add(demand.toString());
            } else {
                missing(before, demand, at).ifPresent(unstated::add);
            }
        }
        return unstated.isEmpty() ? Optional.empty() : Optional.of(open(ruling, unstated));
    }

    /** What the limit of a circumstance needs and the inspection does not give. */
    private static Optional<String> missing(Case before, Demand demand, Circumstances at) {
        if (demand.limit().isEmpty()) {
            return Optional.empty();
        }
        Bounds bounds =
                Bounds.in(before, at.quantity(demand.circumstance()).orElseThrow().unit(), at);
        bounds.lower(demand.limit().get());
        bounds.upper(demand.limit().get());
        return bounds.missing();
    }

    private static boolean holds(Case before, Demand demand, Circumstances at) {
        Circumstance circumstance = demand.circumstance();
        if (demand.limit().isEmpty()) {
            String noted = at.state(circumstance).orElse("");
            return satisfiesOne(circumstance, noted, demand.states());
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

    private static boolean satisfiesOne(
            Circumstance circumstance, String noted, List<String> demanded) {
        for (String state : demanded) {
            if (circumstance.satisfies(noted, state)) {
                return true;
            }
        }
        return false;
    }

    private static Finding spoiled(Ruling ruling, Demand demand, Circumstances at) {
        return Finding.of(
                ruling,
                Status.SPOILED,
                Why.of(
                        () ->
                                "Noted: "
                                        + demand.circumstance().title()
                                        + " "
                                        + noted(demand.circumstance(), at)
                                        + ". Needed: "
                                        + demand
                                        + "."
                                        + sentence(ruling.rule().words()),
                        () -> "Do the test again with " + demand + "."));
    }

    private static String noted(Circumstance circumstance, Circumstances at) {
        return at.state(circumstance)
                .map(state -> state.replace('-', ' '))
                .or(() -> at.quantity(circumstance).map(Quantity::toString))
                .orElse("");
    }

    private static Finding open(Ruling ruling, List<String> unstated) {
        return Finding.of(
                ruling,
                Status.UNDETERMINED,
                Why.of(
                        () ->
                                "Not noted: "
                                        + String.join(", ", unstated)
                                        + "."
                                        + sentence(ruling.rule().words()),
                        () ->
                                "Note it with the reading, or declare `conditions: as-printed` if every"
                                        + " test was made as printed."));
    }

    static String sentence(String words) {
        return words.isEmpty() ? "" : " Rule: " + words.strip();
    }
}
