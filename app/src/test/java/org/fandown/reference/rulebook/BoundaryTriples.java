package org.fandown.reference.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.fandown.app.files.RulePacks;
import org.fandown.check.CheckKind;
import org.fandown.check.PlaceCode;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Judge;
import org.fandown.judgement.Status;
import org.fandown.rulebook.Pack;
import org.fandown.rulebook.Rule;
import org.fandown.rulebook.Rulebook;
import org.fandown.rulebook.RulesInForce;
import org.fandown.rulebook.Ruling;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;

/**
 * A table of boundary triples of one region: for each printed limit of each rule a row with a
 * reading just below the edge, at it and just above it.
 */
final class BoundaryTriples {
    private static final RulePacks PACKS = RulePacks.builtIn();

    private final List<Triple> rows;
    private final List<Pack> region;

    private BoundaryTriples(List<Triple> rows, List<Pack> region) {
        this.rows = rows;
        this.region = region;
    }

    /**
     * Reads a table.
     *
     * @param table name of the file among the resources of this package
     * @param places the places whose rules it has to cover
     */
    static BoundaryTriples read(String table, Predicate<PlaceCode> places) {
        Rulebook all = PACKS.all();
        List<Pack> region =
                all.places().stream()
                        .filter(places)
                        .map(place -> all.pack(place).orElseThrow())
                        .toList();
        return new BoundaryTriples(TripleTable.read(table), region);
    }

    List<Triple> rows() {
        return rows;
    }

    /** What the judge says of the three values of a row, with exact instruments. */
    static List<Status> judge(Triple row) {
        RulesInForce rules = row.alone() ? LoneRule.of(row, inPlace(row)) : inPlace(row);
        Ruling ruling =
                rules.byId(row.rule())
                        .orElseThrow(
                                () ->
                                        new AssertionError(
                                                row.rule() + " is not in force for this row"));
        TripleInspection form = new TripleInspection(row, ruling.rule().check(), ruling.wheels());
        List<Status> statuses = new ArrayList<>();
        for (String value : row.values()) {
            statuses.add(status(row, Judge.by(rules(rules, form, value)), form, value));
        }
        return statuses;
    }

    /** Rules for the very vehicle that is inspected: in a design row each value has its own. */
    private static RulesInForce rules(RulesInForce rules, TripleInspection form, String value) {
        return new RulesInForce(
                rules.lineage(),
                form.noting(value).vehicle(),
                rules.day(),
                rules.rulings(),
                rules.setAside(),
                rules.gaps());
    }

    private static Status status(Triple row, Judge judge, TripleInspection form, String value) {
        List<Status> found =
                judge.judge(form.noting(value)).findings().stream()
                        .filter(f -> f.ruling().rule().id().equals(row.rule()))
                        .map(Finding::status)
                        .distinct()
                        .toList();
        if (found.size() != 1) {
            throw new AssertionError(row + ": one finding expected for " + value + ": " + found);
        }
        return found.get(0);
    }

    private static RulesInForce inPlace(Triple row) {
        Rulebook book =
                PACKS.rulebookFor(row.place())
                        .orElseThrow(() -> new AssertionError("no pack for " + row.place()));
        return book.inForce(row.place(), vehicle(row), row.on());
    }

    private static Vehicle vehicle(Triple row) {
        return VehicleReader.read(TestVehicle.named(row.vehicle()).filledIn(row.beside()));
    }

    /**
     * One line for each printed limit of a numeric rule of the region that has no row, and for each
     * exception that is not needed.
     *
     * @param exceptions rules that need no row, each with the reason
     */
    List<String> uncovered(Map<String, String> exceptions) {
        List<String> lines = new ArrayList<>();
        for (Pack pack : region) {
            for (Rule rule : pack.rules()) {
                List<String> missing = TripleCoverage.missing(rule, rows);
                boolean excepted = exceptions.containsKey(rule.id());
                if (!excepted) {
                    lines.addAll(missing);
                } else if (missing.isEmpty()) {
                    lines.add(rule.id() + ": the exception is not needed");
                }
            }
        }
        for (String id : exceptions.keySet()) {
            if (region.stream().noneMatch(p -> find(p, id).isPresent())) {
                lines.add(id + ": an exception for no rule");
            }
        }
        for (Triple row : rows) {
            if (region.stream().noneMatch(p -> find(p, row.rule()).isPresent())) {
                lines.add(row.rule() + ": a row for no rule of the region");
            }
        }
        return lines;
    }

    static Optional<Rule> find(Pack pack, String id) {
        return pack.rules().stream().filter(r -> r.id().equals(id)).findFirst();
    }

    static boolean isCount(Rule rule) {
        return rule.check().kind() == CheckKind.BRAKE_COUNT;
    }
}
