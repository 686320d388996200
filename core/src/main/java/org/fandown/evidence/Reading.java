package org.fandown.evidence;

import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.units.Quantity;

/** Something observed about the vehicle as a whole. */
public sealed interface Reading {

    /** What it establishes. */
    Check check();

    /** What held while it was taken. */
    Circumstances at();

    /** What the person wrote beside it, empty if nothing. */
    String note();

    /** How finely this one was read, empty if as everything else of the inspection. */
    default Optional<Instruments> by() {
        return Optional.empty();
    }

    /**
     * One quantity, read on one or more gauges.
     *
     * @param check what it establishes
     * @param values one value for each gauge read, at least one, all in one unit
     * @param to pressure reached at the end, for a timed build-up
     * @param at what held
     * @param note what was written beside it
     */
    record Value(
            Check check,
            List<Quantity> values,
            Optional<Quantity> to,
            Circumstances at,
            String note)
            implements Reading {
        /** Copies the list. */
        public Value {
            values = List.copyOf(values);
        }
    }

    /**
     * A needle read at two or more moments.
     *
     * @param check what it establishes
     * @param samples at least two, in rising time, all in the same units
     * @param at what held
     * @param note what was written beside it
     * @param by how finely it was read, empty if as everything else
     */
    record Span(
            Check check,
            List<Sample> samples,
            Circumstances at,
            String note,
            Optional<Instruments> by)
            implements Reading {
        /** A span that was read as everything else. */
        public Span(Check check, List<Sample> samples, Circumstances at, String note) {
            this(check, samples, at, note, Optional.empty());
        }

        /**
         * Copies and checks the list.
         *
         * @throws IllegalArgumentException if there are fewer than two samples or time does not
         *     rise
         */
        public Span {
            samples = List.copyOf(samples);
            if (samples.size() < 2) {
                throw new IllegalArgumentException("A span needs at least two samples.");
            }
            for (int i = 1; i < samples.size(); i++) {
                if (!(samples.get(i).time().valueIn(samples.get(0).time().unit())
                        > samples.get(i - 1).time().valueIn(samples.get(0).time().unit()))) {
                    throw new IllegalArgumentException("Time does not rise from sample to sample.");
                }
            }
        }

        /** The first sample. */
        public Sample first() {
            return samples.get(0);
        }

        /** The last sample. */
        public Sample last() {
            return samples.get(samples.size() - 1);
        }
    }

    /**
     * A value that was worked out from many observations, with its own doubt.
     *
     * @param check what it establishes
     * @param value the value; of a loss, what was lost in the time
     * @param within half the width of the interval that holds the true value in about 95 of 100
     *     cases, in the same unit, 0 or more
     * @param over the time in which it was lost, empty unless it is a loss
     * @param at what held
     * @param note what was written beside it
     */
    record Estimate(
            Check check,
            Quantity value,
            Quantity within,
            Optional<Quantity> over,
            Circumstances at,
            String note)
            implements Reading {
        /**
         * Checks the doubt.
         *
         * @throws IllegalArgumentException if it is negative or in another unit
         */
        public Estimate {
            if (within.unit() != value.unit() || !(within.value() >= 0)) {
                throw new IllegalArgumentException(
                        "The doubt of an estimate must be 0 or more, in the unit of its value.");
            }
        }
    }

    /**
     * Pressure before and after brake applications.
     *
     * @param check what it establishes
     * @param before gauge pressure before
     * @param after gauge pressure after, in the same unit
     * @param at what held, with the number of applications
     * @param note what was written beside it
     * @param by how finely it was read, empty if as everything else
     */
    record Reserve(
            Check check,
            Quantity before,
            Quantity after,
            Circumstances at,
            String note,
            Optional<Instruments> by)
            implements Reading {}

    /**
     * An answer.
     *
     * @param check what it establishes
     * @param yes the answer
     * @param at what held
     * @param note what was written beside it
     */
    record Answer(Check check, boolean yes, Circumstances at, String note) implements Reading {}
}
