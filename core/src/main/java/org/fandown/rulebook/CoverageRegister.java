package org.fandown.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.PlaceCode;
import org.fandown.rulebook.RulesInForce.Coverage;
import org.fandown.vehicle.Vehicle;

/** Which expected checks a place has no deciding rule of its own for, and what stands in. */
final class CoverageRegister {
    private final List<Pack> lineage;
    private final Vehicle vehicle;
    private final List<Ruling> rulings;

    CoverageRegister(List<Pack> lineage, Vehicle vehicle, List<Ruling> rulings) {
        this.lineage = lineage;
        this.vehicle = vehicle;
        this.rulings = rulings;
    }

    List<Coverage> gaps() {
        List<Coverage> gaps = new ArrayList<>();
        for (Check check : Check.values()) {
            if (check.expectedEverywhere() && CheckScope.concerns(check, vehicle)) {
                cover(check).ifPresent(gaps::add);
            }
        }
        return gaps;
    }

    private Optional<Coverage> cover(Check check) {
        Optional<PlaceCode> from = Optional.empty();
        for (Pack pack : lineage) {
            if (rulings.stream().anyMatch(r -> covers(r, check, pack.place()))) {
                from = Optional.of(pack.place());
                break;
            }
        }
        PlaceCode own = lineage.get(0).place();
        if (from.isPresent() && from.get().equals(own)) {
            return Optional.empty();
        }
        return Optional.of(new Coverage(check, from, gapText(check)));
    }

    private static boolean covers(Ruling ruling, Check check, PlaceCode place) {
        Rule rule = ruling.rule();
        return rule.check() == check
                && rule.place().equals(place)
                && (ruling.decides() || rule.weight().standing() == Standing.DUTY);
    }

    private String gapText(Check check) {
        for (Gap gap : lineage.get(0).gaps()) {
            if (gap.check() == check) {
                return gap.says();
            }
        }
        return "No rule of " + lineage.get(0).name() + " fits this vehicle.";
    }
}
