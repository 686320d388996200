package org.fandown.operator;

import java.util.Optional;
import org.fandown.vehicle.SupplyKind;
import org.fandown.vehicle.Vehicle;

/**
 * What a sound vehicle shows, as the trade has it. The operator names what lies outside abnormal
 * even where the place has no rule about it.
 */
final class Usual {
    /** The governor may act so far from the vehicle file's figure, psi (assumption). */
    static final int GOVERNOR_BAND = 7;

    /** Least cut-in, psi. Source: 49 CFR 571.121 S5.1.1.1. */
    static final int CUT_IN_LEAST = 100;

    /** The warning comes on at no less, psi. Source: 49 CFR 571.121 S5.1.5. */
    static final int WARNING_LEAST = 60;

    /** The warning comes on at no more, psi. Source: California driver handbook, p. 99. */
    static final int WARNING_MOST = 75;

    /** A knob pops out at no less, psi. Source: Georgia driver manual 2020, p. 52. */
    static final int POPS_LEAST = 20;

    /** A knob pops out at no more, psi. Source: Georgia driver manual 2020, p. 52. */
    static final int POPS_MOST = 45;

    /** Both needles are fed by one supply: they differ by no more when it is full (assumption). */
    static final int NEEDLES_APART = 6;

    /**
     * Share of its pressure that a reservoir loses at most while the air of a quick fill cools;
     * behind a check valve that stays open it loses nearly all.
     */
    static final double COOLS = 0.15;

    /** A needle that works moves so far in a test, psi (assumption). */
    static final int NEEDLE_MOVES = 5;

    /** Least free stroke, in (from memory: the lower end of the usual range). */
    static final double FREE_STROKE_LEAST = 0.375;

    /** Most free stroke, in. Source: British Columbia manual, pp. 202-203. */
    static final double FREE_STROKE_MOST = 0.75;

    private Usual() {}

    /**
     * A build-up that takes longer than the plan's model by this share is too long (assumption).
     * The model is rough where the file gives no reservoirs, and in an integrated dryer unit, whose
     * circuits open one after the other.
     */
    static double buildUpShare(Vehicle vehicle) {
        boolean pauses =
                vehicle.powerUnit()
                        .air()
                        .kind()
                        .equals(Optional.of(SupplyKind.INTEGRATED_DRYER_UNIT));
        if (pauses) {
            // The needles stand while the parking circuit fills behind its protection valve.
            return 2.2;
        }
        return vehicle.powerUnit().reservoirs().isEmpty() ? 1.6 : 1.25;
    }

    /**
     * Most that is lost in a minute with the brakes released, psi. Source: driver manuals as states
     * reprint them (2 and 3 psi); California driver handbook, p. 88.
     */
    static double lossReleased(int units) {
        return units == 1 ? 2 : units == 2 ? 3 : 5;
    }

    /** Most that is lost in a minute with the brakes applied, psi. Source: the same. */
    static double lossApplied(int units) {
        return units == 1 ? 3 : units == 2 ? 4 : 6;
    }
}
