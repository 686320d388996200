package org.fandown.vehicle;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * When and to what standards a unit was built.
 *
 * @param date the build date, empty if unknown
 * @param standards the braking standards its plate or papers name, in the order of the enumeration;
 *     empty if unknown
 */
public record Build(Optional<BuildDate> date, Set<BuildStandard> standards) {

    /** Nothing is known. */
    public static final Build UNKNOWN = new Build(Optional.empty(), Set.of());

    /** Copies the standards in. */
    public Build {
        EnumSet<BuildStandard> copy = EnumSet.noneOf(BuildStandard.class);
        copy.addAll(standards);
        standards = Collections.unmodifiableSet(copy);
    }
}
