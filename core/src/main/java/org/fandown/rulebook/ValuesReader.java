package org.fandown.rulebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.document.Fields;
import org.fandown.document.Node;

/** Reads what a rule demands, and from when to when, each with its source. */
final class ValuesReader {
    private final Map<String, Source> sources;

    ValuesReader(Map<String, Source> sources) {
        this.sources = sources;
    }

    List<DatedValue> read(Fields fields, Check check) {
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
        for (String key : List.of("limit", "source")) {
            if (fields.has(key)) {
                throw fields.refuse(
                        key,
                        "stands beside values, each of which has its own",
                        "values, or limit with source",
                        "Move it into the value it belongs to.");
            }
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
                    sources.isEmpty() ? "none yet" : String.join(", ", sources.keySet()),
                    "Add it to sources, with work, edition and section.");
        }
        return source;
    }
}
