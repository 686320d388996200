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
    private final Map<String, String> overridden = new TreeMap<>();
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
        for (Ruling ruling : applying) {
            for (String id : ruling.rule().kinship().overrides()) {
                overridden.putIfAbsent(id, ruling.rule().id());
            }
        }
        for (Ruling ruling : applying) {
            place(ruling);
        }
        rulings.sort(Comparator.comparing(r -> r.rule().check()));
        return new RulesInForce(lineage, vehicle, day, rulings, setAside, gaps());
    }

    private List<Coverage> gaps() {
        return new CoverageRegister(lineage, vehicle, rulings).gaps();
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

    private void place(Ruling ruling) {
        Optional<SetAside> aside = aside(ruling);
        if (aside.isPresent()) {
            setAside.add(followed(aside.get()));
        } else {
            rulings.add(ruling);
        }
    }

    private Optional<SetAside> aside(Ruling ruling) {
        Rule rule = ruling.rule();
        String overrider = overridden.get(rule.id());
        if (overrider != null) {
            return Optional.of(new SetAside(ruling, SetAside.Reason.OVERRIDDEN, overrider, true));
        }
        if (losesConflict(rule)) {
            Conflict conflict = rule.kinship().conflict().orElseThrow();
            return Optional.of(
                    new SetAside(
                            ruling, SetAside.Reason.CONFLICT, conflict.with(), conflict.settled()));
        }
        return publishedInstead(rule)
                .map(by -> new SetAside(ruling, SetAside.Reason.PUBLISHED_TEXT_KNOWN, by, true));
    }

    /** Names the rule that is applied in the end, where the one in between is set aside too. */
    private SetAside followed(SetAside first) {
        SetAside last = first;
        for (int step = 0; step < applying.size(); step++) {
            Optional<SetAside> next = ruling(last.by()).flatMap(this::aside);
            if (next.isEmpty()) {
                return last;
            }
            boolean disputed = last.reason() == SetAside.Reason.CONFLICT;
            boolean stillDisputed = disputed && next.get().reason() == SetAside.Reason.CONFLICT;
            last =
                    new SetAside(
                            first.ruling(),
                            disputed ? next.get().reason() : last.reason(),
                            next.get().by(),
                            !stillDisputed || (last.settled() && next.get().settled()));
        }
        return last;
    }

    private Optional<Ruling> ruling(String id) {
        return applying.stream().filter(r -> r.rule().id().equals(id)).findFirst();
    }

    private boolean losesConflict(Rule rule) {
        Optional<String> winner = rule.kinship().conflict().map(Conflict::with);
        return winner.flatMap(this::ruling).isPresent();
    }

    /**
     * The rule with a text, of the same place or a nearer one, that stands for a remembered one.
     */
    private Optional<String> publishedInstead(Rule rule) {
        if (rule.weight().standing() != Standing.UNCONFIRMED) {
            return Optional.empty();
        }
        return applying.stream()
                .map(Ruling::rule)
                .filter(r -> r.check() == rule.check())
                .filter(r -> r.weight().standing() == Standing.REQUIRED && r.provenance().isText())
                .filter(r -> distance(r.place()) <= distance(rule.place()))
                .filter(r -> !overridden.containsKey(r.id()) && !losesConflict(r))
                .map(Rule::id)
                .findFirst();
    }

    /** Steps from the place judged to one of its ancestors. */
    private int distance(PlaceCode place) {
        for (int i = 0; i < lineage.size(); i++) {
            if (lineage.get(i).place().equals(place)) {
                return i;
            }
        }
        return lineage.size();
    }
}
