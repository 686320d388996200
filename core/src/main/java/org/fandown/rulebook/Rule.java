package org.fandown.rulebook;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.PlaceCode;
import org.fandown.check.Severity;

/**
 * What a place demands of a check on a kind of vehicle, with its dated values.
 *
 * @param id unique id, beginning with the place in lower case
 * @param place the place
 * @param check what is established
 * @param title what the rule is about, in a few words
 * @param applies to which vehicles
 * @param method circumstances, which needle, window, rounding
 * @param words the rule in plain words, empty if there is nothing to add
 * @param values the dated values, oldest first; at least one
 * @param weight what it means when the rule is not met
 * @param provenance how well it is known
 * @param verifiedOn when a person last compared it with its source
 * @param kinship how it stands to other rules
 * @param note what a careful reader must know, empty if nothing
 */
public record Rule(
        String id,
        PlaceCode place,
        Check check,
        String title,
        Applies applies,
        Method method,
        String words,
        List<DatedValue> values,
        Weight weight,
        Provenance provenance,
        LocalDate verifiedOn,
        Kinship kinship,
        String note) {

    /**
     * How the measurement is made.
     *
     * @param demands circumstances that must hold
     * @param gauge which needle counts
     * @param roundedTo step to which the value is rounded half up before comparing, empty for none
     * @param window pressures between which a build-up is timed
     */
    public record Method(
            List<Demand> demands,
            GaugeChoice gauge,
            Optional<org.fandown.units.Quantity> roundedTo,
            Optional<Window> window) {
        /** Copies the list. */
        public Method {
            demands = List.copyOf(demands);
        }
    }

    /**
     * The pressures between which a build-up is timed.
     *
     * @param from lower pressure, empty where the start is not a pressure
     * @param to upper pressure
     */
    public record Window(Optional<Bound> from, Bound to) {
        @Override
        public String toString() {
            return from.map(f -> "from " + f + " ").orElse("") + "to " + to;
        }
    }

    /**
     * What it means when the rule is not met.
     *
     * @param standing weight in the verdict
     * @param evidence whether an inspection has to bring evidence
     * @param severity minor or major
     * @param outOfService whether the place's own words put the vehicle out of service
     * @param approximate whether the text says "about"
     */
    public record Weight(
            Standing standing,
            EvidenceDemand evidence,
            Severity severity,
            boolean outOfService,
            boolean approximate) {}

    /**
     * How a rule stands to others.
     *
     * @param overrides ids of parent rules that do not hold in this place
     * @param why why they do not hold, or why a remembered limit binds; empty if neither
     * @param conflict the rule applied instead of this one, empty if this one is applied
     */
    public record Kinship(List<String> overrides, String why, Optional<Conflict> conflict) {
        /** Copies the list. */
        public Kinship {
            overrides = List.copyOf(overrides);
        }
    }

    /** Copies the list. */
    public Rule {
        values = List.copyOf(values);
    }

    /**
     * The value in force on a day, empty if none is. The latest value that has begun decides: when
     * it has ended, no older one comes back.
     */
    public Optional<DatedValue> on(LocalDate day) {
        for (int i = values.size() - 1; i >= 0; i--) {
            if (values.get(i).hasBegunOn(day)) {
                return Optional.of(values.get(i)).filter(value -> value.inForceOn(day));
            }
        }
        return Optional.empty();
    }

    /** Whether another rule is applied in its stead. */
    public boolean isSetAside() {
        return kinship.conflict().isPresent();
    }
}
