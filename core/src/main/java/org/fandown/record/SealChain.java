package org.fandown.record;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The chains of a site as they grow: gives the next link, and says of links that were kept whether
 * each still follows from those before. Not for use by several threads.
 */
public final class SealChain {
    private final Map<String, String> vehicles = new TreeMap<>();
    private String site = "";
    private long number;

    /** The hash of the site's last link, empty before the first. */
    public String site() {
        return site;
    }

    /** The number of the last link, 0 before the first. */
    public long number() {
        return number;
    }

    /**
     * Takes the next link of the site.
     *
     * @param seal the link
     * @return what is wrong with it, empty if it follows from all taken before; it counts as taken
     *     all the same, so that the first thing that is wrong is not followed by others
     */
    public Optional<String> take(Seal seal) {
        Optional<String> problem = problem(seal);
        number = seal.number();
        site = seal.hash();
        vehicles.put(seal.vehicle(), site);
        return problem;
    }

    private Optional<String> problem(Seal seal) {
        if (seal.number() != number + 1) {
            return Optional.of(
                    "Record " + seal.number() + " follows record " + number + "; one is missing.");
        }
        if (!seal.siteBefore().equals(site)) {
            return Optional.of(
                    "Record "
                            + seal.number()
                            + " does not follow from the one before: that was changed, or this"
                            + " was put in.");
        }
        if (!seal.vehicleBefore().equals(vehicles.getOrDefault(seal.vehicle(), ""))) {
            return Optional.of(
                    "Record "
                            + seal.number()
                            + " does not follow from the one before of the same vehicle.");
        }
        return Optional.empty();
    }
}
