package org.fandown.rulebook;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.PlaceCode;
import org.fandown.document.Fields;

/** Reads one rule of a pack. */
final class RuleReader {
    private final PlaceCode place;
    private final LocalDate checkedOn;
    private final ValuesReader values;

    RuleReader(PlaceCode place, LocalDate checkedOn, Map<String, Source> sources) {
        this.place = place;
        this.checkedOn = checkedOn;
        this.values = new ValuesReader(sources);
    }

    Rule read(Fields fields) {
        String id = id(fields);
        Check check = PackReader.check(fields);
        String title = fields.text("title");
        Applies applies =
                AppliesReader.read(
                        check,
                        fields.has("applies")
                                ? Optional.of(fields.fields("applies"))
                                : Optional.empty());
        Rule.Method method = MethodReader.read(fields, check);
        String words = fields.optionalText("words").orElse("");
        List<DatedValue> dated = values.read(fields, check);
        Provenance provenance = fields.choice("provenance", Provenance.values());
        Rule.Weight weight = WeightReader.read(fields, check, provenance);
        refuseRememberedOrder(fields, dated, provenance);
        LocalDate verifiedOn = verifiedOn(fields);
        Rule.Kinship kinship = kinship(fields);
        String note = fields.optionalText("note").orElse("");
        fields.end();
        return new Rule(
                id,
                place,
                check,
                title,
                applies,
                method,
                words,
                dated,
                weight,
                provenance,
                verifiedOn,
                kinship,
                note);
    }

    private String id(Fields fields) {
        String id = fields.text("id");
        if (!id.startsWith(place.rulePrefix()) || id.length() == place.rulePrefix().length()) {
            throw fields.refuse(
                    "id",
                    "does not begin with its place",
                    place.rulePrefix() + "something",
                    "Begin the id with '" + place.rulePrefix() + "'.");
        }
        for (String part : id.split("\\.", -1)) {
            if (!Texts.isKebab(part)) {
                throw fields.refuse(
                        "id",
                        "is not an id",
                        "small letters, digits, hyphens and full stops, such as "
                                + place.rulePrefix()
                                + "governor-cut-out.truck",
                        "Write it without spaces, capitals and other signs.");
            }
        }
        return id;
    }

    private static void refuseRememberedOrder(
            Fields fields, List<DatedValue> dated, Provenance provenance) {
        boolean binds =
                dated.stream()
                        .filter(value -> value.limit() instanceof Limit.Duty)
                        .flatMap(value -> ((Limit.Duty) value.limit()).orders().stream())
                        .anyMatch(order -> order.force() == TestOrder.Force.BINDING);
        if (binds && !provenance.isText()) {
            throw fields.refuse(
                    "provenance",
                    "is not a text, and only an order that was read may bind",
                    "published, published-secondhand, or printed-order instead",
                    "Compare the order with its text, or write it as printed-order.");
        }
    }

    private LocalDate verifiedOn(Fields fields) {
        if (!fields.has("verified")) {
            return checkedOn;
        }
        Fields verified = fields.fields("verified");
        LocalDate on = verified.date("on");
        verified.optionalText("against");
        verified.end();
        return on;
    }

    private static Rule.Kinship kinship(Fields fields) {
        List<String> overrides = fields.optionalTexts("overrides");
        String why = fields.optionalText("why").orElse("");
        String because = fields.optionalText("bound-because").orElse("");
        if (!overrides.isEmpty() && why.isEmpty()) {
            throw fields.refuse(
                    "overrides",
                    "has no reason",
                    "why: the reason",
                    "Say why the parent's rule does not hold here.");
        }
        Optional<Conflict> conflict = Optional.empty();
        if (fields.has("conflict")) {
            conflict = Optional.of(conflict(fields.fields("conflict")));
        }
        return new Rule.Kinship(overrides, why.isEmpty() ? because : why, conflict);
    }

    private static Conflict conflict(Fields fields) {
        String with = fields.text("with");
        if (fields.truth("applied")) {
            throw fields.refuse(
                    "applied",
                    "is yes",
                    "no",
                    "Write the conflict on the rule that is not applied.");
        }
        Conflict conflict = new Conflict(with, fields.truth("settled"), fields.text("why"));
        fields.end();
        return conflict;
    }
}
