package org.fandown.rulebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fandown.check.Check;
import org.fandown.check.PlaceCode;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Node;

/**
 * Reads a rule pack, strictly: an unknown or repeated key, a rule without a source, a date out of
 * order, a remembered limit that would bind without a reason, orders of tests that cannot be kept
 * together, or an expected check passed over in silence is refused.
 */
public final class PackReader {
    private PackReader() {}

    /**
     * Reads one pack.
     *
     * @throws DocumentException if the document is not a rule pack
     */
    public static Pack read(Node document) {
        Fields fields = Fields.of(document);
        PlaceCode place = place(fields, "place");
        String name = fields.text("name");
        Optional<PlaceCode> parent =
                fields.has("parent") ? Optional.of(place(fields, "parent")) : Optional.empty();
        LocalDate checkedOn = fields.date("checked-on");
        String about = fields.optionalText("about").orElse("");
        Map<String, Source> sources = sources(fields);
        List<Gap> gaps = gaps(fields, place);
        RuleReader reader = new RuleReader(place, checkedOn, sources);
        List<Rule> rules = new ArrayList<>();
        Set<String> ids = new LinkedHashSet<>();
        OrderCheck orders = new OrderCheck();
        for (Node node : fields.optionalList("rules")) {
            Fields ruleFields = Fields.of(node);
            Rule rule = reader.read(ruleFields);
            if (!ids.add(rule.id())) {
                throw ruleFields.refuse(
                        "id",
                        "is used twice in this pack",
                        "an id of its own",
                        "Rename one of the two rules.");
            }
            rules.add(rule);
            orders.add(rule, ruleFields);
        }
        fields.end();
        orders.check();
        requireNoSilence(fields, gaps, rules);
        return new Pack(place, name, parent, about, checkedOn, gaps, rules);
    }

    private static PlaceCode place(Fields fields, String key) {
        String code = fields.text(key);
        if (!PlaceCode.isWellFormed(code)) {
            throw fields.refuse(
                    key,
                    "is not a place code",
                    "an ISO 3166 code such as CA-ON",
                    "Write the code in capitals.");
        }
        return new PlaceCode(code);
    }

    private static Map<String, Source> sources(Fields fields) {
        Map<String, Source> sources = new LinkedHashMap<>();
        if (!fields.has("sources")) {
            return sources;
        }
        Fields map = fields.fields("sources");
        for (String key : map.keys()) {
            Fields source = map.fields(key);
            sources.put(
                    key,
                    new Source(
                            source.text("work"), source.text("edition"), source.text("section")));
            source.end();
        }
        return sources;
    }

    private static List<Gap> gaps(Fields fields, PlaceCode place) {
        List<Gap> gaps = new ArrayList<>();
        for (Node node : fields.optionalList("gaps")) {
            Fields gap = Fields.of(node);
            gaps.add(new Gap(place, check(gap), gap.text("says")));
            gap.end();
        }
        return gaps;
    }

    static Check check(Fields fields) {
        return Check.byId(fields.text("check"))
                .orElseThrow(
                        () ->
                                fields.refuse(
                                        "check",
                                        "is not a check this program knows",
                                        "a check id such as governor-cut-out",
                                        "See the list of checks in docs/rules.md."));
    }

    private static void requireNoSilence(Fields fields, List<Gap> gaps, List<Rule> rules) {
        for (Check check : Check.values()) {
            boolean said =
                    !check.expectedEverywhere()
                            || gaps.stream().anyMatch(g -> g.check() == check)
                            || rules.stream().anyMatch(r -> r.check() == check);
            if (!said) {
                throw fields.refuse(
                        "gaps",
                        "passes over " + check.id() + ", for which the pack has no rule",
                        "a rule or a gap entry for every check that is expected of all places",
                        "Add { check: " + check.id() + ", says: what was looked for } to gaps.");
            }
        }
    }
}
