package org.fandown.rulebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.PlaceCode;
import org.fandown.vehicle.Vehicle;

/**
 * The rules in force for a place, a vehicle and a day.
 *
 * @param lineage the place's pack and its ancestors' packs, nearest first
 * @param vehicle the vehicle
 * @param day the day
 * @param rulings the rules applied, in the order of the vocabulary and then of the packs, nearest
 *     place first
 * @param setAside the rules known but not applied
 * @param gaps expected checks for which neither the place nor an ancestor has a rule that decides
 *     on this vehicle, and checks covered only by an ancestor
 */
public record RulesInForce(
        List<Pack> lineage,
        Vehicle vehicle,
        LocalDate day,
        List<Ruling> rulings,
        List<SetAside> setAside,
        List<Coverage> gaps) {

    /**
     * What is known of an expected check that the place itself has no deciding rule for.
     *
     * @param check the check
     * @param from the ancestor whose rule stands in, empty if none does
     * @param says what the pack says of the gap
     */
    public record Coverage(Check check, Optional<PlaceCode> from, String says) {}

    /** Copies the lists. */
    public RulesInForce {
        lineage = List.copyOf(lineage);
        rulings = List.copyOf(rulings);
        setAside = List.copyOf(setAside);
        gaps = List.copyOf(gaps);
    }

    /** The place. */
    public PlaceCode place() {
        return lineage.get(0).place();
    }

    /** The rulings of one check. */
    public List<Ruling> of(Check check) {
        List<Ruling> found = new ArrayList<>();
        for (Ruling ruling : rulings) {
            if (ruling.rule().check() == check) {
                found.add(ruling);
            }
        }
        return found;
    }

    /** The ruling with the given rule id, empty if it is not in force. */
    public Optional<Ruling> byId(String id) {
        return rulings.stream().filter(r -> r.rule().id().equals(id)).findFirst();
    }
}
