package org.fandown.judgement;

import java.util.Optional;
import org.fandown.check.CheckKind;
import org.fandown.evidence.Reading;
import org.fandown.rulebook.EvidenceDemand;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Rule;
import org.fandown.rulebook.Ruling;
import org.fandown.units.Quantity;

/** Judges readings of the vehicle as a whole. */
final class ReadingJudge {
    private ReadingJudge() {}

    /** The finding, empty where nothing was noted and nothing was asked. */
    static Optional<Finding> judge(Case before, Ruling ruling) {
        Optional<Reading> reading = before.inspection().reading(ruling.rule().check());
        if (reading.isEmpty()) {
            return notChecked(ruling);
        }
        Optional<Finding> objection = Demanded.objection(before, ruling, reading.get().at());
        return objection.isPresent()
                ? objection
                : Optional.of(measured(before, ruling, reading.get()));
    }

    static Optional<Finding> notChecked(Ruling ruling) {
        if (ruling.rule().weight().evidence() != EvidenceDemand.ASKED) {
            return Optional.empty();
        }
        return Optional.of(
                Finding.of(
                        ruling,
                        Status.NOT_CHECKED,
                        Why.of(
                                () ->
                                        "Nothing was noted."
                                                + Demanded.sentence(ruling.rule().words()),
                                () ->
                                        "Make the check and note it under "
                                                + ruling.rule().check().id()
                                                + ".")));
    }

    private static Finding measured(Case before, Ruling ruling, Reading reading) {
        if (reading instanceof Reading.Value value) {
            return value(before, ruling, value);
        }
        if (reading instanceof Reading.Span span) {
            return ruling.rule().check().kind() == CheckKind.BUILD_UP
                    ? BuildUpJudge.judge(before, ruling, span)
                    : AirLossJudge.judge(before, ruling, span);
        }
        if (reading instanceof Reading.Estimate estimate) {
            return estimate(before, ruling, estimate);
        }
        if (reading instanceof Reading.Reserve reserve) {
            return reserve(before, ruling, reserve);
        }
        return answer(ruling, (Reading.Answer) reading);
    }

    private static Finding value(Case before, Ruling ruling, Reading.Value value) {
        Optional<Finding> tooLow = endTooLow(before, ruling, value);
        return tooLow.isPresent()
                ? tooLow.get()
                : NumericJudge.needles(ruling, before, value.values(), value.at());
    }

    private static Finding estimate(Case before, Ruling ruling, Reading.Estimate estimate) {
        Bounds bounds = Bounds.in(before, estimate.value().unit(), estimate.at());
        return NumericJudge.compare(ruling, inWindow(ruling, estimate), bounds);
    }

    /** A loss is reckoned for the time the rule names. */
    private static Measurement inWindow(Ruling ruling, Reading.Estimate estimate) {
        Optional<Quantity> per = ((Limit.Numeric) ruling.limit()).edges().per();
        double share =
                per.isPresent() && estimate.over().isPresent()
                        ? per.get().valueIn(estimate.over().get().unit())
                                / estimate.over().get().value()
                        : 1;
        return new Measurement(
                estimate.value().value() * share,
                estimate.value().unit(),
                estimate.within().value() * share);
    }

    /** A timed build-up that was stopped before the pressure the rule names. */
    private static Optional<Finding> endTooLow(Case before, Ruling ruling, Reading.Value value) {
        Optional<Rule.Window> window = ruling.rule().method().window();
        if (window.isEmpty()) {
            return Optional.empty();
        }
        if (value.to().isEmpty()) {
            return before.inspection().conditionsAsPrinted()
                    ? Optional.empty()
                    : Optional.of(noEnd(ruling));
        }
        Quantity reached = value.to().get();
        Bounds bounds = Bounds.in(before, reached.unit(), value.at());
        double needed = bounds.value(window.get().to());
        if (bounds.missing().isPresent()) {
            return Optional.of(unknownEnd(ruling, bounds.missing().get()));
        }
        Optional<Edge> least = Optional.of(new Edge(needed, true));
        double end = reached.value();
        return Decision.decide(end, end, least, Optional.empty()) == Status.MET
                ? Optional.empty()
                : Optional.of(stoppedEarly(ruling, reached));
    }

    private static Finding unknownEnd(Ruling ruling, String missing) {
        return Finding.of(
                ruling,
                Status.UNDETERMINED,
                Why.of(() -> "The end of the test needs " + missing + "."));
    }

    private static Finding noEnd(Ruling ruling) {
        return Finding.of(
                ruling,
                Status.UNDETERMINED,
                Why.of(
                        () -> "The pressure at the end was not noted.",
                        () -> "Note it as `to` beside the time."));
    }

    private static Finding stoppedEarly(Ruling ruling, Quantity reached) {
        return Finding.of(
                ruling,
                Status.SPOILED,
                Why.of(
                        () ->
                                "Timed to "
                                        + reached
                                        + " only; the rule times it "
                                        + ruling.rule().method().window().orElseThrow()
                                        + ".",
                        () -> "Do the test again to the pressure the rule names."));
    }

    private static Finding reserve(Case before, Ruling ruling, Reading.Reserve reserve) {
        Measurement after =
                new Measurement(
                        reserve.after().value(),
                        reserve.after().unit(),
                        Uncertainty.expanded(1, before.step(reserve, reserve.after().unit())));
        return NumericJudge.compare(
                ruling, after, Bounds.withBefore(before, reserve.before(), reserve.at()));
    }

    private static Finding answer(Ruling ruling, Reading.Answer answer) {
        String note = answer.note().isEmpty() ? "" : " (" + answer.note() + ")";
        return answer.yes()
                ? Finding.of(ruling, Status.MET, Why.of(() -> "Noted: yes" + note + "."))
                : Finding.of(
                        ruling,
                        Status.NOT_MET,
                        Why.of(
                                () ->
                                        "Noted: no"
                                                + note
                                                + "."
                                                + Demanded.sentence(ruling.rule().words())));
    }
}
