package org.fandown.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fandown.check.PlaceCode;
import org.fandown.document.Json;
import org.fandown.rulebook.Pack;
import org.fandown.rulebook.PackReader;
import org.fandown.rulebook.Rulebook;

/** The rule packs a page has loaded. Each is read when a place first needs it. */
final class PlaceShelf {
    private final Map<PlaceCode, String> texts = new TreeMap<>();
    private final Map<PlaceCode, Pack> read = new TreeMap<>();

    void add(PlaceCode place, String json) {
        texts.put(place, json);
        read.remove(place);
    }

    /**
     * The rulebook of a place and its ancestors.
     *
     * @throws IllegalArgumentException if the place has no pack
     */
    Rulebook rulebookFor(PlaceCode place) {
        List<Pack> lineage = new ArrayList<>();
        Optional<PlaceCode> next = Optional.of(place);
        while (next.isPresent()) {
            Pack pack = pack(next.get());
            lineage.add(pack);
            next = pack.parent();
        }
        return Rulebook.of(lineage);
    }

    private Pack pack(PlaceCode place) {
        Pack known = read.get(place);
        if (known != null) {
            return known;
        }
        String text = texts.get(place);
        if (text == null) {
            throw new IllegalArgumentException(
                    "There is no rule pack for "
                            + place
                            + ". Known places: "
                            + texts.keySet()
                            + ". Next: take one of these.");
        }
        Pack pack = PackReader.read(Json.read(place + ".yaml", text));
        read.put(place, pack);
        return pack;
    }
}
