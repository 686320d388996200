package org.fandown.air;

import java.util.ArrayList;
import java.util.List;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;

/**
 * The stroke of a service brake's push rod at any chamber pressure.
 *
 * <p>Up to the threshold the return spring holds; from there to the contact pressure the rod takes
 * up the free stroke; then the brake yields evenly until the full stroke is used up.
 *
 * @param threshold pressure that overcomes the return spring
 * @param contact pressure at which the linings touch, above the threshold
 * @param free stroke until the linings touch
 * @param inchesPerPsi stroke for each psi after that, 0.001 to 1, or 0 for a brake that does not
 *     yield
 * @param full stroke at which the chamber bottoms
 */
public record PushRodStroke(
        GaugePressure threshold,
        GaugePressure contact,
        Length free,
        double inchesPerPsi,
        Length full) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if one is out of range
     */
    public PushRodStroke {
        if (!(threshold.pascals() >= 0) || contact.compareTo(threshold) <= 0) {
            throw new IllegalArgumentException(
                    "The contact pressure must be above the threshold, and that 0 or more.");
        }
        if (inchesPerPsi != 0 && !(inchesPerPsi >= 0.001 && inchesPerPsi <= 1)) {
            throw new IllegalArgumentException(
                    "The stroke for each psi must be 0, or 0.001 to 1 in.");
        }
    }

    /** The corners of the line of stroke over pressure. */
    List<ChamberLaw.Corner> corners() {
        List<ChamberLaw.Corner> corners = new ArrayList<>();
        corners.add(new ChamberLaw.Corner(threshold, new Length(0)));
        if (free.compareTo(full) >= 0) {
            double part = free.metres() > 0 ? full.metres() / free.metres() : 1;
            double rise = contact.pascals() - threshold.pascals();
            corners.add(
                    new ChamberLaw.Corner(
                            new GaugePressure(threshold.pascals() + part * rise), full));
            return corners;
        }
        corners.add(new ChamberLaw.Corner(contact, free));
        if (inchesPerPsi > 0) {
            double psi = contact.inPsi() + (full.inInches() - free.inInches()) / inchesPerPsi;
            corners.add(new ChamberLaw.Corner(GaugePressure.ofPsi(psi), full));
        }
        return corners;
    }
}
