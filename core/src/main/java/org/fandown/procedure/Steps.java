package org.fandown.procedure;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fandown.check.Check;
import org.fandown.check.CheckKind;
import org.fandown.rulebook.EvidenceDemand;
import org.fandown.rulebook.RulesInForce;
import org.fandown.rulebook.Ruling;

/**
 * Turns the rules in force into checks a person can make.
 *
 * <p>Where and how comes from a recipe; engine, brakes, pressures, times and limits come from the
 * rules, which replace what the recipe says of the same thing. Two rules that cannot be met in one
 * go make two steps.
 */
public final class Steps {
    private final RulesInForce rules;
    private final Rig rig;
    private final Map<Check, CheckStep> hosts = new EnumMap<>(Check.class);
    private final List<CheckStep> steps = new ArrayList<>();
    private final List<StepSet.LeftOut> leftOut = new ArrayList<>();

    private Steps(RulesInForce rules, Durations durations) {
        this.rules = rules;
        this.rig = new Rig(rules.vehicle(), durations);
    }

    /** The checks for a vehicle in a place; good practice where the place asks for none. */
    public static StepSet of(RulesInForce rules, Durations durations, Scope scope) {
        StepSet set = new Steps(rules, durations).collect(scope);
        boolean none = set.checks().isEmpty() && scope == Scope.ASKED;
        return none ? new Steps(rules, durations).collect(Scope.THOROUGH) : set;
    }

    private StepSet collect(Scope scope) {
        for (Check check : Check.values()) {
            List<Ruling> asked = asked(check);
            boolean practice = scope == Scope.THOROUGH && GoodPractice.asks(check);
            if (rig.concerns(check) && (practice || !asked.isEmpty())) {
                include(check, asked);
            }
        }
        return new StepSet(rules, scope, merged(), leftOut);
    }

    private List<Ruling> asked(Check check) {
        return rules.of(check).stream()
                .filter(Ruling::decides)
                .filter(r -> r.rule().weight().evidence() == EvidenceDemand.ASKED)
                .toList();
    }

    private void include(Check check, List<Ruling> asked) {
        if (check.kind() == CheckKind.REPORT || check.kind() == CheckKind.DUTY) {
            return;
        }
        if (recipe(check).isEmpty()) {
            if (GoodPractice.host(check).isEmpty() && !asked.isEmpty()) {
                leftOut.add(new StepSet.LeftOut(check, GoodPractice.whyNot(check)));
            }
            GoodPractice.host(check).ifPresent(host -> hosts.put(check, bare(check, asked)));
            return;
        }
        List<Ruling> open = new ArrayList<>(asked);
        do {
            List<Ruling> together = together(check, open);
            steps.add(step(check, together));
            open.removeAll(together);
        } while (!open.isEmpty());
    }

    private Optional<Recipe> recipe(Check check) {
        return new CabRecipes(rig)
                .find(check)
                .or(() -> new OutsideRecipes(rig).find(check))
                .or(() -> new RollRecipes(rig).find(check));
    }

    /** As many rulings, from the first on, as can be met in one go. */
    private List<Ruling> together(Check check, List<Ruling> open) {
        List<Ruling> chosen = new ArrayList<>();
        for (Ruling ruling : open) {
            List<Ruling> more = new ArrayList<>(chosen);
            more.add(ruling);
            if (chosen.isEmpty() || !book(recipe(check).orElseThrow(), more).isContradictory()) {
                chosen = more;
            }
        }
        return chosen;
    }

    private NeedBook book(Recipe recipe, List<Ruling> rulings) {
        return new Needs(rig).book(recipe, rulings);
    }

    private CheckStep step(Check check, List<Ruling> rulings) {
        Recipe recipe = recipe(check).orElseThrow();
        NeedBook book = book(recipe, rulings);
        int more = Math.max(recipe.hold - 60, 0);
        return new CheckStep(
                List.of(check),
                rulings,
                methods(check),
                new CheckStep.Words(recipe.action, recipe.lookFor, recipe.caution),
                new CheckStep.Manner(
                        recipe.spot,
                        recipe.tenths + 10 * more,
                        recipe.rpm,
                        recipe.hold,
                        recipe.helper,
                        recipe.wheels,
                        recipe.parts),
                book.list(),
                recipe.change,
                recipe.leaves);
    }

    /** What the place tells of how a check is made. */
    private List<Ruling> methods(Check check) {
        return rules.rulings().stream().filter(r -> r.tellsMethodOf(check)).toList();
    }

    private CheckStep bare(Check check, List<Ruling> rulings) {
        return new CheckStep(
                List.of(check),
                rulings,
                methods(check),
                new CheckStep.Words(check.title(), "", ""),
                new CheckStep.Manner(Spot.CAB, 0, 0, 0, false, List.of(), List.of()),
                List.of(),
                Change.NONE,
                List.of());
    }

    /** Puts checks that are made in passing to the step they are made in. */
    private List<CheckStep> merged() {
        List<CheckStep> merged = new ArrayList<>(steps);
        for (Map.Entry<Check, CheckStep> entry : hosts.entrySet()) {
            Check host = GoodPractice.host(entry.getKey()).orElseThrow();
            int at = index(merged, host);
            if (at >= 0) {
                merged.set(at, with(merged.get(at), entry.getValue()));
            } else if (!entry.getValue().rulings().isEmpty()) {
                String why = "it is found in the step " + host.id() + ", which is not asked for";
                leftOut.add(new StepSet.LeftOut(entry.getKey(), why));
            }
        }
        return merged;
    }

    private static int index(List<CheckStep> steps, Check check) {
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).check() == check) {
                return i;
            }
        }
        return -1;
    }

    private static CheckStep with(CheckStep host, CheckStep guest) {
        List<Check> checks = new ArrayList<>(host.checks());
        checks.addAll(guest.checks());
        List<Ruling> rulings = new ArrayList<>(host.rulings());
        rulings.addAll(guest.rulings());
        Set<Ruling> methods = new LinkedHashSet<>(host.methods());
        methods.addAll(guest.methods());
        return new CheckStep(
                checks,
                rulings,
                List.copyOf(methods),
                host.words(),
                host.manner(),
                host.needs(),
                host.change(),
                host.leaves());
    }
}
