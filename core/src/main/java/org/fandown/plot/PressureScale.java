package org.fandown.plot;

import java.util.ArrayList;
import java.util.List;
import org.fandown.units.GaugePressure;

/**
 * The scale of pressure of a {@link TraceChart}.
 *
 * @param low its lower end, psi
 * @param high its upper end, psi
 */
record PressureScale(double low, double high) {
    private static final int MOST_PSI = 7;
    private static final int MOST_KPA = 5;

    /** A scale shows at least so much, psi: less is noise of any gauge. */
    private static final double LEAST_SPAN = 4;

    /** A scale that holds what a view shows. */
    static PressureScale of(TraceView view) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        List<Curve> all = new ArrayList<>(view.pressures());
        all.add(view.figure().curve());
        for (Curve curve : all) {
            for (int i = 0; i < curve.size(); i++) {
                if (view.whole() || isInFocus(view, curve.time(i))) {
                    least = Math.min(least, curve.value(i));
                    most = Math.max(most, curve.value(i));
                }
            }
        }
        if (view.whole() || least > most) {
            return new PressureScale(0, Ticks.top(most));
        }
        double room = Math.max(0, LEAST_SPAN - (most - least)) / 2;
        double step = Ticks.step(Math.max(LEAST_SPAN, most - least), MOST_PSI);
        double low = Math.max(0, step * Math.floor((least - room) / step));
        return new PressureScale(low, step * Math.ceil((most + room) / step));
    }

    private static boolean isInFocus(TraceView view, double seconds) {
        return seconds >= view.focus().from() && seconds <= view.focus().to();
    }

    /**
     * How high a pressure stands: 0 at the lower end, 1 at the upper; outside of it less or more.
     */
    double share(double psi) {
        return (psi - low) / (high - low);
    }

    double psiStep() {
        return Ticks.step(high - low, MOST_PSI);
    }

    double lowKpa() {
        return GaugePressure.ofPsi(low).inKilopascals();
    }

    double highKpa() {
        return GaugePressure.ofPsi(high).inKilopascals();
    }

    double kpaStep() {
        return Ticks.step(highKpa() - lowKpa(), MOST_KPA);
    }
}
