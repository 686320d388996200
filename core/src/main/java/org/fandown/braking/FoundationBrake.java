package org.fandown.braking;

import org.fandown.units.Force;
import org.fandown.units.Length;

/**
 * Turns the force on a push rod into the brake force at the tyre.
 *
 * <p><b>Source.</b> Cam brakes: a published accident-reconstruction worksheet, F = 2 x push x arm x
 * friction x drum radius x efficiency / (cam radius x tyre radius). Disc brakes: F = push x lever
 * ratio x 2 x friction x disc radius / tyre radius, with values from memory or of our choice.
 *
 * <p><b>Assumes.</b> A right angle between push rod and arm, and no hysteresis.
 *
 * <p><b>Valid for.</b> One wheel. Immutable.
 */
public final class FoundationBrake {
    private final double ratio;

    private FoundationBrake(double ratio) {
        this.ratio = ratio;
    }

    /**
     * Makes a cam brake.
     *
     * @param arm effective length of the slack adjuster
     * @param friction friction of the lining
     * @param drumRadius radius of the drum's rubbing face
     * @param tyreRadius rolling radius of the tyre, positive
     */
    public static FoundationBrake cam(
            Length arm, double friction, Length drumRadius, Length tyreRadius) {
        double shoe =
                2
                        * arm.inInches()
                        * friction
                        * drumRadius.inInches()
                        * Assumption.CAM_EFFICIENCY.number();
        double cam = Assumption.CAM_RADIUS.number() * tyreRadius.inInches();
        return new FoundationBrake(shoe / cam);
    }

    /**
     * Makes an air disc brake.
     *
     * @param lever its lever ratio
     * @param friction friction of the pads
     * @param discRadius effective radius of the disc
     * @param tyreRadius rolling radius of the tyre, positive
     */
    public static FoundationBrake disc(
            double lever, double friction, Length discRadius, Length tyreRadius) {
        return new FoundationBrake(
                lever * 2 * friction * discRadius.inInches() / tyreRadius.inInches());
    }

    /** Returns the brake force at the tyre for a force on the push rod. */
    public Force atTyre(Force pushRod) {
        return Force.ofNewtons(pushRod.newtons() * ratio);
    }

    double atTyre(double pushRod) {
        return pushRod * ratio;
    }
}
