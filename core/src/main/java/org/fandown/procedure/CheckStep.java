package org.fandown.procedure;

import java.util.List;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.rulebook.Ruling;
import org.fandown.vehicle.WheelId;

/**
 * A check a person makes.
 *
 * @param checks what is established; the first gives the step its name
 * @param rulings the rules in force that ask for it or judge it, empty where only good practice
 *     asks
 * @param methods the rulings in force that tell how it is made, in words
 * @param words what is said of it
 * @param manner how it is made
 * @param needs what has to hold before
 * @param change what it does to the pressure
 * @param leaves what it leaves behind, such as set brakes after the knob popped out
 */
public record CheckStep(
        List<Check> checks,
        List<Ruling> rulings,
        List<Ruling> methods,
        Words words,
        Manner manner,
        List<Need> needs,
        Change change,
        List<Leaves> leaves)
        implements Step {

    /**
     * What is said of a check.
     *
     * @param action what is done, in sentence case, as an order
     * @param lookFor what to look for
     * @param caution what can hurt somebody, empty text if nothing
     */
    public record Words(String action, String lookFor, String caution) {}

    /**
     * How a check is made.
     *
     * @param spot where the person begins and ends
     * @param tenths how long it takes beside changes of pressure (tenths of a second)
     * @param rpm engine speed to hold, rpm; 0 where it is at idle or off
     * @param hold how long to time (s), 0 where nothing is timed that way
     * @param helper whether a second person or a pedal holder is needed
     * @param wheels wheels at which something is measured
     * @param parts parts to look at
     */
    public record Manner(
            Spot spot,
            int tenths,
            int rpm,
            int hold,
            boolean helper,
            List<WheelId> wheels,
            List<Component> parts) {
        /** Copies the lists. */
        public Manner {
            wheels = List.copyOf(wheels);
            parts = List.copyOf(parts);
        }
    }

    /**
     * What a check leaves behind.
     *
     * @param aspect of what
     * @param value its value afterwards
     */
    public record Leaves(Aspect aspect, int value) {}

    /** Copies the lists. */
    public CheckStep {
        checks = List.copyOf(checks);
        rulings = List.copyOf(rulings);
        methods = List.copyOf(methods);
        needs = List.copyOf(needs);
        leaves = List.copyOf(leaves);
    }

    /** What is established first of all. */
    public Check check() {
        return checks.get(0);
    }

    @Override
    public String text() {
        return check().id();
    }

    @Override
    public String action() {
        return words.action();
    }

    @Override
    public String caution() {
        return words.caution();
    }
}
