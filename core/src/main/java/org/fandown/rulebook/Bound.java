package org.fandown.rulebook;

import java.util.List;
import org.fandown.check.Check;
import org.fandown.units.Quantity;

/**
 * The figure at the edge of a limit: printed in the book, or to be worked out from other readings
 * or the vehicle.
 */
public sealed interface Bound {

    /**
     * A figure as printed.
     *
     * @param printed the figure in one or more units
     */
    record Figure(Printed printed) implements Bound {
        @Override
        public String toString() {
            return printed.toString();
        }
    }

    /**
     * A share of another check's value.
     *
     * @param percent the share (percent)
     * @param of the check whose reading it is a share of
     */
    record ShareOfCheck(double percent, Check of) implements Bound {
        @Override
        public String toString() {
            return Texts.number(percent) + " % of the " + Texts.lowerFirst(of.title());
        }
    }

    /**
     * A share of something the reading or the wheel itself carries.
     *
     * @param percent the share (percent)
     * @param of what it is a share of
     */
    record ShareOfOwn(double percent, Own of) implements Bound {
        @Override
        public String toString() {
            return Texts.number(percent) + " % of the " + of.title();
        }
    }

    /** What a reading or a wheel carries that a limit may be a share of. */
    enum Own {
        /** The pressure before the applications. */
        BEFORE("before", "pressure before"),
        /** The rated (full) stroke of the wheel's brake chamber. */
        RATED_STROKE("rated-stroke", "rated stroke");

        private final String id;
        private final String title;

        Own(String id, String title) {
            this.id = id;
            this.title = title;
        }

        /** How a rule pack writes it. */
        public String id() {
            return id;
        }

        /** What a person calls it, without a capital. */
        public String title() {
            return title;
        }
    }

    /**
     * The least of several figures.
     *
     * @param bounds at least two
     */
    record LeastOf(List<Bound> bounds) implements Bound {
        /** Copies the list. */
        public LeastOf {
            bounds = List.copyOf(bounds);
        }

        @Override
        public String toString() {
            StringBuilder text = new StringBuilder("the least of ");
            for (int i = 0; i < bounds.size(); i++) {
                text.append(i == 0 ? "" : " and ").append(bounds.get(i));
            }
            return text.toString();
        }
    }

    /**
     * A figure that grows with the number of trailers.
     *
     * @param base for the powered unit alone
     * @param plus for each trailer
     */
    record PlusPerTrailer(Quantity base, Quantity plus) implements Bound {
        @Override
        public String toString() {
            return base + " and " + plus + " more for each trailer";
        }
    }

    /**
     * A time in proportion to reservoir volume: the given time at the least volume the standard
     * allows.
     *
     * @param atMinimum the time at the minimum volume
     */
    record ByReservoirRatio(Quantity atMinimum) implements Bound {
        @Override
        public String toString() {
            return atMinimum + " x actual / required reservoir volume";
        }
    }

    /**
     * A distance that grows with speed: lag x v + v^2 / squareOver (m, v in km/h).
     *
     * @param lag factor of v (m per km/h)
     * @param squareOver divisor of v squared
     */
    record BySpeed(double lag, double squareOver) implements Bound {
        @Override
        public String toString() {
            return Texts.number(lag) + " v + v^2 / " + Texts.number(squareOver) + " m (v in km/h)";
        }
    }
}
