package org.fandown.rulebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.CheckKind;
import org.fandown.check.PlaceCode;
import org.fandown.check.Severity;
import org.fandown.document.Fields;
import org.fandown.document.Node;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;

/** Reads one rule of a pack. */
final class RuleReader {
    private final PlaceCode place;
    private final LocalDate checkedOn;
    private final Map<String, Source> sources;

    RuleReader(PlaceCode place, LocalDate checkedOn, Map<String, Source> sources) {
        this.place = place;
        this.checkedOn = checkedOn;
        this.sources = sources;
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
        Rule.Method method = method(fields, check);
        String words = fields.optionalText("words").orElse("");
        List<DatedValue> values = values(fields, check);
        Provenance provenance = fields.choice("provenance", Provenance.values());
        Rule.Weight weight = weight(fields, check, provenance);
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
                values,
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
                    "Begin the id with " + place.rulePrefix());
        }
        return id;
    }

    private static Rule.Method method(Fields fields, Check check) {
        List<Demand> demands =
                fields.has("conditions")
                        ? DemandReader.read(fields.fields("conditions"))
                        : new ArrayList<>();
        if (fields.has("applications")) {
            demands.add(DemandReader.applications(fields));
        }
        GaugeChoice gauge =
                fields.optionalChoice("gauge", GaugeChoice.values()).orElse(GaugeChoice.EACH);
        Optional<Quantity> roundedTo = fields.optionalQuantity("rounded-to", Dimension.TIME);
        return new Rule.Method(demands, gauge, roundedTo, window(fields, check));
    }

    private static Optional<Rule.Window> window(Fields fields, Check check) {
        if (!fields.has("window")) {
            if (check.kind() == CheckKind.BUILD_UP) {
                throw fields.refuse(
                        "check",
                        "is timed between two pressures, but the rule has no window",
                        "window: { from: [85 psi, 586 kPa], to: [100 psi, 690 kPa] }",
                        "Add the window.");
            }
            return Optional.empty();
        }
        Fields window = fields.fields("window");
        Optional<Bound> from =
                window.has("from")
                        ? Optional.of(BoundReader.read(window, "from", Dimension.GAUGE_PRESSURE))
                        : Optional.empty();
        Bound to = BoundReader.read(window, "to", Dimension.GAUGE_PRESSURE);
        window.end();
        return Optional.of(new Rule.Window(from, to));
    }

    private List<DatedValue> values(Fields fields, Check check) {
        List<DatedValue> values = new ArrayList<>();
        if (!fields.has("values")) {
            values.add(
                    new DatedValue(
                            Optional.empty(),
                            Optional.empty(),
                            LimitReader.read(fields, check),
                            source(fields)));
            return values;
        }
        for (Node node : fields.list("values")) {
            values.add(datedValue(Fields.of(node), check, values));
        }
        if (values.isEmpty()) {
            throw fields.refuse(
                    "values", "is empty", "at least one dated value", "Add a value or use limit.");
        }
        return values;
    }

    private DatedValue datedValue(Fields fields, Check check, List<DatedValue> earlier) {
        Optional<LocalDate> from = Optional.empty();
        if (!fields.text("from").equals("always")) {
            from = Optional.of(fields.date("from"));
        }
        Optional<LocalDate> until = fields.optionalDate("until");
        boolean orderly =
                earlier.isEmpty()
                        || (from.isPresent()
                                && earlier.get(earlier.size() - 1)
                                        .from()
                                        .map(from.get()::isAfter)
                                        .orElse(true));
        if (!orderly) {
            throw fields.refuse(
                    "from",
                    "is not later than the value before it",
                    "dates in rising order",
                    "Put the older value first.");
        }
        if (until.isPresent() && from.isPresent() && !until.get().isAfter(from.get())) {
            throw fields.refuse(
                    "until", "is not after from", "a later date", "Correct one of the two dates.");
        }
        DatedValue value =
                new DatedValue(from, until, LimitReader.read(fields, check), source(fields));
        fields.end();
        return value;
    }

    private Source source(Fields fields) {
        if (!fields.isMap("source")) {
            return known(fields, "source", fields.text("source"));
        }
        Fields detail = fields.fields("source");
        Source base = known(detail, "key", detail.text("key"));
        String section = detail.text("section");
        detail.end();
        return new Source(base.work(), base.edition(), section);
    }

    private Source known(Fields fields, String key, String name) {
        Source source = sources.get(name);
        if (source == null) {
            throw fields.refuse(
                    key,
                    "is not one of the pack's sources",
                    String.join(", ", sources.keySet()),
                    "Add it to sources, with work, edition and section.");
        }
        return source;
    }

    private static Rule.Weight weight(Fields fields, Check check, Provenance provenance) {
        boolean duty = check.kind() == CheckKind.DUTY;
        Standing standing =
                fields.optionalChoice("standing", Standing.values())
                        .orElse(duty ? Standing.DUTY : Standing.REQUIRED);
        if (duty && standing != Standing.DUTY && standing != Standing.HISTORIC) {
            throw fields.refuse(
                    "standing", "does not fit a duty", "duty, historic", "Leave standing out.");
        }
        if (standing == Standing.REQUIRED
                && provenance == Provenance.FROM_MEMORY
                && !fields.has("bound-because")) {
            throw fields.refuse(
                    "provenance",
                    "is from-memory, and such a limit may not bind by itself",
                    "standing: unconfirmed or advisory, or bound-because: a reason",
                    "Compare the limit with its text, or weaken its standing.");
        }
        EvidenceDemand evidence =
                fields.optionalChoice("evidence", EvidenceDemand.values())
                        .orElse(
                                standing == Standing.REQUIRED
                                        ? EvidenceDemand.ASKED
                                        : EvidenceDemand.IF_OBSERVED);
        Severity severity =
                fields.optionalChoice("severity", Severity.values()).orElse(Severity.MAJOR);
        boolean outOfService = fields.optionalTruth("out-of-service").orElse(false);
        boolean approximate = fields.optionalTruth("approximate").orElse(false);
        return new Rule.Weight(standing, evidence, severity, outOfService, approximate);
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
