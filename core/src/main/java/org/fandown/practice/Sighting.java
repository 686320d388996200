package org.fandown.practice;

import java.util.List;
import org.fandown.check.Component;
import org.fandown.units.Quantity;
import org.fandown.vehicle.WheelId;

/**
 * What the last act of measuring, looking or draining showed the person, as a value; the event of
 * the act says the same in words.
 */
public sealed interface Sighting {

    /**
     * How far a push rod was out of its released position.
     *
     * @param wheel the wheel
     * @param length as read on the rule, in inches
     */
    record Stroke(WheelId wheel, Quantity length) implements Sighting {}

    /**
     * How far a push rod came out by a bar.
     *
     * @param wheel the wheel
     * @param length as read on the rule, in inches
     */
    record FreeStroke(WheelId wheel, Quantity length) implements Sighting {}

    /**
     * A part that was looked at.
     *
     * @param part the part
     * @param found what is wrong with it, in words or as conditions; empty if it is in order
     */
    record Part(Component part, List<String> found) implements Sighting {
        /** Copies the list. */
        public Part {
            found = List.copyOf(found);
        }
    }

    /**
     * What came out of a drain; nothing if it is frozen or the reservoir is empty.
     *
     * @param reservoir the reservoir, by its name in {@link Verb#OPEN_DRAIN}
     * @param air whether air came
     * @param water whether water came
     * @param oil whether oil came
     */
    record Drain(String reservoir, boolean air, boolean water, boolean oil) implements Sighting {}
}
