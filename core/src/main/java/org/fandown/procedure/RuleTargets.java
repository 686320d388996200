package org.fandown.procedure;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fandown.check.Component;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.NumericLimit;
import org.fandown.rulebook.Rule;
import org.fandown.rulebook.Ruling;
import org.fandown.units.Num;

/** Takes from rules how far a check goes: windows, limits to pump down to, parts and wheels. */
final class RuleTargets {
    private static final int SECONDS_A_PART = 8;
    private static final int LEAST_PARTS = 5;

    private final Edges edges;

    RuleTargets(Rig rig) {
        edges = new Edges(rig.durations());
    }

    /** Sets what follows from the rulings of one step. */
    void set(Recipe recipe, List<Ruling> rulings) {
        switch (recipe.check) {
            case BUILD_UP -> window(recipe, rulings);
            case LOW_AIR_WARNING -> warning(recipe, rulings);
            case PARKING_VALVE_CLOSING, TRAILER_SUPPLY_CLOSING -> closing(recipe, rulings);
            case PRESSURE_BEFORE_DRIVING -> beforeDriving(recipe, rulings);
            case WALK_ROUND -> parts(recipe, rulings);
            case PUSHROD_APPLIED_STROKE, PUSHROD_FREE_STROKE, ADJUSTER_HAND_PLAY ->
                    wheels(recipe, rulings);
            default -> {
                // nothing to take from the rules
            }
        }
    }

    private void window(Recipe recipe, List<Ruling> rulings) {
        int from = Need.NO_LIMIT;
        int to = 0;
        for (Ruling ruling : rulings) {
            Optional<Rule.Window> window = ruling.rule().method().window();
            from =
                    Math.min(
                            from,
                            window.flatMap(w -> w.from())
                                    .flatMap(edges::psi)
                                    .map(RuleTargets::whole)
                                    .orElse(from));
            to =
                    Math.max(
                            to,
                            window.map(w -> w.to())
                                    .flatMap(edges::psi)
                                    .map(RuleTargets::whole)
                                    .orElse(0));
        }
        from = from == Need.NO_LIMIT ? 85 : from;
        recipe.need(
                Need.atMost(
                        from,
                        Weight.SPOILS,
                        "the clock starts when the needle passes " + from + " psi"));
        recipe.change(Change.Kind.RISE, to == 0 ? 100 : to);
    }

    private static int whole(double psi) {
        return (int) Num.round(psi);
    }

    private void warning(Recipe recipe, List<Ruling> rulings) {
        int lowest = 0;
        for (Ruling ruling : rulings) {
            lowest = Math.max(lowest, numeric(ruling).flatMap(edges::lower).orElse(0));
        }
        if (lowest > 0) {
            recipe.change(Change.Kind.FALL, lowest);
        }
    }

    private void closing(Recipe recipe, List<Ruling> rulings) {
        int psi = recipe.change.psi();
        for (Ruling ruling : rulings) {
            Optional<NumericLimit> limit = numeric(ruling);
            psi = Math.max(psi, limit.flatMap(edges::lower).orElse(0));
            psi = Math.min(psi, limit.flatMap(edges::upper).orElse(psi));
        }
        recipe.change(recipe.change.kind(), psi);
    }

    private void beforeDriving(Recipe recipe, List<Ruling> rulings) {
        for (Ruling ruling : rulings) {
            numeric(ruling)
                    .flatMap(edges::lower)
                    .ifPresent(
                            psi ->
                                    recipe.need(
                                            Need.atLeast(
                                                    psi,
                                                    Weight.RULE,
                                                    "the rule "
                                                            + ruling.rule().id()
                                                            + " asks for it")));
        }
    }

    private static Optional<NumericLimit> numeric(Ruling ruling) {
        return ruling.limit() instanceof Limit.Numeric numeric
                ? Optional.of(numeric.edges())
                : Optional.empty();
    }

    private static void parts(Recipe recipe, List<Ruling> rulings) {
        Set<Component> parts = new LinkedHashSet<>();
        for (Ruling ruling : rulings) {
            if (ruling.limit() instanceof Limit.LookAt look) {
                parts.addAll(look.parts());
            }
        }
        if (parts.isEmpty()) {
            parts.addAll(
                    List.of(
                            Component.AIR_SYSTEM,
                            Component.AIR_LINES,
                            Component.BRAKE_CHAMBERS,
                            Component.SLACK_ADJUSTERS,
                            Component.BRAKE_LININGS,
                            Component.PARKING_BRAKE,
                            Component.SERVICE_BRAKES));
        }
        recipe.parts = List.copyOf(parts);
        recipe.tenths += 10 * SECONDS_A_PART * Math.max(LEAST_PARTS, parts.size());
    }

    private static void wheels(Recipe recipe, List<Ruling> rulings) {
        Set<org.fandown.vehicle.WheelId> wheels = new LinkedHashSet<>();
        rulings.forEach(ruling -> wheels.addAll(ruling.wheels()));
        if (!wheels.isEmpty()) {
            int each = recipe.check == org.fandown.check.Check.ADJUSTER_HAND_PLAY ? 12 : 25;
            recipe.tenths += 10 * each * (wheels.size() - recipe.wheels.size());
            recipe.wheels = List.copyOf(wheels);
        }
    }
}
