package org.fandown.rulebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fandown.check.PlaceCode;
import org.fandown.vehicle.Vehicle;

/**
 * All packs together; answers which rules are in force for a place, a vehicle and a day. Immutable.
 */
public final class Rulebook {
    private final Map<PlaceCode, Pack> packs = new TreeMap<>();

    private Rulebook(Collection<Pack> packs) {
        for (Pack pack : packs) {
            this.packs.put(pack.place(), pack);
        }
    }

    /**
     * A rulebook of the given packs.
     *
     * @throws UnfitPackException if a parent is missing, or a rule refers to an unknown rule
     * @throws IllegalArgumentException if two packs name one place
     */
    public static Rulebook of(Collection<Pack> packs) {
        Rulebook book = new Rulebook(packs);
        if (book.packs.size() != packs.size()) {
            throw new IllegalArgumentException("Two packs name the same place.");
        }
        RulebookCheck.check(book);
        return book;
    }

    /** The places with a pack, in alphabetical order. */
    public List<PlaceCode> places() {
        return List.copyOf(packs.keySet());
    }

    /** The pack of a place, empty if there is none. */
    public Optional<Pack> pack(PlaceCode place) {
        return Optional.ofNullable(packs.get(place));
    }

    /** The place's pack and its ancestors' packs, nearest first; empty if the place has no pack. */
    public List<Pack> lineage(PlaceCode place) {
        List<Pack> lineage = new ArrayList<>();
        Optional<Pack> next = pack(place);
        while (next.isPresent()) {
            lineage.add(next.get());
            next = next.get().parent().flatMap(this::pack);
        }
        return lineage;
    }

    /**
     * The rules in force.
     *
     * @throws IllegalArgumentException if the place has no pack
     */
    public RulesInForce inForce(PlaceCode place, Vehicle vehicle, LocalDate day) {
        List<Pack> lineage = lineage(place);
        if (lineage.isEmpty()) {
            throw new IllegalArgumentException(
                    "There is no rule pack for " + place + ". Known places: " + places() + ".");
        }
        return new Resolution(lineage, vehicle, day).resolve();
    }
}
