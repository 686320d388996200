package org.fandown.air;

import java.util.List;

/**
 * How a link lies in its network: which volumes it joins, and what lets air through it.
 *
 * @param link the link
 * @param from the volume before it
 * @param to the volume behind it; the atmosphere where it leads outside
 * @param kind what lets air through
 * @param pilots volumes whose pressure may work it
 */
public record AirWay(AirLink link, AirNode from, AirNode to, Kind kind, List<AirNode> pilots) {
    /** Copies the list. */
    public AirWay {
        pilots = List.copyOf(pilots);
    }

    /** What lets air through a link. */
    public enum Kind {
        /** A line, hose or hole, or a valve that is open or shut: either direction. */
        PLAIN,
        /** A check valve: from the first volume to the second alone. */
        CHECK,
        /** A protection valve: a check valve that is shut below a pressure. */
        PROTECTION,
        /** A valve that gives the second volume a pressure, and lets it out again. */
        LAPPING
    }
}
