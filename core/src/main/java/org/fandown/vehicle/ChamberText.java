package org.fandown.vehicle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.document.Names;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.QuantityFormatException;

/** The short text form of a chamber: mount, type, {@code long} and a marked rated stroke. */
final class ChamberText {
    private static final Map<String, Mount> MOUNTS = Names.byKebab(Mount.values());
    private static final String LONG = "long";

    private ChamberText() {}

    /**
     * Reads {@code clamp 30}, {@code clamp 24 long 3 in}, {@code bolt C}.
     *
     * @throws ImpossibleVehicleException if there is no such chamber
     */
    static Chamber parse(String text) {
        List<String> words = words(text);
        Mount mount = words.isEmpty() ? null : MOUNTS.get(words.get(0));
        if (mount == null || mount == Mount.OTHER || words.size() < 2) {
            throw unreadable(text, "it is not a mount with a type");
        }
        boolean longStroke = words.size() > 2 && words.get(2).equals(LONG);
        int next = longStroke ? 3 : 2;
        Optional<Quantity> rated = Optional.empty();
        if (next < words.size()) {
            rated = Optional.of(stroke(text, words.subList(next, words.size())));
        }
        return new Chamber(mount, words.get(1), longStroke, rated, Optional.empty());
    }

    private static Quantity stroke(String text, List<String> words) {
        try {
            return Quantity.parse(String.join(" ", words), Dimension.LENGTH);
        } catch (QuantityFormatException e) {
            throw unreadable(text, "what follows the type is neither 'long' nor a rated stroke");
        }
    }

    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        for (String word : text.strip().split(" +", -1)) {
            if (!word.isEmpty()) {
                words.add(word);
            }
        }
        return words;
    }

    private static ImpossibleVehicleException unreadable(String text, String problem) {
        return new ImpossibleVehicleException(
                "chamber",
                "chamber '" + text + "' cannot be read: " + problem,
                "clamp 30, clamp 24 long, clamp 24 long 3 in, bolt C, rotochamber 36, dd3 30, or a"
                        + " map with mount and type",
                "read mount and type on the chamber; for an unlisted actuator write a map with"
                        + " mount: other");
    }
}
