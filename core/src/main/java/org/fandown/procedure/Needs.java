package org.fandown.procedure;

import java.util.List;
import org.fandown.check.Check;
import org.fandown.rulebook.Ruling;

/** Brings together what a recipe, the rules and safety ask for. */
final class Needs {
    private final Rig rig;

    Needs(Rig rig) {
        this.rig = rig;
    }

    /** The needs of a check; the recipe takes from the rules how the check is made. */
    NeedBook book(Recipe recipe, List<Ruling> rulings) {
        NeedBook ruled = new NeedBook();
        RuleDemands demands = new RuleDemands(rig);
        rulings.forEach(ruling -> demands.add(ruling, ruled, recipe));
        new RuleTargets(rig).set(recipe, rulings);
        NeedBook book = new NeedBook();
        recipe.needs.forEach(book::add);
        for (Need need : ruled.list()) {
            boolean joins = need.aspect() == Aspect.PRESSURE || need.aspect() == Aspect.CHOCKS;
            if (joins) {
                book.add(need);
            } else {
                book.put(weightier(recipe, need));
            }
        }
        knobWithOpenLine(recipe, book, ruled.has(Aspect.TRAILER_AIR));
        if (!book.has(Aspect.CHOCKS) && recipe.check != Check.PRESSURE_BEFORE_DRIVING) {
            book.add(Need.is(Aspect.CHOCKS, 1, Weight.SAFETY, "chock before anything else"));
        }
        return ruled.isContradictory() ? ruled : book;
    }

    /** A rule and a recipe that ask for the same keep the recipe's reason. */
    private static Need weightier(Recipe recipe, Need need) {
        for (Need own : recipe.needs) {
            boolean same = own.aspect() == need.aspect() && own.least() == need.least();
            if (same && own.most() == need.most()) {
                return own;
            }
        }
        return need;
    }

    /**
     * With an open supply line the knob is pushed in the step itself. The trailer need not hold air
     * then, unless a rule says so.
     */
    private void knobWithOpenLine(Recipe recipe, NeedBook book, boolean charged) {
        boolean knob =
                recipe.check == Check.TRAILER_SUPPLY_CLOSING
                        || recipe.check == Check.TRACTOR_PROTECTION;
        boolean open =
                book.asks(Aspect.LINES, Lines.SUPPLY_PARTED)
                        || book.asks(Aspect.LINES, Lines.BOTH_PARTED);
        if (knob && open) {
            book.remove(Aspect.TRAILER_SUPPLY);
            if (!charged) {
                book.remove(Aspect.TRAILER_AIR);
            }
            book.add(Need.atLeast(65, Weight.SPOILS, "the knob does not stay in below"));
            recipe.change(Change.Kind.ESCAPE, recipe.change.psi());
            recipe.caution(
                    "The open hose blows and whips: nobody between the units, line end tied.");
        }
    }
}
