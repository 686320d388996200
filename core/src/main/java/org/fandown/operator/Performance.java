package org.fandown.operator;

import java.time.OffsetDateTime;
import java.util.List;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.Instruments;
import org.fandown.evidence.Report;
import org.fandown.procedure.Plan;
import org.fandown.vehicle.Vehicle;

/**
 * A plan as the perfect operator performed it.
 *
 * @param plan what was performed
 * @param vehicle the vehicle
 * @param observed what was written down
 * @param times when each step was performed
 */
public record Performance(Plan plan, Vehicle vehicle, Observed observed, List<StepTime> times) {
    /** Copies the list. */
    public Performance {
        times = List.copyOf(times);
    }

    /** Returns how long it took, s. */
    public double seconds() {
        return times.isEmpty() ? 0 : times.get(times.size() - 1).end();
    }

    /** Returns what the operator noticed that a sound vehicle does not show. */
    public List<Abnormal> abnormal() {
        return observed.abnormal();
    }

    /** Returns what could not be done. */
    public List<NotDone> notDone() {
        return observed.notDone();
    }

    /**
     * Returns the inspection, marked as simulated.
     *
     * @param moment when it is dated
     * @param report what the written report holds besides, such as plate and inspector
     */
    public Inspection inspection(OffsetDateTime moment, Report report) {
        return new Inspection(
                plan.set().rules().place(),
                moment,
                vehicle,
                report,
                Instruments.USUAL,
                false,
                observed.noted(),
                List.of(),
                true);
    }
}
