package org.fandown.rulebook;

import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.check.ReportItem;
import org.fandown.units.Quantity;

/** What a rule demands. */
public sealed interface Limit {

    /**
     * A quantity between edges.
     *
     * @param edges the edges
     */
    record Numeric(NumericLimit edges) implements Limit {
        @Override
        public String toString() {
            return edges.toString();
        }
    }

    /** The answer has to be yes. */
    record IsYes() implements Limit {
        @Override
        public String toString() {
            return "yes";
        }
    }

    /**
     * The stroke has to be within the limit of its chamber.
     *
     * @param table the limits
     */
    record Strokes(StrokeTable table) implements Limit {
        @Override
        public String toString() {
            return table.toString();
        }
    }

    /**
     * Two ends of an axle have to be alike.
     *
     * @param part what is compared
     */
    record SameAcross(AxlePart part) implements Limit {
        @Override
        public String toString() {
            return "the same " + part.title() + " at both ends of the axle";
        }
    }

    /** What is compared across an axle. */
    enum AxlePart {
        /** Size and kind of brake chamber. */
        CHAMBER("chamber"),
        /** Effective length of the slack adjuster. */
        ADJUSTER_ARM("slack-adjuster length");

        private final String title;

        AxlePart(String title) {
            this.title = title;
        }

        /** What a person calls it, without a capital. */
        public String title() {
            return title;
        }
    }

    /**
     * Fewer than a share of the brakes may be beyond their limit.
     *
     * @param share the share at which the rule is not met (percent)
     * @param overBy by how much a stroke has to exceed its limit to count; empty: any defective
     *     brake counts
     */
    record BrakesOver(double share, Optional<Printed> overBy) implements Limit {
        @Override
        public String toString() {
            return "fewer than "
                    + Texts.number(share)
                    + " % of the brakes "
                    + overBy.map(by -> "over their stroke limit by " + by + " or more")
                            .orElse("defective");
        }
    }

    /**
     * Parts that have to be looked at.
     *
     * @param parts the parts
     */
    record LookAt(List<Component> parts) implements Limit {
        /** Copies the list. */
        public LookAt {
            parts = List.copyOf(parts);
        }

        @Override
        public String toString() {
            return "each of " + parts.size() + " parts looked at";
        }
    }

    /**
     * A condition that must not be found on a part.
     *
     * @param condition the condition, lower case with hyphens
     * @param on the part
     */
    record Absent(String condition, Component on) implements Limit {
        @Override
        public String toString() {
            return "no " + condition.replace('-', ' ');
        }
    }

    /**
     * What the report has to hold.
     *
     * @param items the items
     */
    record ReportHolds(List<ReportItem> items) implements Limit {
        /** Copies the list. */
        public ReportHolds {
            items = List.copyOf(items);
        }

        @Override
        public String toString() {
            return items.size() + " items on the report";
        }
    }

    /**
     * A duty of a person or firm.
     *
     * @param text the duty in our own words
     * @param term how long something lasts, is kept, or within what time it has to be done
     * @param exemption when the duty does not hold
     * @param options ways that are accepted, empty if the text names none
     * @param orders orders of checks that the text asks for or prints
     * @param concerns checks whose method the text is about
     */
    record Duty(
            String text,
            Optional<DutyTerm> term,
            Optional<Exemption> exemption,
            List<String> options,
            List<TestOrder> orders,
            List<Check> concerns)
            implements Limit {
        /** Copies the lists. */
        public Duty {
            options = List.copyOf(options);
            orders = List.copyOf(orders);
            concerns = List.copyOf(concerns);
        }

        @Override
        public String toString() {
            return text;
        }
    }

    /**
     * The time in a duty.
     *
     * @param sense what the time means
     * @param term the time
     */
    record DutyTerm(TermSense sense, Term term) {}

    /** What a time in a duty means. */
    enum TermSense {
        /** Something is valid so long. */
        LASTS,
        /** Something is kept so long. */
        KEEP,
        /** Something is done within that time. */
        WITHIN
    }

    /**
     * Staying within a distance of the base lifts a duty.
     *
     * @param within greatest distance from the base
     * @param lifts what is lifted
     */
    record Exemption(Quantity within, Lifts lifts) {}

    /** What an exemption lifts. */
    enum Lifts {
        /** Inspection and report. */
        ALL,
        /** The report only; the inspection is still due. */
        REPORT
    }
}
