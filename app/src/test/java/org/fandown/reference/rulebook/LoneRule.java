package org.fandown.reference.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.rulebook.Pack;
import org.fandown.rulebook.Rule;
import org.fandown.rulebook.Rulebook;
import org.fandown.rulebook.RulesInForce;
import org.fandown.rulebook.Standing;

/** One rule apart from all that is applied in its stead or disagrees with it. */
final class LoneRule {
    private LoneRule() {}

    /**
     * The rule of a row as if it were the only one.
     *
     * @param inPlace the rules as they are in force
     * @throws AssertionError if the rule is applied and undisputed, so that the row has no need to
     *     take it apart
     */
    static RulesInForce of(Triple row, RulesInForce inPlace) {
        boolean disputed =
                inPlace.setAside().stream()
                        .anyMatch(s -> s.by().equals(row.rule()) && !s.settled());
        boolean judged =
                inPlace.byId(row.rule())
                        .filter(r -> r.rule().weight().standing().isJudged())
                        .isPresent();
        if (judged && !disputed) {
            throw new AssertionError(row.rule() + " is in force; write in-place in its row");
        }
        Pack pack = inPlace.lineage().get(0);
        List<Rule> rules = new ArrayList<>();
        Rule rule = BoundaryTriples.find(pack, row.rule()).orElseThrow();
        rules.add(alone(rule));
        if (BoundaryTriples.isCount(rule)) {
            inPlace.of(Check.PUSHROD_APPLIED_STROKE).forEach(r -> rules.add(alone(r.rule())));
        }
        Pack bare =
                new Pack(
                        pack.place(),
                        pack.name(),
                        Optional.empty(),
                        pack.about(),
                        pack.checkedOn(),
                        List.of(),
                        rules);
        return Rulebook.of(List.of(bare)).inForce(pack.place(), inPlace.vehicle(), row.on());
    }

    private static Rule alone(Rule rule) {
        Rule.Weight weight = rule.weight();
        Standing standing = weight.standing().isJudged() ? weight.standing() : Standing.ADVISORY;
        return new Rule(
                rule.id(),
                rule.place(),
                rule.check(),
                rule.title(),
                rule.applies(),
                rule.method(),
                rule.words(),
                rule.values(),
                new Rule.Weight(
                        standing,
                        weight.evidence(),
                        weight.severity(),
                        weight.outOfService(),
                        weight.approximate()),
                rule.provenance(),
                rule.verifiedOn(),
                new Rule.Kinship(List.of(), "", Optional.empty()),
                rule.note());
    }
}
