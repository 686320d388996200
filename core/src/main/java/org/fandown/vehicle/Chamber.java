package org.fandown.vehicle;

import java.util.Optional;
import org.fandown.units.Quantity;

/**
 * A brake chamber (service part), as its body and marks describe it.
 *
 * <p>The types of a mount are those of {@link ChamberTable}. For {@link Mount#OTHER} the type is
 * free text, because nothing but the maker's marks is known of it.
 *
 * @param mount its family
 * @param type its type within the family: {@code 30}, {@code C}
 * @param longStroke whether it is a long-stroke chamber
 * @param ratedStroke the rated stroke marked on it, empty if none is marked
 * @param markedLimit the readjustment limit marked on it, empty if none is marked
 */
public record Chamber(
        Mount mount,
        String type,
        boolean longStroke,
        Optional<Quantity> ratedStroke,
        Optional<Quantity> markedLimit) {

    /** Refuses a chamber that no table has and strokes that contradict its kind. */
    public Chamber {
        ChamberRules.require(mount, type, longStroke, ratedStroke, markedLimit);
    }

    /** Returns a clamp-type chamber of the given type, for example {@code 30}. */
    public static Chamber clamp(int type) {
        return of(Mount.CLAMP, Integer.toString(type), false);
    }

    /** Returns a long-stroke clamp-type chamber of the given type, for example {@code 24}. */
    public static Chamber clampLong(int type) {
        return of(Mount.CLAMP, Integer.toString(type), true);
    }

    /** Returns a chamber without any marked stroke. */
    public static Chamber of(Mount mount, String type, boolean longStroke) {
        return new Chamber(mount, type, longStroke, Optional.empty(), Optional.empty());
    }

    /** Returns the same chamber with the rated stroke that is marked on it. */
    public Chamber withRatedStroke(Quantity stroke) {
        return new Chamber(mount, type, longStroke, Optional.of(stroke), markedLimit);
    }

    /** Returns the same chamber with the readjustment limit that is marked on it. */
    public Chamber withMarkedLimit(Quantity limit) {
        return new Chamber(mount, type, longStroke, ratedStroke, Optional.of(limit));
    }

    /** Returns the table's entry for this chamber, empty for an actuator no table lists. */
    public Optional<ChamberEntry> entry() {
        return ChamberTable.find(mount, type);
    }

    /**
     * Returns whether both are of one size: same mount and type. Stroke marks are not compared,
     * because the size rules of an axle do not name them.
     */
    public boolean sameSizeAs(Chamber other) {
        return mount == other.mount && type.equals(other.type);
    }

    /** Returns the chamber in words: {@code clamp 24 long 3 in}. */
    public String text() {
        StringBuilder text = new StringBuilder(Labels.of(mount)).append(' ').append(type);
        if (longStroke) {
            text.append(" long");
        }
        ratedStroke.ifPresent(stroke -> text.append(' ').append(stroke));
        return text.toString();
    }
}
