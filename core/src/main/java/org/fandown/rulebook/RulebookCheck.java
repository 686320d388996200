package org.fandown.rulebook;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.fandown.check.PlaceCode;

/**
 * Checks that packs fit together: parents exist, references resolve, a pack does not override a
 * stranger.
 */
final class RulebookCheck {
    private final Rulebook book;
    private final Pack pack;

    private RulebookCheck(Rulebook book, Pack pack) {
        this.book = book;
        this.pack = pack;
    }

    static void check(Rulebook book) {
        for (PlaceCode place : book.places()) {
            book.pack(place).ifPresent(pack -> new RulebookCheck(book, pack).check());
        }
    }

    private void check() {
        checkAncestors();
        List<Pack> lineage = book.lineage(pack.place());
        Map<String, Rule> inherited = byId(lineage.subList(1, lineage.size()));
        Map<String, Rule> known = new TreeMap<>(inherited);
        known.putAll(byId(List.of(pack)));
        for (Rule rule : pack.rules()) {
            for (String overridden : rule.kinship().overrides()) {
                checkOverride(rule, overridden, inherited);
            }
            rule.kinship().conflict().ifPresent(c -> checkConflict(rule, c, known));
        }
    }

    private void checkAncestors() {
        Pack at = pack;
        for (int step = 0; at.parent().isPresent(); step++) {
            PlaceCode parent = at.parent().get();
            if (step >= book.places().size()) {
                throw unfit(
                        "",
                        "parent",
                        pack.parent().orElse(parent).code(),
                        "makes the place its own ancestor",
                        "a place whose parents lead away from here",
                        "Name another parent, or none.");
            }
            if (book.pack(parent).isEmpty()) {
                throw new RulebookCheck(book, at)
                        .unfit(
                                "",
                                "parent",
                                parent.code(),
                                "has no rule pack",
                                "a place with a pack, such as CA or US",
                                "Correct the code, or add a pack for the parent.");
            }
            at = book.pack(parent).get();
        }
    }

    private void checkOverride(Rule rule, String overridden, Map<String, Rule> inherited) {
        if (!inherited.containsKey(overridden)) {
            throw unfit(
                    rule.id(),
                    "overrides",
                    overridden,
                    "is no rule of a parent of this place",
                    pack.parent()
                            .map(p -> "the id of a rule of " + p + " or of its parents")
                            .orElse("nothing, since the place has no parent"),
                    "Correct the id; `fandown rules` lists those of the parent.");
        }
    }

    private void checkConflict(Rule rule, Conflict conflict, Map<String, Rule> known) {
        Rule other = known.get(conflict.with());
        boolean itself = conflict.with().equals(rule.id());
        if (other == null || itself || other.check() != rule.check()) {
            throw unfit(
                    rule.id(),
                    "conflict",
                    conflict.with(),
                    other == null
                            ? "is no rule of this place or of a parent"
                            : itself
                                    ? "is the rule itself"
                                    : "is about another check, " + other.check().id(),
                    "the id of another rule about " + rule.check().id(),
                    "Correct the id in with.");
        }
        Rule next = other;
        for (int step = 0; next != null && step < known.size(); step++) {
            String with = next.kinship().conflict().map(Conflict::with).orElse("");
            if (with.equals(rule.id())) {
                throw unfit(
                        rule.id(),
                        "conflict",
                        conflict.with(),
                        "yields to this rule in turn, so that neither would be applied",
                        "a conflict on the rules that are not applied only",
                        "Remove the conflict from the rule that is applied.");
            }
            next = known.get(with);
        }
    }

    private static Map<String, Rule> byId(List<Pack> packs) {
        Map<String, Rule> rules = new TreeMap<>();
        for (Pack pack : packs) {
            for (Rule rule : pack.rules()) {
                rules.put(rule.id(), rule);
            }
        }
        return rules;
    }

    private UnfitPackException unfit(
            String rule, String key, String value, String problem, String allowed, String next) {
        return new UnfitPackException(pack.place(), rule, key, value, problem, allowed, next);
    }
}
