package org.fandown.rulebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fandown.check.Check;
import org.fandown.check.PlaceCode;
import org.fandown.rulebook.RulesInForce.Coverage;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/** Works out which rules are in force. */
final class Resolution {
    private final List<Pack> lineage;
    private final Vehicle vehicle;
    private final LocalDate day;
    private final List<Ruling> applying = new ArrayList<>();
    private final List<Ruling> rulings = new ArrayList<>();
    private final List<SetAside> setAside = new ArrayList<>();

    Resolution(List<Pack> lineage, Vehicle vehicle, LocalDate day) {
        this.lineage = lineage;
        this.vehicle = vehicle;
        this.day = day;
    }

    RulesInForce resolve() {
        for (Pack pack : lineage) {
            for (Rule rule : pack.rules()) {
                applies(rule).ifPresent(applying::add);
            }
        }
        Map<String, String> overridden = overridden();
        for (Ruling ruling : applying) {
            place(ruling, overridden);
        }
        rulings.sort(Comparator.comparing(r -> r.rule().check()));
        return new RulesInForce(lineage, vehicle, day, rulings, setAside, coverage());
    }

    private Optional<Ruling> applies(Rule rule) {
        Optional<DatedValue> value = rule.on(day);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        Fit fit = rule.applies().fit(vehicle);
        List<WheelId> wheels = List.of();
        if (isPerWheel(rule.check()) && fit.answer() != Fit.Answer.NO) {
            wheels = rule.applies().wheels(vehicle);
            if (wheels.isEmpty()) {
                return Optional.empty();
            }
        }
        return fit.answer() == Fit.Answer.NO
                ? Optional.empty()
                : Optional.of(new Ruling(rule, value.get(), fit, wheels));
    }

    static boolean isPerWheel(Check check) {
        return switch (check.kind()) {
            case WHEEL_VALUE, WHEEL_YES_NO, AXLE_MATCH, BRAKE_COUNT -> true;
            default -> false;
        };
    }

    private Map<String, String> overridden() {
        Map<String, String> by = new TreeMap<>();
        for (Ruling ruling : applying) {
            for (String id : ruling.rule().kinship().overrides()) {
                by.putIfAbsent(id, ruling.rule().id());
            }
        }
        return by;
    }

    private void place(Ruling ruling, Map<String, String> overridden) {
        Rule rule = ruling.rule();
        String overrider = overridden.get(rule.id());
        Optional<String> published = publishedInstead(rule);
        if (overrider != null) {
            setAside.add(new SetAside(ruling, SetAside.Reason.OVERRIDDEN, overrider, true));
        } else if (rule.isSetAside() && inForce(rule.kinship().conflict().orElseThrow().with())) {
            Conflict conflict = rule.kinship().conflict().orElseThrow();
            setAside.add(
                    new SetAside(
                            ruling, SetAside.Reason.CONFLICT, conflict.with(), conflict.settled()));
        } else if (published.isPresent()) {
            setAside.add(
                    new SetAside(
                            ruling, SetAside.Reason.PUBLISHED_TEXT_KNOWN, published.get(), true));
        } else {
            rulings.add(ruling);
        }
    }

    private boolean inForce(String id) {
        return applying.stream().anyMatch(r -> r.rule().id().equals(id));
    }

    private Optional<String> publishedInstead(Rule rule) {
        if (rule.weight().standing() != Standing.UNCONFIRMED) {
            return Optional.empty();
        }
        return applying.stream()
                .map(Ruling::rule)
                .filter(r -> r.check() == rule.check())
                .filter(r -> r.weight().standing() == Standing.REQUIRED)
                .filter(r -> r.provenance() != Provenance.FROM_MEMORY)
                .map(Rule::id)
                .findFirst();
    }

    private List<Coverage> coverage() {
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
            boolean covered =
                    rulings.stream()
                            .anyMatch(
                                    r ->
                                            r.rule().check() == check
                                                    && r.rule().place().equals(pack.place())
                                                    && (r.decides()
                                                            || r.rule().weight().standing()
                                                                    == Standing.DUTY));
            if (covered) {
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

    private String gapText(Check check) {
        for (Gap gap : lineage.get(0).gaps()) {
            if (gap.check() == check) {
                return gap.says();
            }
        }
        return "No rule of " + lineage.get(0).name() + " fits this vehicle.";
    }
}
