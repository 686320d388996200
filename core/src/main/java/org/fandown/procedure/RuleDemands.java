package org.fandown.procedure;

import java.util.List;
import java.util.Optional;
import org.fandown.check.Circumstance;
import org.fandown.rulebook.Bound;
import org.fandown.rulebook.Demand;
import org.fandown.rulebook.NumericLimit;
import org.fandown.rulebook.Ruling;
import org.fandown.units.Dimension;
import org.fandown.units.Num;
import org.fandown.units.Unit;

/** Turns what a rule demands while a reading is taken into needs of a step. */
final class RuleDemands {
    private static final int FAST = (int) PlanDefault.FAST_IDLE.number();
    private static final int IDLE = (int) PlanDefault.IDLE.number();

    private final Rig rig;
    private final Edges edges;

    RuleDemands(Rig rig) {
        this.rig = rig;
        this.edges = new Edges(rig.durations());
    }

    /** Adds what one ruling demands to the needs of rules, and to how the check is made. */
    void add(Ruling ruling, NeedBook needs, Recipe recipe) {
        String why = "the rule " + ruling.rule().id() + " asks for it";
        for (Demand demand : ruling.rule().method().demands()) {
            state(demand, why).ifPresent(needs::add);
            demand.limit()
                    .ifPresent(limit -> amount(demand.circumstance(), limit, why, needs, recipe));
            if (demand.circumstance() == Circumstance.ENGINE) {
                speed(demand, recipe);
            }
        }
    }

    private Optional<Need> state(Demand demand, String why) {
        if (demand.states().isEmpty()) {
            return Optional.empty();
        }
        String first = demand.states().get(0);
        return switch (demand.circumstance()) {
            case ENGINE -> need(Aspect.ENGINE, first.equals("off") ? 0 : 1, why);
            case KEY -> need(Aspect.KEY, first.equals("on") ? 1 : 0, why);
            case PARKING_BRAKE -> need(Aspect.PARKING, first.equals("released") ? 1 : 0, why);
            case WHEELS -> chocks(first.equals("chocked"), why);
            case TRAILER_SUPPLY -> towing(Aspect.TRAILER_SUPPLY, first.equals("open") ? 1 : 0, why);
            case TRAILER -> towing(Aspect.TRAILER_AIR, first.equals("charged") ? 1 : 0, why);
            case TRAILER_LINES -> towing(Aspect.LINES, lines(first), why);
            default -> Optional.empty();
        };
    }

    private static Optional<Need> chocks(boolean chocked, String why) {
        return chocked
                ? Optional.of(Need.is(Aspect.CHOCKS, 1, Weight.SAFETY, why))
                : need(Aspect.CHOCKS, 0, why);
    }

    private Optional<Need> towing(Aspect aspect, int value, String why) {
        return rig.tows() ? need(aspect, value, why) : Optional.empty();
    }

    private static Optional<Need> need(Aspect aspect, int value, String why) {
        return Optional.of(Need.is(aspect, value, Weight.RULE, why));
    }

    private static int lines(String state) {
        if (state.equals("disconnected")) {
            return Lines.BOTH_PARTED;
        }
        if (state.equals("service-disconnected")) {
            return Lines.SERVICE_PARTED;
        }
        return state.equals("supply-disconnected") ? Lines.SUPPLY_PARTED : Lines.COUPLED;
    }

    private void amount(
            Circumstance what, NumericLimit limit, String why, NeedBook needs, Recipe recipe) {
        switch (what) {
            case START_PRESSURE -> pressure(limit, 0, why, needs);
            case RESERVOIR_PRESSURE -> pressure(limit, taken(recipe, limit), why, needs);
            case HELD_FOR -> hold(limit, recipe);
            case ENGINE_SPEED -> recipe.rpm = rpm(limit);
            default -> {
                // grades, speeds and counts do not change the order of work
            }
        }
    }

    /** Air that the application itself takes before the pressure is read. */
    private int taken(Recipe recipe, NumericLimit limit) {
        boolean applied = recipe.change.kind() == Change.Kind.APPLICATION;
        return applied ? edges.upper(limit).map(rig.durations()::application).orElse(0) : 0;
    }

    private void pressure(NumericLimit limit, int more, String why, NeedBook needs) {
        edges.lower(limit).ifPresent(l -> needs.add(Need.atLeast(l + more, Weight.RULE, why)));
        edges.upper(limit).ifPresent(u -> needs.add(Need.atMost(u + more, Weight.RULE, why)));
    }

    private static void hold(NumericLimit limit, Recipe recipe) {
        limit.lower()
                .map(edge -> edge.bound())
                .filter(bound -> bound instanceof Bound.Figure)
                .map(bound -> ((Bound.Figure) bound).printed().own())
                .filter(quantity -> quantity.dimension() == Dimension.TIME)
                .ifPresent(
                        quantity -> {
                            int seconds = (int) Math.ceil(quantity.valueIn(Unit.SECOND));
                            int more = Math.max(seconds - recipe.hold, 0);
                            recipe.hold += more;
                        });
    }

    private static int rpm(NumericLimit limit) {
        int most = limit.upper().map(edge -> speed(edge.bound())).orElse(FAST);
        int least = limit.lower().map(edge -> speed(edge.bound())).orElse(0);
        return Math.max(least, Math.min(most, FAST));
    }

    private static int speed(Bound bound) {
        boolean figure = bound instanceof Bound.Figure;
        if (!figure) {
            return FAST;
        }
        return (int) Num.round(((Bound.Figure) bound).printed().own().valueIn(Unit.RPM));
    }

    private static void speed(Demand demand, Recipe recipe) {
        if (demand.states().equals(List.of("fast-idle"))) {
            recipe.rpm = FAST;
        } else if (demand.states().equals(List.of("idle"))) {
            recipe.rpm = IDLE;
        }
    }
}
