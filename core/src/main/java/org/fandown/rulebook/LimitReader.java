package org.fandown.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.check.ReportItem;
import org.fandown.document.Fields;
import org.fandown.document.Names;
import org.fandown.rulebook.Limit.DutyTerm;
import org.fandown.rulebook.Limit.Exemption;
import org.fandown.rulebook.Limit.Lifts;
import org.fandown.rulebook.Limit.TermSense;
import org.fandown.units.Dimension;
import org.fandown.units.Unit;

/** Reads what a rule demands, and refuses a demand that does not fit the check. */
final class LimitReader {
    private static final double HUNDRED = 100;

    private LimitReader() {}

    static Limit read(Fields rule, Check check) {
        Fields fields = rule.fields("limit");
        Limit limit = limit(fields, check);
        fields.end();
        return limit;
    }

    private static Limit limit(Fields fields, Check check) {
        return switch (check.kind()) {
            case VALUE, BUILD_UP, RESERVE, DESIGN ->
                    new Limit.Numeric(NumericReader.read(fields, BoundKind.of(check)));
            case AIR_LOSS -> new Limit.Numeric(NumericReader.readLoss(fields, BoundKind.of(check)));
            case WHEEL_VALUE -> wheelValue(fields, check);
            case YES_NO, WHEEL_YES_NO -> isYes(fields);
            case BRAKE_COUNT -> brakesOver(fields.fields("brakes-over"));
            case AXLE_MATCH -> sameAcross(fields, check);
            case WALK_ROUND -> new Limit.LookAt(some(fields, "look-at", Component.values()));
            case COMPONENT -> absent(fields);
            case REPORT -> new Limit.ReportHolds(some(fields, "report-holds", ReportItem.values()));
            case DUTY -> duty(fields, check);
        };
    }

    private static Limit wheelValue(Fields fields, Check check) {
        if (check == Check.PUSHROD_APPLIED_STROKE && fields.has("stroke-table")) {
            return new Limit.Strokes(StrokeTableReader.read(fields.fields("stroke-table")));
        }
        return new Limit.Numeric(NumericReader.read(fields, BoundKind.of(check)));
    }

    private static Limit sameAcross(Fields fields, Check check) {
        Limit.AxlePart part = fields.choice("same", Limit.AxlePart.values());
        Limit.AxlePart own =
                check == Check.CHAMBER_MATCH ? Limit.AxlePart.CHAMBER : Limit.AxlePart.ADJUSTER_ARM;
        if (part != own) {
            throw fields.refuse(
                    "same",
                    "is not what " + check.id() + " compares",
                    Names.kebab(own),
                    "Correct the check or the limit.");
        }
        return new Limit.SameAcross(part);
    }

    private static Limit absent(Fields fields) {
        String condition = fields.text("absent");
        if (!Texts.isKebab(condition)) {
            throw fields.refuse(
                    "absent",
                    "is not the name of a condition",
                    "small letters, digits and hyphens, such as audible-air-leak",
                    "Write the words with hyphens between them.");
        }
        return new Limit.Absent(condition, fields.choice("on", Component.values()));
    }

    private static <E extends Enum<E>> List<E> some(Fields fields, String key, E[] constants) {
        List<E> found = fields.choices(key, constants);
        if (found.isEmpty()) {
            throw fields.refuse(
                    key,
                    "names nothing, so that everything would pass",
                    String.join(", ", Names.byKebab(constants).keySet()),
                    "Name what the source asks for.");
        }
        return found;
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
        double share = fields.quantity("share", Dimension.RATIO).valueIn(Unit.PERCENT);
        if (!(share > 0 && share <= HUNDRED)) {
            throw fields.refuse(
                    "share",
                    "is not a share of the brakes",
                    "above 0 % and up to 100 %",
                    "Correct the share.");
        }
        Optional<Printed> overBy =
                fields.has("over-by")
                        ? Optional.of(BoundReader.figure(fields, "over-by", Dimension.LENGTH))
                        : Optional.empty();
        fields.end();
        return new Limit.BrakesOver(share, overBy);
    }

    private static Limit duty(Fields fields, Check check) {
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
                fields.optionalTexts("options"),
                TestOrderReader.orders(fields, check),
                TestOrderReader.concerns(fields, check));
    }
}
