package org.fandown.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.CheckKind;
import org.fandown.check.Component;
import org.fandown.check.ReportItem;
import org.fandown.document.Fields;
import org.fandown.rulebook.Limit.DutyTerm;
import org.fandown.rulebook.Limit.Exemption;
import org.fandown.rulebook.Limit.Lifts;
import org.fandown.rulebook.Limit.TermSense;
import org.fandown.units.Dimension;

/** Reads what a rule demands, and refuses a demand that does not fit the check. */
final class LimitReader {
    private LimitReader() {}

    static Limit read(Fields rule, Check check) {
        Fields fields = rule.fields("limit");
        Limit limit = limit(fields, check);
        fields.end();
        return limit;
    }

    private static Limit limit(Fields fields, Check check) {
        return switch (check.kind()) {
            case VALUE, BUILD_UP, RESERVE, DESIGN, AIR_LOSS -> numeric(fields, check);
            case WHEEL_VALUE ->
                    fields.has("stroke-table")
                            ? new Limit.Strokes(
                                    StrokeTableReader.read(fields.fields("stroke-table")))
                            : numeric(fields, check);
            case YES_NO, WHEEL_YES_NO -> isYes(fields);
            case BRAKE_COUNT -> brakesOver(fields.fields("brakes-over"));
            case AXLE_MATCH -> new Limit.SameAcross(fields.choice("same", Limit.AxlePart.values()));
            case WALK_ROUND -> new Limit.LookAt(fields.choices("look-at", Component.values()));
            case COMPONENT ->
                    new Limit.Absent(
                            fields.text("absent"), fields.choice("on", Component.values()));
            case REPORT ->
                    new Limit.ReportHolds(fields.choices("report-holds", ReportItem.values()));
            case DUTY -> duty(fields);
        };
    }

    private static Limit numeric(Fields fields, Check check) {
        Dimension dimension = check.dimension().orElse(Dimension.RATIO);
        if (check.kind() == CheckKind.AIR_LOSS && !fields.has("per")) {
            throw fields.refuseHere(
                    "does not say in what time the loss is counted", "per: 1 min", "Add per.");
        }
        return new Limit.Numeric(NumericReader.read(fields, dimension));
    }

    private static Limit isYes(Fields fields) {
        if (!fields.truth("is")) {
            throw fields.refuse(
                    "is",
                    "is no, but every check is worded so that yes is good",
                    "yes",
                    "Use the check that means the opposite.");
        }
        return new Limit.IsYes();
    }

    private static Limit brakesOver(Fields fields) {
        double share = fields.quantity("share", Dimension.RATIO).value();
        Optional<Printed> overBy =
                fields.has("over-by")
                        ? Optional.of(BoundReader.figure(fields, "over-by", Dimension.LENGTH))
                        : Optional.empty();
        fields.end();
        return new Limit.BrakesOver(share, overBy);
    }

    private static Limit duty(Fields fields) {
        List<DutyTerm> terms = new ArrayList<>();
        for (TermSense sense : TermSense.values()) {
            String key =
                    sense == TermSense.LASTS
                            ? "lasts"
                            : sense == TermSense.KEEP ? "keep" : "within";
            if (fields.has(key)) {
                terms.add(new DutyTerm(sense, TermReader.read(fields, key)));
            }
        }
        if (terms.size() > 1) {
            throw fields.refuseHere(
                    "has two times", "one of lasts, keep, within", "Make two rules of it.");
        }
        Optional<Exemption> exemption = Optional.empty();
        if (fields.has("exempt-within")) {
            exemption =
                    Optional.of(
                            new Exemption(
                                    fields.quantity("exempt-within", Dimension.LENGTH),
                                    fields.choice("exemption-lifts", Lifts.values())));
        }
        return new Limit.Duty(
                fields.text("duty"),
                terms.stream().findFirst(),
                exemption,
                fields.optionalTexts("options"));
    }
}
