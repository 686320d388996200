package org.fandown.evidence;

import java.util.List;
import java.util.Optional;
import org.fandown.check.Component;
import org.fandown.check.Severity;

/**
 * A part that was looked at.
 *
 * @param part the part
 * @param found conditions found on it, empty if it was in order
 */
public record PartReading(Component part, List<Found> found) {

    /**
     * A condition found on a part.
     *
     * @param condition the condition, lower case with hyphens
     * @param severity how bad the person thinks it is; the place's own rule overrules it
     * @param note what was written beside it, empty if nothing
     */
    public record Found(String condition, Optional<Severity> severity, String note) {}

    /** Copies the list. */
    public PartReading {
        found = List.copyOf(found);
    }
}
