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
    private RulebookCheck() {}

    static void check(Rulebook book) {
        for (PlaceCode place : book.places()) {
            book.pack(place).ifPresent(pack -> checkPack(book, pack));
        }
    }

    private static void checkPack(Rulebook book, Pack pack) {
        pack.parent()
                .ifPresent(
                        parent -> {
                            if (book.pack(parent).isEmpty()) {
                                throw bad(
                                        pack, "names the parent " + parent + ", which has no pack");
                            }
                        });
        checkNoCircle(book, pack);
        List<Pack> lineage = book.lineage(pack.place());
        Map<String, Rule> own = byId(List.of(pack));
        Map<String, Rule> inherited = byId(lineage.subList(1, lineage.size()));
        for (Rule rule : pack.rules()) {
            for (String overridden : rule.kinship().overrides()) {
                Rule target = inherited.get(overridden);
                if (target == null) {
                    throw bad(
                            pack,
                            "has rule "
                                    + rule.id()
                                    + " overriding "
                                    + overridden
                                    + ", which no parent has");
                }
            }
            rule.kinship()
                    .conflict()
                    .ifPresent(
                            conflict -> {
                                Rule other =
                                        own.getOrDefault(
                                                conflict.with(), inherited.get(conflict.with()));
                                if (other == null || other.check() != rule.check()) {
                                    throw bad(
                                            pack,
                                            "has rule "
                                                    + rule.id()
                                                    + " in conflict with "
                                                    + conflict.with()
                                                    + ", which is no rule of the same check here or in a parent");
                                }
                            });
        }
    }

    private static void checkNoCircle(Rulebook book, Pack pack) {
        Pack at = pack;
        for (int step = 0; at.parent().isPresent(); step++) {
            if (step > book.places().size()) {
                throw bad(pack, "is its own ancestor");
            }
            Pack child = at;
            at =
                    book.pack(at.parent().get())
                            .orElseThrow(() -> bad(child, "names a parent without a pack"));
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

    private static IllegalArgumentException bad(Pack pack, String what) {
        return new IllegalArgumentException("Rule pack " + pack.place() + " " + what + ".");
    }
}
