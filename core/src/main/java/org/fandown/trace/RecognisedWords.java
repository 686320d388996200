package org.fandown.trace;

import java.util.List;
import java.util.Map;
import org.fandown.check.Check;
import org.fandown.trace.Recognised.Kind;
import org.fandown.trace.Recognised.Point;
import org.fandown.units.Decimals;

/** What was recognised in a trace, in words. */
public final class RecognisedWords {
    /** Standard uncertainties on either side that hold about 95 of 100 values. */
    private static final double COVERAGE = 2;

    private RecognisedWords() {}

    /** One sentence without a full stop. */
    public static String text(Recognised found) {
        return switch (found.kind()) {
            case BUILD_UP -> "Pressure built up" + fromTo(found);
            case CUT_OUT -> "The governor cut out at " + value(found);
            case CUT_IN -> "The governor cut in at " + value(found);
            case LOSS_RELEASED -> "Air loss, brakes released: " + value(found) + " in 1 min";
            case LOSS_APPLIED -> "Air loss, brakes applied: " + value(found) + " in 1 min";
            case LOSS ->
                    "Air loss, whether applied or released is not known: "
                            + value(found)
                            + " in 1 min";
            case WARNING -> "The low-air warning came on at " + value(found);
            case PARKING_CLOSED -> "The parking brake set itself at " + value(found);
            case TRAILER_CLOSED -> "The trailer supply valve closed by itself at " + value(found);
            case APPLICATIONS ->
                    Decimals.format(found.value(), 0)
                            + " brake applications with the engine not turning"
                            + fromTo(found);
            case SUPPLY_DRAINED ->
                    "The supply reservoir was emptied; the circuits lost " + value(found);
        };
    }

    /**
     * Returns low end and high end of the interval that holds the true value in about 95 of 100
     * cases.
     */
    public static double[] interval(Recognised found) {
        if (found.kind().isLoss() && found.points().size() == 2) {
            return new double[] {found.points().get(0).psi(), found.points().get(1).psi()};
        }
        double half = COVERAGE * found.uncertainty();
        return new double[] {found.value() - half, found.value() + half};
    }

    /** Whether the value is one figure with an interval. */
    public static boolean hasInterval(Kind kind) {
        return kind != Kind.BUILD_UP && kind != Kind.APPLICATIONS;
    }

    private static String value(Recognised found) {
        double[] ends = interval(found);
        int decimals = found.kind().isLoss() ? 2 : 1;
        return Decimals.format(found.value(), decimals)
                + " psi (95 %: "
                + Decimals.format(ends[0], decimals)
                + " to "
                + Decimals.format(ends[1], decimals)
                + ")";
    }

    private static String fromTo(Recognised found) {
        List<Point> points = found.points();
        if (points.size() < 2) {
            return "";
        }
        return ", from "
                + figure(points.get(0).psi())
                + " psi to "
                + figure(points.get(points.size() - 1).psi())
                + " psi";
    }

    private static String figure(double number) {
        return Decimals.format(number, 1);
    }

    /** Why a trace with these channels cannot hold a reading of a check; empty if it can. */
    public static String lacks(Check check, Map<Channel, Long> channels) {
        boolean pedal =
                channels.containsKey(Channel.BRAKE_SWITCH)
                        || channels.containsKey(Channel.APPLICATION)
                        || channels.containsKey(Channel.PEDAL);
        return switch (check) {
            case LOW_AIR_WARNING -> without(channels.containsKey(Channel.WARNING), "the warning");
            case TRAILER_SUPPLY_CLOSING ->
                    without(channels.containsKey(Channel.TRAILER_SHUT), "the trailer valve");
            case CHECK_VALVE ->
                    without(channels.containsKey(Channel.SUPPLY), "the supply reservoir");
            case AIR_LOSS_APPLIED, AIR_LOSS_RELEASED -> without(pedal, "the brake pedal");
            default -> "";
        };
    }

    private static String without(boolean there, String what) {
        return there ? "" : "nothing in the log tells of " + what;
    }
}
