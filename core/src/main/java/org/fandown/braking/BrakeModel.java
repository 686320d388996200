package org.fandown.braking;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * A wheel with a chamber: its curves, and its strokes if they were read.
 *
 * @param curve push-rod force by pressure and stroke
 * @param adjusted the strokes of the same brake cold and fully adjusted
 * @param read the strokes as read cold, empty if not read
 * @param readNotes what is odd about the stroke as read
 * @param brake the foundation brake
 * @param growsHot whether heat lengthens the stroke
 * @param parking how the wheel is held when parked
 */
record BrakeModel(
        PushRodForce curve,
        StrokeModel adjusted,
        Optional<StrokeModel> read,
        Set<StrokeNote> readNotes,
        FoundationBrake brake,
        boolean growsHot,
        Parking parking)
        implements WheelModel {

    /** How a wheel is held when parked. */
    enum Parking {
        NOTHING,
        SPRING,
        ROLLERS
    }

    /** Push-rod force (lbf) of an application; zero at worst if the stroke was not read. */
    Span pushRod(double psi, double growth) {
        double most = force(read.orElse(adjusted), psi, growth);
        return new Span(isSure() ? most : 0, most);
    }

    /** Push-rod force (lbf) of an application with this brake cold and fully adjusted. */
    double adjustedPushRod(double psi) {
        return force(adjusted, psi, 0);
    }

    /** Force (lbf) on the push rod under the spring alone. */
    Span parked(double growth) {
        double most = springForce(read.orElse(adjusted).longerBy(growth));
        return new Span(isSure() ? most : 0, most);
    }

    /** What is odd about the stroke at an application. */
    Set<StrokeNote> notes(double psi, double growth) {
        EnumSet<StrokeNote> notes = EnumSet.noneOf(StrokeNote.class);
        notes.addAll(readNotes);
        if (read.isPresent() && curve.isBottomed(read.get().longerBy(growth).demandAt(psi))) {
            notes.add(StrokeNote.BOTTOMED);
        }
        return notes;
    }

    private boolean isSure() {
        return read.isPresent() && !readNotes.contains(StrokeNote.SUSPICIOUSLY_SHORT);
    }

    private double force(StrokeModel strokes, double psi, double growth) {
        return curve.net(psi, strokes.longerBy(growth).demandAt(psi));
    }

    private double springForce(StrokeModel strokes) {
        SpringBrake spring = SpringBrake.of(curve.area());
        double stroke =
                strokes.demandUnderSpring(spring.forceAtRest(), spring.rate(), curve.area());
        return curve.isBottomed(stroke)
                ? 0
                : Math.max(0, spring.force(stroke) - curve.returnSpring());
    }
}
